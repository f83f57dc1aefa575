package loomwright.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a load takes away from the voltage it is rated at. */
class LoadTest {
    /** Rated at 12 V. Constant power: 24 W ÷ 10 V. Resistive: 24 W at 12 V is 6 Ω, 10 V ÷ 6 Ω. Constant current: 24 W ÷ 12 V. */
    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({
        "constant-power, power=24 W, 2.4, 24",
        "constant-power, current=2 A, 2.4, 24",
        "constant-power, resistance=6 Ω, 2.4, 24",
        "resistive, power=24 W, 1.66666667, 16.6666667",
        "resistive, resistance=6 Ω, 1.66666667, 16.6666667",
        "constant-current, current=2 A, 2, 20",
        "constant-current, power=24 W, 2, 20"
    })
    void takesWhatItsKindTakesAtTenVolts(String kind, String rated, double amperes, double watts) {
        Load load = (Load) read("load-kind=" + kind, rated).node("lamp").figures();
        assertEquals(amperes, load.current(10).value(), 1e-6);
        assertEquals(watts, load.power(10).value(), 1e-6);
    }

    @Test
    void isEnteredInOneWayOnly() {
        Circuit two = read("power=24 W", "current=2 A");
        assertTrue(two.faults().get(0).message().contains("keep one"), two.faults().toString());
        assertTrue(read("load-kind=resistive").faults().get(0).message().contains("enter one of the four"));
    }

    private static Circuit read(String... entries) {
        return new Circuit("", List.of(
                Part.of("battery", PartKind.SUPPLY, "", "", "chemistry=lifepo4", "capacity=100 Ah"),
                Part.of("lamp", PartKind.LOAD, "", "battery", entries)));
    }
}
