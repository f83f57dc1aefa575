package loomwright.circuit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
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

    private Circuit charged(String share) {
        return CircuitEdits.changed(trailer, "battery", "state-of-charge", share).circuit();
    }
}
