package loomwright.generator.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LessonTest {
    /** The number says where a lesson stands; the name outlives a new number. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(nullValues = "-", textBlock = """
            08-voltage-drop, 8, voltage-drop
            12-outlets, 12, outlets
            05b-what-charges-it, 5b, what-charges-it
            05bis-more, 5, more
            tide-table, '', tide-table
            """)
    void hasItsNumberAndNameInItsKey(String key, String number, String name) {
        Lesson lesson = new Lesson(key, null, "", List.of(), 0, "", List.of());
        assertEquals(number, lesson.number());
        assertEquals(name, lesson.name());
    }
}
