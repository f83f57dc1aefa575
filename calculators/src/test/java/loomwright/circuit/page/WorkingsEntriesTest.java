package loomwright.circuit.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.WorkedCircuits;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.worked.NextQuestion;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

/** What goes with a finding into its calculator: each figure of the part that the calculator asks for, under the calculator's own key. */
class WorkingsEntriesTest {
    private final Circuit trailer = WorkedCircuits.trailer();

    private static Circuit changed(Circuit circuit, String id, String field, String text) {
        return CircuitEdits.changed(circuit, id, field, text).circuit();
    }

    private static CircuitFinding finding(Circuit circuit, Check check, String id, Verdict verdict) {
        return Examination.of(circuit).findings(check).stream().filter(each -> each.partId().equals(id) && each.finding().verdict() == verdict).findFirst().orElseThrow();
    }

    private static NextQuestion working(Circuit circuit, Check check, String id, Verdict verdict) {
        return Workings.of(Examination.of(circuit), finding(circuit, check, id, verdict));
    }

    private static Map<String, String> entries(Circuit circuit, Check check, String id, Verdict verdict) {
        return working(circuit, check, id, verdict).carried();
    }

    private static String text(Map<String, String> entries, String key) {
        return String.valueOf(entries.get(key)).replace('\u00a0', ' ');
    }

    /** 0.75 mm² at 40 °C with insulation for 60 °C: 6 A · 0.82 = 4.92 A. */
    @Test
    void aTriggerIsWorkedWithItsInputItsWireAndTheDeviceBeforeIt() {
        Map<String, String> entries = entries(trailer, Check.TRIGGER, "outlet-switch", Verdict.STOP);
        assertEquals("solid-state", text(entries, "trigger-of"));
        assertEquals("15 mA", text(entries, "trigger-current"));
        assertFalse(entries.containsKey("coil-resistance"));
        assertEquals("iso-6722-1", text(entries, "conductor"));
        assertEquals("0.75 mm²", text(entries, "size"));
        assertEquals("1.5 m", text(entries, "route-length"));
        assertEquals("20 °C", text(entries, "temperature"));
        assertEquals("14.6 V", text(entries, "highest-voltage"));
        assertEquals("4.92 A", text(entries, "wire-ampacity"));
        assertEquals("20 A", text(entries, "fuse-rating"));
        // The wire of 0.75 mm² takes 3 m · 24.7 mΩ/m · 15 mA = 1.1 mV of it before the input.
        double volts = finding(trailer, Check.TRIGGER, "outlet-switch", Verdict.PASSED).finding().figure().value();
        assertEquals(volts + 0.0011115, Double.parseDouble(text(entries, "lowest-voltage").replace(" V", "")), 1e-6);
        Circuit fused = changed(trailer, "outlet-switch", "fuse-rating", "2 A");
        assertEquals("2 A", text(entries(fused, Check.TRIGGER, "outlet-switch", Verdict.PASSED), "fuse-rating"));
    }

    @Test
    void aRelayIsWorkedWithItsCoil() {
        Circuit relay = changed(changed(trailer, "outlet-switch", "switching", "relay"), "outlet-switch", "coil-resistance", "85 Ω");
        for (CircuitFinding found : Examination.of(relay).findings(Check.TRIGGER)) {
            Map<String, String> entries = Workings.of(Examination.of(relay), found).carried();
            assertEquals("relay", text(entries, "trigger-of"));
            assertEquals("85 Ω", text(entries, "coil-resistance"));
            assertFalse(entries.containsKey("trigger-current"));
        }
    }

    @Test
    void aSwitchIsWorkedWithTheWayOfItsHeatInOnePiece() {
        Map<String, String> entries = entries(trailer, Check.SWITCH_HEAT, "outlet-switch", Verdict.PASSED);
        assertEquals("12 K/W", text(entries, "sink-to-air"));
        assertEquals("0 K/W", text(entries, "junction-to-case"));
        assertEquals("0 K/W", text(entries, "case-to-sink"));
        assertEquals("40 °C", text(entries, "ambient"));
        assertEquals("125 °C", text(entries, "junction-limit"));
        Circuit hot = changed(changed(trailer, "outlet-switch", "switch-ambient", "60 °C"), "outlet-switch", "junction-limit", "150 °C");
        Map<String, String> other = entries(hot, Check.SWITCH_HEAT, "outlet-switch", Verdict.PASSED);
        assertEquals("60 °C", text(other, "ambient"));
        assertEquals("150 °C", text(other, "junction-limit"));
        Circuit unknown = changed(trailer, "outlet-switch", "junction-to-air", "");
        for (CircuitFinding found : Examination.of(unknown).findings(Check.SWITCH_HEAT)) {
            assertNull(Workings.of(Examination.of(unknown), found), "without the way of its heat there is nothing to work out");
        }
    }

