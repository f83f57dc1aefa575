package loomwright.worked;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

/** Checks on the known mistakes of a working. */
public final class Slips {
    private Slips() {}

    /** Each slip's own number, entered as an answer, is traced back to that slip; and there are at least three. */
    public static void assertEachIsRecognised(Trial trial) {
        List<String> expected = new ArrayList<>();
        List<String> recognised = new ArrayList<>();
        for (Slip slip : trial.working().slips()) {
            expected.add(slip.key());
            recognised.add(trial.slipBehind(slip.output().key(), slip.value().text()));
        }
        assertTrue(expected.size() >= 3, "only " + expected);
        assertEquals(expected, recognised);
    }
}
