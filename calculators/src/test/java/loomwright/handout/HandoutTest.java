package loomwright.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loomwright.markup.Links;
import loomwright.worked.AnswerCheck;
import loomwright.worked.Outcome;
import loomwright.worked.Working;
import org.junit.jupiter.api.Test;

/** The laws of the sheets. */
class HandoutTest {
    private static final int SEEDS = 50;
    private static final int PEOPLE = 45;
    private static final Selection BOTH = Selection.ofLessons(SomeQuestions.LESSONS, List.of(1, 2), Selection.ALL);

    @Test
    void neighboursNeverShareAnAnswerAndEveryVariantHasOne() {
        for (int seed = 1; seed <= SEEDS; seed++) {
            List<Sheet> sheets = new Handout(BOTH, seed).sheets(PEOPLE);
            for (int i = 0; i < sheets.size(); i++) {
                assertFalse(sheets.get(i).tasks().isEmpty());
                for (int j = 0; j < sheets.get(i).tasks().size(); j++) {
                    Task task = sheets.get(i).tasks().get(j);
                    Working again = Outcome.of(task.question().calculator(), task.entries()).working();
                    assertEquals(again.result(task.question().asked().key()).quantity().base(), task.answer().base());
                    if (i > 0) {
                        Task before = sheets.get(i - 1).tasks().get(j);
                        String where = task.question().key() + ", seed " + seed + ", people " + i + " and " + (i + 1);
                        assertFalse(AnswerCheck.agrees(task.answer(), before.answer()), where);
                        assertFalse(AnswerCheck.agrees(before.answer(), task.answer()), where);
                        assertNotEquals(before.answer().text(), task.answer().text(), where);
                    }
                }
            }
        }
    }

    @Test
    void theSheetOfAPersonDoesNotDependOnTheOthers() {
        Handout asked = new Handout(BOTH, 7);
        String alone = SheetMarkup.of(asked.sheet(9), "Club");
        assertEquals(alone, SheetMarkup.of(new Handout(BOTH, 7).sheets(40).get(8), "Club"));
        assertNotEquals(alone, SheetMarkup.of(new Handout(BOTH, 8).sheet(9), "Club"));
    }

    @Test
    void theStoryTellsThePersonsOwnNumbers() {
        Sheet sheet = new Handout(BOTH, 3).sheet(2);
        Task task = sheet.tasks().get(0);
        assertTrue(task.words().contains(task.entries().get("current").replace(' ', '\u00a0')), task.words());
        assertTrue(task.words().contains(task.entries().get("route-length").replace(' ', '\u00a0')), task.words());
    }

    @Test
    void aFieldThatIsKeptKeepsItsNumber() {
        Question kept = new Question("kept", "Port", "", SomeQuestions.POWER.calculator(), SomeQuestions.POWER.given(), List.of("voltage"), SomeQuestions.POWER.asked());
        List<LessonQuestions> lessons = List.of(new LessonQuestions("01-a", "1 A", List.of(kept), 0));
        for (Sheet sheet : new Handout(Selection.ofLessons(lessons, List.of(0), 5), 1).sheets(10)) {
            assertEquals("5 V", sheet.tasks().get(0).entries().get("voltage"));
        }
    }

    @Test
    void aQuestionWithOneAnswerOnlyIsLeftOut() {
        Question same = new Question("same", "Same", "", SomeQuestions.POWER.calculator(), SomeQuestions.POWER.given(), List.of("voltage", "current"), SomeQuestions.POWER.asked());
        List<LessonQuestions> lessons = List.of(new LessonQuestions("01-a", "1 A", List.of(same, SomeQuestions.COIL), 0));
        Selection selection = Selection.ofLessons(lessons, List.of(0), 5);
        Handout handout = new Handout(selection, 1);
        assertEquals(List.of(SomeQuestions.COIL), handout.asked());
        assertEquals(List.of(same), handout.leftOut());
        assertTrue(RegisterMarkup.of(handout, handout.sheets(2), 1, "Club").contains("Left out"));
    }

    @Test
    void theKeyHoldsEveryAnswerAndStep() {
        Sheet sheet = new Handout(BOTH, 7).sheet(1);
        String key = KeyMarkup.of(sheet, "Club & friends", Links.NONE);
        assertTrue(key.contains("Club &amp; friends"));
        assertFalse(key.contains("<a "), "paper leads nowhere");
        for (Task task : sheet.tasks()) {
            assertTrue(key.contains("<strong class=\"value\">" + task.answer().text() + "</strong>"));
        }
        int steps = sheet.tasks().stream().mapToInt(task -> task.working().steps().size()).sum();
        assertEquals(steps, key.split("<li><p class=\"words\">", -1).length - 1);
    }

    @Test
    void onlyAStoryWhoseNumbersAreEntriesIsToldAgain() {
        var calculator = SomeQuestions.DROP.calculator();
        Map<String, String> given = SomeQuestions.DROP.given();
        assertEquals("It draws {current}, {route-length} away.", Scene.of("It draws 8 A, 4.2 m away.", calculator, given));
        assertEquals("In {size}:", Scene.of("In 2.5\u00a0mm²:", calculator, given));
        assertEquals("", Scene.of("It draws 8 A. Does it keep within 3 %?", calculator, given), "3 % is no entry");
        assertEquals("", Scene.of("The manual lets 8 A flow.", calculator, given), "quotes a publication");
        assertEquals("", Scene.of("Both of the two lamps take 8 A.", calculator, given), "a number in a word");
        assertEquals("", Scene.of("It draws 8 A.", calculator, Map.of("current", "8 A", "route-length", "8 m", "supply-voltage", "8 A")), "two entries are alike");
    }
}
