package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class AxisTest {
    @Test
    void numbersStandAtRoundValues() {
        assertEquals(List.of("0", "2", "4", "6", "8", "10"), texts(Axis.linear("m", 0, 10)));
        assertEquals(List.of("11", "12", "13", "14"), texts(Axis.linear("V", 10.5, 14.6)));
        assertEquals(List.of("0.0", "0.5", "1.0"), texts(Axis.linear("V", 0, 1.4).parts(3)));
        assertEquals(List.of("−20", "0", "20", "40", "60", "80", "100"), texts(Axis.linear("°C", -20, 105).parts(7)));
        assertEquals(List.of("0.0", "2.5", "5.0", "7.5", "10.0"), texts(Axis.linear("A", 0, 10).parts(4)));
    }

    @Test
    void anAxisFromZeroEndsAtARoundValue() {
        assertEquals(40, Axis.fromZero("A", 34.3).to(), 1e-9);
        assertEquals(1.5, Axis.fromZero("V", 1.4).to(), 1e-9);
    }

    @Test
    void logarithmicNumbersAreOneTwoAndFive() {
        assertEquals(List.of("1", "2", "5", "10", "20", "50", "100"), numbered(Axis.logarithmic("A", 1, 100)));
        assertEquals(List.of("0.1", "1", "10", "100", "1000"), numbered(Axis.logarithmic("s", 0.1, 1000)));
        assertEquals(19, Axis.logarithmic("A", 1, 100).ticks().size());
    }

    @Test
    void placesValuesAlongTheCanvas() {
        assertEquals(150, Axis.linear("m", 0, 10).place(5, 100, 200), 1e-9);
        assertEquals(200, Axis.linear("m", 0, 10).place(0, 200, 100), 1e-9);
        assertEquals(150, Axis.logarithmic("A", 1, 100).place(10, 100, 200), 1e-9);
    }

    @Test
    void refusesASpanThatIsNone() {
        assertThrows(IllegalArgumentException.class, () -> Axis.linear("m", 3, 3));
        assertThrows(IllegalArgumentException.class, () -> Axis.linear("m", 0, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Axis.linear("m", 0, Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> Axis.logarithmic("m", 0, 10));
    }

    @Property
    void ticksRiseEvenlyInsideTheAxisAndReadApart(
            @ForAll @DoubleRange(min = -5000, max = 5000) double from,
            @ForAll @DoubleRange(min = 0.01, max = 9000) double span,
            @ForAll @IntRange(min = 2, max = 12) int parts) {
        // Below this the numbers need more digits than an axis of a lesson ever shows.
        Assume.that(span > Math.abs(from) / 1e5);
        List<Tick> ticks = Axis.linear("x", from, from + span).parts(parts).ticks();
        assertTrue(ticks.size() <= parts + 1, "at most " + parts + " parts, " + ticks);
        double least = parts >= 4 ? 2 : parts >= 3 ? 1 : 0;
        assertTrue(ticks.size() >= least, "too few: " + ticks);
        for (int i = 0; i < ticks.size(); i++) {
            double value = ticks.get(i).value();
            assertTrue(value >= from - 1e-6 * span && value <= from + span + 1e-6 * span, "outside: " + value);
            if (i > 1) {
                double before = ticks.get(i - 1).value() - ticks.get(i - 2).value();
                assertEquals(before, value - ticks.get(i - 1).value(), 1e-6 * span);
            }
        }
        assertEquals(ticks.size(), new HashSet<>(texts(ticks)).size(), "two ticks read alike: " + ticks);
    }

    private static List<String> texts(Axis axis) {
        return texts(axis.ticks());
    }

    private static List<String> texts(List<Tick> ticks) {
        List<String> texts = new ArrayList<>();
        for (Tick tick : ticks) {
            texts.add(tick.text());
        }
        return texts;
    }

    private static List<String> numbered(Axis axis) {
        List<String> texts = texts(axis);
        texts.removeIf(String::isEmpty);
        return texts;
    }
}
