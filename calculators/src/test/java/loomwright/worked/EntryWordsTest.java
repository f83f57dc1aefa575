package loomwright.worked;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a reader is told about a number that no field takes. */
class EntryWordsTest {
    @ParameterizedTest(name = "{0} as a supply voltage: {1}")
    @CsvSource(delimiter = '|', value = {
        "999999999999999 | Supply voltage must be between 1 V and 60 V, but is too large",
        "-999999999999999 | Supply voltage must be between 1 V and 60 V, but is too far below nought",
        "1e309 | Supply voltage is too large. Enter a number between 1 V and 60 V",
        "12.000 | Supply voltage could mean thousands or decimals: write thousands without a mark, and decimals without a zero at the end. Enter a number between 1 V and 60 V",
        "70 | Supply voltage must be between 1 V and 60 V, but is 70 V",
    })
    void aNumberThatDoesNotFitIsRefusedInPlainWords(String typed, String words) {
        assertEquals(words, fault("supply-voltage", typed));
    }

    @ParameterizedTest(name = "{0} is no gauge")
    @CsvSource({"0.0000001 AWG", "12.5 AWG", "41 AWG", "-4 AWG"})
    void aGaugeThatThereIsNotIsRefused(String typed) {
        String words = "gauge numbers are whole, from 40 AWG to 1 AWG, then 1/0, 2/0, 3/0 and 4/0. Enter one of these, or an area in mm²";
        assertEquals("Size of conductor is " + typed + ": " + words, fault("size", typed));
    }

    private static String fault(String key, String typed) {
        Map<String, String> entries = new HashMap<>(Map.of("current", "10", "route-length", "4", "size", "2.5"));
        entries.put(key, typed);
        return Outcome.of(Catalogue.find("voltage-drop"), entries).faults().get(0).message().replace('\u00a0', ' ');
    }
}
