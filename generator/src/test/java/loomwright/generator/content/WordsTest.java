package loomwright.generator.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Two words.                                        | 2
            The drop is {{bench-drop.drop:3}} in all          | 6
            Read [about the drop](lesson:voltage-drop) first. | 5
            **2.5 mm²** and 3 %                               | 4
            R = r × L                                         | 3
            - | 0
            """)
    void countsWhatIsRead(String text, int words) {
        assertEquals(words, Words.in(text));
    }
}
