package loomwright.turned;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;
import org.junit.jupiter.api.Test;

/** A calculator that gives back what it is told, and answers from 12.34 A to 87.65 A only: the answer may lie at the very edge. */
class EdgeTest {
    private static final QuantityField CURRENT = QuantityField.of("current", "Current", "Any.", 0, 100, Units.AMPERE);
    private static final Output SAME = new Output("same", "Same current", Units.AMPERE);

    private static final Calculator ECHO = new Calculator() {
        @Override
        public Description description() {
            return new Description("echo", "Echo", "What was said?", List.of(), List.of(CURRENT), List.of(SAME), List.of());
        }

        @Override
        public void work(Entries entries, WorkingBuilder working) {
            Quantity said = entries.quantity("current");
            if (said.base() < 12.34 || said.base() > 87.65) {
                throw new Refusal("current", "Current: enter one from 12.34 A to 87.65 A");
            }
            working.result("same", said);
        }
    };

    private static Turned turned(double limit, boolean atMost) {
        return TurnedRound.of(ECHO, Map.of(), CURRENT, new Wish(SAME, Quantity.of(limit, Units.AMPERE), atMost));
    }

    @Test
    void aBorderAmongTheFiguresIsFound() {
        assertEquals(40, turned(40, true).answer().base(), 1e-9);
        assertEquals(40, turned(40, false).answer().base(), 1e-9);
    }

    @Test
    void aBorderJustInsideTheFirstOrTheLastAnswerIsFoundToo() {
        assertEquals(12.35, turned(12.35, true).answer().base(), 1e-6);
        assertEquals(12.35, turned(12.35, false).answer().base(), 1e-6);
        assertEquals(87.64, turned(87.64, true).answer().base(), 1e-6);
        assertEquals(87.64, turned(87.64, false).answer().base(), 1e-6);
    }

    @Test
    void beyondTheEdgesEveryFigurePassesOrNone() {
        assertEquals(Turned.Kind.ALL_PASS, turned(90, true).kind());
        assertEquals(Turned.Kind.ALL_PASS, turned(12, false).kind());
        Turned none = turned(12, true);
        assertNull(none.answer());
        assertTrue(none.words().startsWith("No figure passes") && none.words().contains("12.34") && none.words().contains("87.65"), none.words());
        assertTrue(turned(90, false).words().startsWith("No figure passes"), turned(90, false).words());
    }
}
