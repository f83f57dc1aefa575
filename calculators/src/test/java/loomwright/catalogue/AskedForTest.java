package loomwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Map;
import loomwright.worked.Finding;
import loomwright.worked.Outcome;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

/** Results and entries that people look for beside the usual ones, each worked by hand. */
class AskedForTest {
    private static final double EXACT = 1e-9;

    @Test
    void aBatteryIsGivenInWattHoursToo() {
        Trial trial = Trial.of("run-time", "chemistry=lifepo4", "capacity=100 Ah", "load-current=5 A", "usable-depth=80 %", "system-voltage=12.8 V");
        assertEquals(1280, trial.value("capacity-energy"), EXACT, "100 × 12.8");
        assertEquals(1024, trial.value("usable-energy"), EXACT, "100 × 0.8 × 12.8");
    }

    @Test
    void aReserveIsAddedToABatteryAndToItsWattHours() {
        Trial trial = Trial.of("battery-size", "energy-per-day=480 Wh", "usable-depth=80 %", "reserve=20 %");
        assertEquals(50, trial.value("capacity"), EXACT, "480 ÷ 12 ÷ 0.8");
        assertEquals(60, trial.value("capacity-with-reserve"), EXACT, "50 × 1.2");
        assertEquals(720, trial.value("capacity-energy"), EXACT, "60 × 12");
        assertFalse(Trial.of("battery-size", "energy-per-day=480 Wh").answers("capacity-with-reserve"), "nothing is added unless it is asked for");
    }

    @Test
    void ampereHoursOfADayAreAnEntry() {
        Trial battery = Trial.of("battery-size", "energy-per-day=40 Ah", "usable-depth=80 %", "battery-voltage=24 V");
        assertEquals(40, battery.value("charge-per-day"), EXACT);
        assertEquals(50, battery.value("capacity"), EXACT, "40 ÷ 0.8");
        Trial panel = Trial.of("panel-yield", "energy-per-day=40 Ah", "peak-sun-hours=4 h", "efficiency=60 %");
        assertEquals(200, panel.value("panel-needed"), EXACT, "40 × 12 = 480 Wh; ÷ (4 × 0.6)");
    }

    @Test
    void thePanelThatADayNeedsIsFoundWithoutAPanel() {
        Trial trial = Trial.of("panel-yield", "energy-per-day=420 Wh", "peak-sun-hours=3 h", "reserve=25 %");
        assertEquals(200, trial.value("panel-needed"), EXACT, "420 ÷ (3 × 0.70)");
        assertEquals(250, trial.value("panel-with-reserve"), EXACT, "200 × 1.25");
        assertFalse(trial.answers("yield-per-day"));
    }

    @Test
    void withoutAPanelAndWithoutADayThereIsNothingToFind() {
        Outcome outcome = Outcome.of(Catalogue.find("panel-yield"), Map.of("peak-sun-hours", "3 h"));
        assertEquals("panel-power", outcome.faults().get(0).fieldKey());
        assertTrue(outcome.faults().get(0).message().contains("both empty"));
    }

    /** 33 CFR 183.425, Table 5: 14 AWG with insulation for 60 °C carries 20 A at 30 °C. */
    @Test
    void aFactorOfOnesOwnTakesCurrentAway() {
        Trial trial = Trial.of(
                "ampacity", "rule-set=33-cfr-183", "size=14 AWG", "insulation-temperature=t60", "ambient=30 °C", "own-factor=0.8", "design-current=17 A");
        assertEquals(16, trial.value("ampacity"), EXACT, "20 × 0.8");
        Finding load = trial.working().findings().get(0);
        assertEquals(Verdict.STOP, load.verdict());
        assertTrue(load.words().contains("× 0.8"), load.words());
    }

    /** The same table: 20 A on 14 AWG, 25 A on 12 AWG. */
    @Test
    void aFactorOfOnesOwnAsksForAThickerConductor() {
        String[] run = {
            "current=18 A", "route-length=1 m", "conductor=solid-copper", "rule-set=33-cfr-183", "insulation-temperature=t60", "ambient=30 °C", "allowance=10 %"
        };
        assertEquals(14, Trial.of("size-for-run", run).value("chosen-gauge"), EXACT);
        String[] reduced = Arrays.copyOf(run, run.length + 1);
        reduced[run.length] = "own-factor=80 %";
        assertEquals(12, Trial.of("size-for-run", reduced).value("chosen-gauge"), EXACT, "18 ÷ 0.8 = 22.5 A");
    }

    @Test
    void theConstantOfTheConductorIsTakenAsEntered() {
        Trial trial = Trial.of("short-circuit-heating", "current=3000 A", "clearing-time=0.4 s", "k=115 A·√s/mm²", "size=25 mm²");
        assertEquals(16.5, trial.value("least-size"), 0.05, "3000 × √0.4 = 1897.4; ÷ 115");
        assertEquals(0.918, trial.value("longest-time"), 0.001, "(115 × 25 ÷ 3000)²");
        assertTrue(trial.working().findings().get(0).source().text().contains("you entered"));
    }

    @Test
    void theCaseOfASwitchIsCoolerThanItsJunctionAndWarmerThanItsSink() {
        Trial trial = Trial.of(
                "junction-temperature", "current=10 A", "voltage-drop=1.2 V", "junction-to-case=1.3 K/W", "case-to-sink=0.1 K/W", "sink-to-air=1.0 K/W",
                "ambient=40 °C");
        assertEquals(53.2, trial.value("case"), EXACT, "40 + 12 × 1.1");
    }
}
