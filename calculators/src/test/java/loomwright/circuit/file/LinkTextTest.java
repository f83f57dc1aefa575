package loomwright.circuit.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The letters of a link, by hand: four of its sum, then cells that end in {@code ~.}. */
class LinkTextTest {
    private static final int SUM = 4;

    @ParameterizedTest
    @CsvSource(quoteCharacter = '"', value = {
        "azAZ09-., azAZ09-.", "a b, a_b", "_, ~5f", "~, ~7e", "`{, ~60~7b", "@[, ~40~5b", "/:, ~2f~3a", "ÿ, ~ff", "Ā, ~u0100", "\uffff, ~uffff"
    })
    void lettersAndDigitsStandAsTheyAreAndTheRestByNumber(String cell, String written) {
        String link = LinkText.of(List.of(cell));
        assertEquals(written + "~.", link.substring(SUM));
        assertEquals(List.of(cell), LinkText.cells(link));
    }

    @Test
    void nothingIsALinkWithoutCells() {
        assertEquals(List.of(), LinkText.cells(LinkText.of(List.of())));
        assertNull(LinkText.cells(""));
        assertNull(LinkText.cells("000"));
        assertEquals(List.of("", "a", ""), LinkText.cells(LinkText.of(List.of("", "a", ""))));
    }

    /** With a right sum, which anybody can work out, and a letter that is cut off or no digit. */
    @ParameterizedTest
    @ValueSource(strings = {"a", "a~", "~7", "~u010", "~u", "~7g~.", "~G0~.", "~:0~.", "~/0~.", "~`0~."})
    void whatEndsInTheMiddleOfACellIsNoLink(String cells) {
        assertNull(LinkText.cells(LinkText.sum(cells) + cells));
    }

    /** 1 and the letters, and the sum of these sums: of "a", 97, both are 98; of "ab" 196 and 294. 31 times the first and the second: 3136 and 6370. */
    @ParameterizedTest
    @CsvSource({"'', 001f", "a, 0c40", "ab, 18e2"})
    void theSumIsThatOfTwoSums(String cells, String sum) {
        assertEquals(sum, LinkText.sum(cells));
    }

    @Test
    void digitsOfBothCasesAreRead() {
        assertEquals(List.of("\u00af\u00af\u0099"), LinkText.cells(LinkText.sum("~af~AF~99~.") + "~af~AF~99~."));
    }

    /** Held against the coder of the library. */
    @Test
    void theBytesOfATextAreThoseOfUtf8() {
        for (String text : new String[] {"", "a", "\u007f", "\u0080", "\u07ff", "\u0800", "\ud7ff", "\ue000", "\uffff", "\ud800\udc00", "\udbff\udfff", "12 V · Häuschen 🚐"}) {
            assertEquals(text.getBytes(StandardCharsets.UTF_8).length, Utf8.length(text), text);
        }
    }

    @Test
    void hexadecimalDigitsAreReadInBothCases() {
        for (char c = 0; c < 0x100; c++) {
            assertEquals(c < 0x80 ? Character.digit(c, 16) : -1, Utf8.hexDigit(c), "letter " + (int) c);
        }
        assertEquals("00ff", Utf8.hex(255, 4));
    }
}
