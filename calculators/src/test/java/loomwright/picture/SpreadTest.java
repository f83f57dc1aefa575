package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SpreadTest {
    @Test
    void leavesAloneWhatHasRoom() {
        assertArrayEquals(new double[] {5, 45}, Spread.apart(new double[] {10, 50}, new double[] {10, 10}, 4, 0, 100), 1e-9);
    }

    @Test
    void pushesApartWhatWantsOnePlace() {
        assertArrayEquals(new double[] {45, 59}, Spread.apart(new double[] {50, 50}, new double[] {10, 10}, 4, 0, 100), 1e-9);
        assertArrayEquals(new double[] {76, 90}, Spread.apart(new double[] {99, 99}, new double[] {10, 10}, 4, 0, 100), 1e-9);
    }

    @Property
    void keepsOrderGapAndRoom(@ForAll @Size(max = 6) List<@DoubleRange(max = 100) Double> wishes) {
        double[] middles = wishes.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        double[] sizes = new double[middles.length];
        Arrays.fill(sizes, 10);
        double[] starts = Spread.apart(middles, sizes, 4, 0, 100);
        for (int i = 0; i < starts.length; i++) {
            assertTrue(starts[i] >= -1e-9 && starts[i] + 10 <= 100 + 1e-9, "in the room");
            assertTrue(i == 0 || starts[i] >= starts[i - 1] + 14 - 1e-9, "apart");
        }
    }
}
