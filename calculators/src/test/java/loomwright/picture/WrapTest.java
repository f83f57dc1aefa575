package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class WrapTest {
    @Test
    void cutsAtSpacesOnly() {
        assertEquals(List.of("volts: across", "two points"), Wrap.lines("volts: across two points", Lettering.SMALL, 110));
        assertEquals(List.of("running", "4\u00a0A"), Wrap.lines("running 4\u00a0A", Lettering.SMALL, 70));
        assertEquals(List.of(""), Wrap.lines("", Lettering.SMALL, 70));
    }

    @Test
    void breaksAWordThatIsWiderThanALine() {
        List<String> lines = Wrap.lines("a converterwithalongname", Lettering.SMALL, 60);
        assertTrue(lines.size() > 2, lines.toString());
        assertEquals("aconverterwithalongname", String.join("", lines).replace(" ", ""));
    }

    @Property
    void keepsEveryLetterAndTheWidth(
            @ForAll @Size(max = 8) List<@AlphaChars @StringLength(min = 1, max = 20) String> words,
            @ForAll @DoubleRange(min = 20, max = 300) double width) {
        List<String> lines = Wrap.lines(String.join(" ", words), Lettering.SMALL, width);
        assertEquals(String.join("", words), String.join("", lines).replace(" ", ""));
        for (String line : lines) {
            assertTrue(Lettering.SMALL.width(line) <= width, line);
        }
    }
}
