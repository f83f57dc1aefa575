package loomwright.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class SheetCodeTest {
    private static final List<LessonQuestions> LESSONS = SomeQuestions.LESSONS;
    private static final Selection BOTH = Selection.ofLessons(LESSONS, List.of(1, 2), 2, true);

    private static String fault(String code) {
        return SheetCode.read(code, LESSONS).fault();
    }

    @Test
    void bringsBackWhatItWasMadeFrom() {
        for (int seed : List.of(1, 7, 500, SheetCode.LARGEST_SEED)) {
            for (int person : List.of(1, 30, 31, SheetCode.MOST_PEOPLE)) {
                for (Selection selection : List.of(BOTH, Selection.ofLessons(LESSONS, List.of(2), Selection.ALL, false), Selection.ofQuestions(LESSONS, List.of(3, 0)))) {
                    SheetCode.Reading reading = SheetCode.read(SheetCode.of(selection, seed, person), LESSONS);
                    assertNull(reading.fault());
                    assertEquals(seed, reading.seed());
                    assertEquals(person, reading.person());
                    assertEquals(selection, reading.selection());
                }
            }
        }
    }

    @Test
    void maySayItInSmallLettersWithBlanksAndWithLettersThatLookLikeDigits() {
        String code = SheetCode.of(BOTH, 7, 12);
        String spoken = code.toLowerCase(Locale.ROOT).replace('-', ' ').replace('0', 'o').replace('1', 'l');
        assertNull(fault(spoken), spoken);
    }

    /** Any one character, and any two neighbours that change places. */
    @Test
    void noticesEverySlipOfThePen() {
        String code = SheetCode.of(BOTH, 1234, 17).replace("-", "");
        int tried = 0;
        for (int i = 0; i < code.length(); i++) {
            for (char sign : "0123456789ABCDEFGHJKMPQRSTUWXYZ".toCharArray()) {
                if (sign != code.charAt(i)) {
                    assertNotNull(fault(code.substring(0, i) + sign + code.substring(i + 1)));
                    tried++;
                }
            }
            if (i > 0 && code.charAt(i) != code.charAt(i - 1)) {
                assertNotNull(fault(code.substring(0, i - 1) + code.charAt(i) + code.charAt(i - 1) + code.substring(i + 1)));
            }
        }
        assertEquals(code.length() * 30, tried);
    }

    @Test
    void saysWhatIsWrong() {
        assertTrue(fault(" ").contains("empty"));
        assertTrue(fault("V234-5678-9").contains("no \u201cV\u201d"));
        assertTrue(fault("1234").contains("too few"));
        assertTrue(fault("1".repeat(200)).contains("too many"));
        assertTrue(fault(SheetCode.of(BOTH, 7, 1).replace('-', '0')).contains("wrong"));
    }

    @Test
    void noticesAnotherEditionOfTheLessons() {
        String code = SheetCode.of(BOTH, 7, 1);
        List<LessonQuestions> other = List.of(
                LESSONS.get(0), new LessonQuestions("02-cables", "2 Cables", true, List.of(SomeQuestions.POWER, SomeQuestions.DROP)), LESSONS.get(2));
        assertTrue(SheetCode.read(code, other).fault().contains("another edition"));
        assertTrue(SheetCode.read(code, LESSONS.subList(0, 2)).fault().contains("another edition"));
    }
}
