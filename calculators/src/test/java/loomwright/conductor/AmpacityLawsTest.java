package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Trial;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class AmpacityLawsTest {
    @Provide
    Arbitrary<String> gauges() {
        return Arbitraries.of("18", "16", "14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0");
    }

    private static double ampacity(String... entries) {
        return Trial.asPrinted("ampacity", entries).value("ampacity");
    }

    @Property(tries = 200)
    void fallsOrStaysAsItGetsWarmer(@ForAll @IntRange(min = 0, max = 54) int celsius, @ForAll boolean cord) {
        String[] rules = cord ? new String[] {"bs-7671-cord", "2.5 mm²"} : new String[] {"nec-free-air", "12 AWG"};
        double here = ampacity("rule-set=" + rules[0], "size=" + rules[1], "ambient=" + celsius + " °C");
        double warmer = ampacity("rule-set=" + rules[0], "size=" + rules[1], "ambient=" + (celsius + 1) + " °C");
        assertTrue(warmer <= here, celsius + " °C: " + here + " A, then " + warmer + " A");
    }

    @Property(tries = 100)
    void neverRisesWithAnotherConductorInTheBundle(
            @ForAll("gauges") String gauge, @ForAll @IntRange(min = 1, max = 40) int together) {
        double here = ampacity("size=" + gauge + " AWG", "conductors-together=" + together);
        double more = ampacity("size=" + gauge + " AWG", "conductors-together=" + (together + 1));
        assertTrue(more <= here);
    }

    @Property(tries = 100)
    void neverFallsWithBetterInsulationOrThickerCopper(@ForAll @IntRange(min = 0, max = 13) int size, @ForAll @IntRange(min = 0, max = 5) int step) {
        String[] gauges = {"18", "16", "14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0"};
        int[] ratings = {60, 75, 80, 90, 105, 125, 200};
        double here = ampacity("size=" + gauges[size] + " AWG", "insulation-temperature=t" + ratings[step], "engine-space=yes");
        assertTrue(here <= ampacity("size=" + gauges[size + 1] + " AWG", "insulation-temperature=t" + ratings[step], "engine-space=yes"));
        assertTrue(here <= ampacity("size=" + gauges[size] + " AWG", "insulation-temperature=t" + ratings[step + 1], "engine-space=yes"));
    }
}