    @Test
    void thePanelOfTheBatteryIsWorkedWithItsSun() {
        Map<String, String> entries = entries(trailer, Check.DAY, "battery", Verdict.CAUTION);
        assertEquals("120 W", text(entries, "panel-power"));
        assertEquals("3 h", text(entries, "peak-sun-hours"));
        assertEquals("12.8 V", text(entries, "battery-voltage"));
        assertTrue(text(entries, "energy-per-day").startsWith("332.5"), entries.toString());
    }

    /** What flows through the panel besides is its first way; the rest is what is new. */
    @Test
    void aPanelIsWorkedWithWhatIsOnItAlready() {
        Circuit more = changed(trailer, "fuse-panel", "present-load", "2 A");
        Map<String, String> entries = entries(more, Check.CONTINUOUS_CURRENT, "fuse-panel", Verdict.PASSED);
        double all = finding(more, Check.CONTINUOUS_CURRENT, "fuse-panel", Verdict.PASSED).finding().figure().base();
        assertEquals("2 A", text(entries, "way-1-current"));
        assertEquals(all - 2, Double.parseDouble(text(entries, "new-current").replace(" A", "")), 1e-6);
        assertEquals("20 A", text(entries, "panel-limit"));
        assertFalse(entries(trailer, Check.CONTINUOUS_CURRENT, "fuse-panel", Verdict.PASSED).containsKey("way-1-current"));
        Circuit idle = WorkedCircuits.punt();
        for (String load : Set.of("stern-lamp", "bilge-pump")) {
            idle = CircuitEdits.without(idle, load);
        }
        for (CircuitFinding found : Examination.of(idle).findings(Check.CONTINUOUS_CURRENT)) {
            assertNull(Workings.of(Examination.of(idle), found), "nothing flows");
        }
    }

    /** A run that feeds nothing yet has no design current: what it carries is still worked out. */
    @Test
    void aRunWithoutALoadIsWorkedByWhatItCarries() {
        NextQuestion question = working(CircuitEdits.without(WorkedCircuits.punt(), "stern-lamp"), Check.CONDUCTOR_PROTECTED, "lamp-run", Verdict.PASSED);
        assertEquals("ampacity", question.calculatorKey());
        assertFalse(question.carried().containsKey("design-current"));
        assertEquals("1.5 mm²", text(question.carried(), "size"));
        assertEquals("fuse-choice", working(WorkedCircuits.punt(), Check.CONDUCTOR_PROTECTED, "lamp-run", Verdict.PASSED).calculatorKey());
    }

    /** 7 in outside a sheath, 40 in within: 33 CFR 183.455(b). */
    @Test
    void thePlaceOfTheFirstDeviceIsWorkedByTheRuleOfTheFinding() {
        Circuit bare = CircuitEdits.without(WorkedCircuits.punt(), "main-fuse");
        assertEquals("33-cfr-source", text(entries(changed(bare, "lead", "route-length", "6 in"), Check.UNPROTECTED_LENGTH, "lead", Verdict.PASSED), "rule-set"));
        Map<String, String> sheathed = entries(changed(changed(bare, "lead", "route-length", "39 in"), "lead", "sheath", "yes"), Check.UNPROTECTED_LENGTH, "lead", Verdict.PASSED);
        assertEquals("33-cfr-sheathed", text(sheathed, "rule-set"));
        assertEquals(39 * 0.0254, Double.parseDouble(text(sheathed, "distance").replace(" m", "")), 1e-6);
    }

    /** A sheath helps up to 40 in, and only where there is none yet. */
    @Test
    void whatIsTooLongWithoutADeviceIsToldWhetherASheathHelps() {
        Circuit bare = CircuitEdits.without(WorkedCircuits.punt(), "main-fuse");
        String helps = "Lay it in a sheath or enclosure all the way";
        assertTrue(remedy(changed(bare, "lead", "route-length", "39 in")).startsWith(helps));
        assertTrue(remedy(changed(bare, "lead", "route-length", "41 in")).startsWith("Put a device at the battery"));
        assertTrue(remedy(changed(changed(bare, "lead", "route-length", "41 in"), "lead", "sheath", "yes")).startsWith("Put a device at the battery"));
    }

    private static String remedy(Circuit circuit) {
        return finding(circuit, Check.UNPROTECTED_LENGTH, "lead", Verdict.STOP).finding().remedy();
    }
}
