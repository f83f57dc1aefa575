package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import loomwright.quantity.Units;
import org.junit.jupiter.api.Test;

/** What a load is thought to draw before its circuit is solved, and which runs become thicker once it is. */
class DropsTest {
    private static Job job(String... thing) {
        return Job.of(Asked.job("feed=battery", "chemistry=lead-acid", "capacity=100 Ah", "short-circuit-current=800 A", "switched=no").item(thing).answers());
    }

    /**
     * A radio of 60 W, 3.4 m. 2.5 mm² at 40 °C has 7.6 · 1.0786 = 8.197 mΩ/m: 6.8 m · 8.197 = 55.74 mΩ. At 60 ÷ 10.5 = 5.714 A it loses 0.3185 V of 0.95 · 0.36 =
     * 0.342 V. But as voltage falls its current rises, and the lead of 0.3 m loses too: 7.1 m, 58.20 mΩ: U = (10.5 + √(110.25 − 4 · 60 · 0.0582)) ÷ 2 = 10.156 V,
     * 0.344 V lost: too much, though within 3 %. The next size, 3 mm², has no terminal; 4 mm² does.
     */
    @Test
    void aRunThatLosesTooMuchInTheSolvedCircuitTakesTheNextSize() {
        Sizing sizing = Sizing.of(job("kind=radio", "draws=60 W", "hours=1 h", "route=3.4 m", "place=inside", "beside=alone"), Set.of(), 0);
        RunChoice run = sizing.draft().branches.get(0).run();
        assertEquals(2.5, run.size().in(Units.SQUARE_MILLIMETRE).value(), 1e-9);
        assertTrue(Drops.mended(sizing, sizing.draft().circuit()));
        assertEquals(4, run.size().in(Units.SQUARE_MILLIMETRE).value(), 1e-9);
        assertFalse(Drops.mended(sizing, sizing.draft().circuit()), "4 mm² loses 7.1 m · 5.08 mΩ/m · 5.9 A = 0.21 V");
        assertEquals(4, run.size().in(Units.SQUARE_MILLIMETRE).value(), 1e-9);
    }

    /** 3.3 m: 6.9 m, 56.56 mΩ: U = (10.5 + √(110.25 − 4 · 60 · 0.05656)) ÷ 2 = 10.166 V: 0.334 V lost, and that passes. */
    @Test
    void aRunThatLosesALittleLessStays() {
        Sizing sizing = Sizing.of(job("kind=radio", "draws=60 W", "hours=1 h", "route=3.3 m", "place=inside", "beside=alone"), Set.of(), 0);
        assertFalse(Drops.mended(sizing, sizing.draft().circuit()));
        assertEquals(2.5, sizing.draft().branches.get(0).run().size().in(Units.SQUARE_MILLIMETRE).value(), 1e-9);
    }

    /**
     * A mat of 60 W at 12 V has 2.4 Ω: 14.6 ÷ 2.4 = 6.083 A, and 13.4 ÷ 2.4 = 5.583 A once its run loses the tenth it may. What holds its watts draws most at the
     * lowest voltage, 60 ÷ 10.5 = 5.714 A; what holds its amperes the same at any.
     */
    @Test
    void aHeaterDrawsLessBehindItsRunAndNothingElseDoes() {
        List<Need> needs = job("kind=mat", "draws=60 W").needs();
        assertEquals(14.6 / 2.4, needs.get(0).amperes(), 1e-9);
        assertEquals(1.2, needs.get(0).allowedVolts(), 1e-9);
        assertEquals(13.4 / 2.4, needs.get(0).keptAmperes(), 1e-9);
        assertEquals(60 / 10.5, job("kind=radio", "draws=60 W").needs().get(0).keptAmperes(), 1e-9);
        assertEquals(60 / 10.5, job("kind=radio", "draws=60 W").needs().get(0).amperes(), 1e-9);
        assertEquals(4, job("kind=pump", "draws=4 A").needs().get(0).keptAmperes(), 1e-9);
        assertEquals(0.36, job("kind=radio", "draws=60 W").strictestVolts(), 1e-9);
    }
}
