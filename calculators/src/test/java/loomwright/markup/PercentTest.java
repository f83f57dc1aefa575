package loomwright.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PercentTest {
    /** The borders of one, two, three and four octets, as the library writes them. */
    @ParameterizedTest
    @ValueSource(ints = {0x20, 0x25, 0x7F, 0x80, 0xB2, 0x7FF, 0x800, 0x2126, 0xFFFD, 0x10000, 0x1F50C, 0x10FFFF})
    void readsWhatTheLibraryWrites(int point) {
        String letter = new String(Character.toChars(point));
        String written = URLEncoder.encode(letter, StandardCharsets.UTF_8).replace("+", "%20");
        assertEquals("a" + letter + "z", Percent.decode("a" + written + "z"));
        assertEquals("a" + letter + "z", Percent.decode("a" + written.toLowerCase(java.util.Locale.ROOT) + "z"));
    }

    @ParameterizedTest
    @CsvSource({"%", "%4", "%G0", "%0G", "%/0", "%:0", "%@0", "%`0", "%g0", "%80", "%BF", "%C2", "%C2%", "%C2%4", "%C2%C0", "%E2%82", "%F8%80%80%80", "%F4%90%80%80"})
    void leavesWhatMakesNoSense(String damaged) {
        assertEquals(damaged, Percent.decode(damaged));
    }

    @Test
    void goesOnBehindTheSignThatMakesNoSense() {
        assertEquals("%C2A", Percent.decode("%C2%41"));
        assertEquals("%%C2\u00B2", Percent.decode("%%C2%C2%B2"));
    }

    @Test
    void readsEachDigit() {
        assertEquals("\t\n\u000e\u000f /:;AFJO", Percent.decode("%09%0A%0E%0F%20%2F%3A%3B%41%46%4a%4f"));
    }
}
