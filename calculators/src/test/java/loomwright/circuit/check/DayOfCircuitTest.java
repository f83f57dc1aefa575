package loomwright.circuit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.circuit.WorkedCircuits;
import org.junit.jupiter.api.Test;

class DayOfCircuitTest {
    private final Circuit trailer = WorkedCircuits.trailer();
    private final Circuit punt = WorkedCircuits.punt();

    @Test
    void countsADayByHand() {
        // Punt at 12.8 V: pump 4 A × 12.8 V × 0.5 h = 25.6 Wh. Lamp 14.4 Ω behind its conductors: lead 4.71 × 1.078585 × 2.4 m = 12.192 mΩ,
        // run 12.7 × 1.078585 × 9 m = 123.282 mΩ: 12.8²/(14.4 + 0.135474) = 11.2717 W × 4 h = 45.087 Wh. Together 70.687 Wh, 5.522 Ah.
        DayOfCircuit day = Examination.of(punt).day();
        assertEquals(70.687, day.total().value(), 1e-3);
        assertEquals(5.5224, day.charge().value(), 1e-4);
        // half of 60 Ah
        assertEquals(30, day.usable().value(), 1e-9);
        assertEquals(30 / 5.5224, day.days().value(), 1e-3);
        // Trailer, standing: trigger 15 mA × 12.8 V × 6 h + 5 mA × 12.8 V × 24 h = 1.152 + 1.536 = 2.688 Wh
        assertEquals(2.688, Examination.of(trailer).day().standing().value(), 1e-9);
        // 120 W × 3 h × 70 %
        assertEquals(252, Examination.of(trailer).day().yield().value(), 1e-9);
    }

    @Test
    void usesLessOfABatteryThatIsNotFull() {
        // 80 % of 100 Ah may be used; at 50 % of charge 30 Ah of them are left, at 10 % none
        assertEquals(30, Examination.of(charged("50 %")).day().usable().value(), 1e-9);
        assertEquals(0, Examination.of(charged("10 %")).day().usable().value(), 1e-9);
    }

    /**
     * Battery at 12.8 V, so that ampere-hours need no conductors: a lamp of 3 A, on for 2 h half of the time, takes 3 Ah; its pilot light of 0.1 A 24 h long 2.4 Ah. The 2 A
     * that the panel carries besides are no part of it. 60 Ah of lead-acid, half of them: 30 ÷ 5.4 days. A charger of 10 A for 4 h brings 40 Ah, 512 Wh, the panel of the battery
     * 120 W · 3 h · 70 % = 252 Wh.
     */
    @Test
    void whatStandsByAndWhatChargesCountsTooAndWhatIsThereAlreadyDoesNot() {
        DayOfCircuit day = Examination.of(new Circuit("", List.of(
                part("battery", PartKind.SUPPLY, "", Map.of(
                        "chemistry", "lead-acid", "capacity", "60 Ah", "battery-voltage", "12.8 V", "panel-power", "120 W", "peak-sun-hours", "3 h")),
                part("fuse", PartKind.PROTECTION, "battery", Map.of("device", "blade", "rating", "10 A")),
                part("panel", PartKind.PANEL, "fuse", Map.of("panel-limit", "30 A", "present-load", "2 A")),
                part("lamp", PartKind.LOAD, "panel", Map.of(
                        "load-kind", "constant-current", "current", "3 A", "hours", "2 h", "duty", "50 %", "standing-current", "0.1 A")),
                part("charger", PartKind.SOURCE, "fuse", Map.of("source-kind", "mains-charger", "charge-current", "10 A", "hours-charging", "4 h"))))).day();
        assertEquals(3 * 12.8, day.loads().get(0).energy().value(), 1e-6);
        assertEquals(2.4 * 12.8, day.standing().value(), 1e-9);
        assertEquals(2.4, day.standingCharge().value(), 1e-9);
        assertEquals(5.4 * 12.8, day.total().value(), 1e-6);
        assertEquals(5.4, day.charge().value(), 1e-6);
        assertEquals(30 / 5.4, day.days().value(), 1e-5);
        assertEquals(512 + 252, day.yield().value(), 1e-6);
        assertNull(Examination.of(punt).day().yield(), "nothing charges it");
    }

    private static Part part(String id, PartKind kind, String fedBy, Map<String, String> texts) {
        return Part.read(id, kind, id, fedBy, "", "", texts).part();
    }

    private Circuit charged(String share) {
        return CircuitEdits.changed(trailer, "battery", "state-of-charge", share).circuit();
    }
}
