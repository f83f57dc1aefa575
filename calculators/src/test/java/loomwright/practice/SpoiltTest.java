package loomwright.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import loomwright.practice.Examples.Example;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Working;
import org.junit.jupiter.api.Test;

/**
 * A slip is known wherever its figure goes, and also where that is near the right one.
 *
 * <p>3 A through 8.4 m of 7.60 mΩ/m: 63.84 mΩ and 0.191 52 V, 1.596 % of 12 V; 11.808 48 V at the load; 0.574 56 W. Without the way back
 * 0.095 76 V, 0.798 %, 11.904 24 V, 0.287 28 W. Steps: 0 length, 1 table, 2 resistance, 3 drop, 4 share, 5 voltage at the load, 6 heat.
 */
class SpoiltTest {
    private static final String RETURN = "The return conductor left out";

    private final Working drop = drop();
    private final Exercise exercise = new Exercise(drop);

    private static Working drop() {
        Example example = Examples.of("voltage-drop");
        Map<String, String> given = new HashMap<>(example.given());
        given.put("current", "3 A");
        return new Example(example.calculator(), given).working();
    }

    @Test
    void aSlipMadeEarlierIsNamedAtEveryFigureThatComesOfIt() {
        slip(RETURN, 3, "0.0958");
        slip(RETURN, 4, "0.798");
        slip(RETURN, 5, "11.904");
        slip(RETURN, 6, "0.287");
        assertEquals("forgot-the-return", AnswerCheck.of(drop, "drop-percent", "0.8").slip().key());
        assertEquals("forgot-the-return", AnswerCheck.of(drop, "power-lost", "0.287 W").slip().key());
    }

    /** 11.904 is 0.8 % above 11.808. */
    @Test
    void aSlipWithinOnePercentIsNoRightAnswer() {
        slip(RETURN, 5, "11.9");
        assertEquals(AnswerCheck.Kind.SLIP, AnswerCheck.of(drop, "voltage-at-load", "11.9").kind());
        for (String rounded : new String[] {"11.8", "11.81", "11.82", "11.75", "11.86"}) {
            assertEquals(BlankCheck.Kind.RIGHT, kind(5, rounded, new Quantity[7]), rounded);
            assertEquals(AnswerCheck.Kind.AGREES, AnswerCheck.of(drop, "voltage-at-load", rounded).kind(), rounded);
        }
    }

    @Test
    void theRightMethodOnAnOwnFigureIsCreditedAlsoWhereThatIsNearTheRightOne() {
        Quantity[] own = new Quantity[7];
        own[3] = Quantity.of(0.09576, Units.VOLT);
        assertEquals(BlankCheck.Kind.CREDITED, kind(5, "11.9", own));
        assertEquals(BlankCheck.Kind.RIGHT, kind(5, "11.81", own));
    }

    /** 12 V less "1.596 V" is 10.404 V. */
    @Test
    void aPercentTakenFromVoltsIsNamed() {
        slip("The percent taken for volts", 5, "10.4");
        assertEquals("percent-for-volts", AnswerCheck.of(drop, "voltage-at-load", "10.404 V").slip().key());
    }

    private void slip(String name, int at, String typed) {
        BlankCheck check = exercise.check(at, typed, new Quantity[7]);
        assertEquals(BlankCheck.Kind.SLIP, check.kind(), typed + ": " + check.words());
        assertTrue(check.words().contains(name), check.words());
    }

    private BlankCheck.Kind kind(int at, String typed, Quantity[] own) {
        return exercise.check(at, typed, own).kind();
    }
}
