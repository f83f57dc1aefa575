package loomwright.generator.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
    private static final List<String> KNOWN = List.of("current", "route-length", "temperature", "size");

    @Test
    void findsOneLetterTooFewTooManyWrongOrSwapped() {
        assertEquals("current", Nearest.to("curent", KNOWN));
        assertEquals("current", Nearest.to("currrent", KNOWN));
        assertEquals("current", Nearest.to("currant", KNOWN));
        assertEquals("current", Nearest.to("curretn", KNOWN));
    }

    @Test
    void findsAWordByItsBeginning() {
        assertEquals("temperature", Nearest.to("temp", KNOWN));
    }

    @Test
    void findsNothingThatDiffersTooMuch() {
        assertNull(Nearest.to("voltage", KNOWN));
        assertNull(Nearest.to("x", KNOWN));
    }

    @Test
    void listsWhatThereIsIfNothingIsNear() {
        assertEquals("Use one of: current, route-length, temperature, size.", Nearest.remedy("voltage", KNOWN));
        assertEquals("There is none here yet.", Nearest.remedy("voltage", List.of()));
    }
}
