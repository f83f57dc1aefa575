package loomwright.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loomwright.worked.Agreement;
import loomwright.worked.Outcome;
import loomwright.worked.Output;
import org.junit.jupiter.api.Test;

/** The laws of the sheets. */
class HandoutTest {
    private static final int SEEDS = 50;
    private static final Selection BOTH = Selection.ofLessons(SomeQuestions.LESSONS, List.of(1, 2), Selection.ALL, true);

    @Test
    void neighboursNeverShareAnAnswerAndEachIsThatOfItsOwnNumbers() {
        for (int seed = 1; seed <= SEEDS; seed++) {
            List<Sheet> sheets = new Handout(BOTH, seed).sheets(45);
            for (int i = 0; i < sheets.size(); i++) {
                for (int j = 0; j < sheets.get(i).tasks().size(); j++) {
                    Task task = sheets.get(i).tasks().get(j);
                    for (Output asked : task.question().varies() ? task.question().asked() : List.<Output>of()) {
                        String where = task.question().key() + ", seed " + seed + ", people " + i + " and " + (i + 1);
                        assertEquals(
                                Outcome.of(task.question().calculator(), task.entries()).working().result(asked.key()).quantity().base(), task.answer(asked).base(), where);
                        if (i > 0) {
                            Task before = sheets.get(i - 1).tasks().get(j);
                            assertFalse(Agreement.agrees(task.answer(asked), before.answer(asked)), where);
                            assertNotEquals(before.answerText(asked), task.answerText(asked), where);
                        }
                    }
                }
            }
        }
    }

    /** Of 8 people and more, no more than one in eight; of fewer, none. */
    @Test
    void atMostOneInEightShareAnAnswer() {
        for (int people : new int[] {2, 7, 9, 15, 16, 17, 20, 31, 60, 101}) {
            List<Sheet> sheets = new Handout(BOTH, 3).sheets(people);
            for (int j = 0; j < sheets.get(0).tasks().size(); j++) {
                Question question = sheets.get(0).tasks().get(j).question();
                for (Output asked : question.varies() ? question.asked() : List.<Output>of()) {
                    for (Sheet one : sheets) {
                        int at = j;
                        long alike = sheets.stream().filter(other -> Agreement.agrees(one.tasks().get(at).answer(asked), other.tasks().get(at).answer(asked))).count();
                        assertTrue(alike == 1 || alike * 8 <= people, question.key() + ": " + alike + " of " + people);
                    }
                }
            }
        }
    }

    @Test
    void numbersThatEndInAStopAreNeverDrawn() {
        for (int seed = 1; seed <= SEEDS; seed++) {
            for (Sheet sheet : new Handout(BOTH, seed).sheets(20)) {
                sheet.tasks().stream().filter(task -> task.question().varies()).forEach(task -> assertEquals(List.of(), task.stops()));
            }
        }
    }

    @Test
    void aQuestionAboutAStopKeepsItsNumbersAndSaysTheStop() {
        List<LessonQuestions> lessons = List.of(new LessonQuestions("01-a", "1 A", true, List.of(SomeQuestions.TRAP)));
        Task task = new Handout(Selection.ofLessons(lessons, List.of(0), 5, true), 1).sheet(9).tasks().get(0);
        assertEquals(SomeQuestions.TRAP.given(), task.entries());
        assertFalse(task.stops().isEmpty());
        assertEquals("No fuse-link puts this right. Only a thicker cable does.", task.because());
    }

    @Test
    void theSheetOfAPersonDoesNotDependOnTheOthers() {
        Handout asked = new Handout(BOTH, 7);
        List<String> alone = SheetMarkup.pages(asked.sheet(9), "Club", Paper.A4);
        assertEquals(alone, SheetMarkup.pages(new Handout(BOTH, 7).sheets(40).get(8), "Club", Paper.A4));
        assertNotEquals(alone, SheetMarkup.pages(new Handout(BOTH, 8).sheet(9), "Club", Paper.A4));
    }

    @Test
    void theStoryTellsThePersonsOwnNumbers() {
        Task task = new Handout(BOTH, 3).sheet(2).tasks().get(0);
        assertTrue(task.words().contains(task.entries().get("current").replace(' ', '\u00a0')), task.words());
        assertTrue(task.words().contains(task.entries().get("route-length").replace(' ', '\u00a0')), task.words());
    }

    @Test
    void questionsInWordsAreAskedUnlessNumbersAloneAreWanted() {
        List<Question> asked = new Handout(Selection.ofLessons(SomeQuestions.LESSONS, List.of(1), 1, true), 1).asked();
        assertEquals(List.of(SomeQuestions.DROP, SomeQuestions.WORDS), asked);
        assertEquals(List.of(SomeQuestions.DROP), new Handout(Selection.ofLessons(SomeQuestions.LESSONS, List.of(1), 1, false), 1).asked());
        assertNull(new Handout(Selection.ofLessons(SomeQuestions.LESSONS, List.of(1), 1, true), 1).sheet(1).tasks().get(1).working());
    }

    @Test
    void aFieldThatIsKeptKeepsItsNumber() {
        Question drop = SomeQuestions.DROP;
        Question kept = new Question("kept", "Bench", drop.words(), true, drop.calculator(), drop.given(), List.of("current"), drop.asked(), "");
        List<LessonQuestions> lessons = List.of(new LessonQuestions("01-a", "1 A", true, List.of(kept)));
        for (Sheet sheet : new Handout(Selection.ofLessons(lessons, List.of(0), 5, true), 1).sheets(10)) {
            assertEquals("8 A", sheet.tasks().get(0).entries().get("current"));
        }
    }

    /** Only resistance and volts make the current of a coil; what the battery holds does not. */
    @Test
    void aSheetGivesTheFiguresThatTheAnswerNeedsAndNoOthers() {
        Question coil = SomeQuestions.question(
                "coil", "A relay", "A coil of {coil-resistance} is on.", "coil-day",
                Map.of("coil-resistance", "90 Ω", "supply-voltage", "12 V", "hours-on", "8 h", "battery-capacity", "100 Ah"), "coil-current");
        List<LessonQuestions> lessons = List.of(new LessonQuestions("01-a", "1 A", true, List.of(coil)));
        List<String> given = new Handout(Selection.ofLessons(lessons, List.of(0), 1, true), 1).sheet(1).tasks().get(0).givenLines();
        assertEquals(List.of("Resistance of the coil", "Supply voltage"), given.stream().map(line -> line.replaceAll(" [0-9.]+.*", "")).toList());
    }

    @Test
    void aStoryReadsWellWithEachNumber() {
        assertEquals("Of an 8\u00a0AWG cable", Scene.filled("Of a {size} cable", Map.of("size", "8 AWG")));
        assertEquals("An 18\u00a0V panel", Scene.filled("A {voltage} panel", Map.of("voltage", "18 V")));
        assertEquals("Of a 6\u00a0AWG cable", Scene.filled("Of an {size} cable", Map.of("size", "6 AWG")));
        assertEquals("A 180\u00a0Ω coil", Scene.filled("A {resistance} coil", Map.of("resistance", "180 Ω")));
        assertFalse(Scene.reads("For {days} days.", Map.of("days", "1")));
        assertTrue(Scene.reads("For {days} days.", Map.of("days", "2")));
        assertTrue(Scene.reads("At {current} flow.", Map.of("current", "1 A")));
    }

    /** The code of a sheet that was drawn in another way must not be marked with the numbers of today. */
    @Test
    void aFieldThatIsKeptChangesTheCode() {
        Question drop = SomeQuestions.DROP;
        Question kept = new Question(drop.key(), drop.title(), drop.words(), true, drop.calculator(), drop.given(), List.of("current"), drop.asked(), drop.because());
        assertFalse(print(kept) == print(drop));
    }

    private static int print(Question question) {
        return Selection.ofLessons(List.of(new LessonQuestions("01-a", "1 A", true, List.of(question))), List.of(0), 1, true).fingerprint();
    }

    @Test
    void aLessonCountsTheQuestionsWhoseNumbersVary() {
        assertEquals(List.of(0, 1, 2), SomeQuestions.LESSONS.stream().map(LessonQuestions::varying).toList());
    }

    /** 10 mm and 5 mm fill 15 mm to the last; a piece that no page holds has a page of its own. */
    @Test
    void aPageTakesWhatJustFits() {
        Block ten = new Block("ten", 10);
        Block five = new Block("five", 5);
        Block long60 = new Block("long", 60);
        assertEquals(List.of("tenfive"), Block.pages(List.of(ten, five), 15, 15));
        assertEquals(List.of("ten", "five"), Block.pages(List.of(ten, five), 14.9, 15));
        assertEquals(List.of("ten", "fiveten", "five"), Block.pages(List.of(ten, five, ten, five), 14.9, 15));
        assertEquals(List.of("long", "five"), Block.pages(List.of(long60, five), 15, 15));
    }

    @Test
    void aQuestionWithTooFewAnswersIsLeftOutAndTheNextIsAsked() {
        Question power = SomeQuestions.POWER;
        Question same = new Question("same", "Same", power.words(), true, power.calculator(), power.given(), List.of("voltage", "current"), power.asked(), "");
        Question foreign = new Question("mains", "Mains", power.words(), true, power.calculator(), Map.of("voltage", "120 V", "current", "3 A"), List.of(), power.asked(), "");
        List<LessonQuestions> lessons = List.of(new LessonQuestions("01-a", "1 A", true, List.of(same, foreign, SomeQuestions.COIL)));
        Handout handout = new Handout(Selection.ofLessons(lessons, List.of(0), 1, true), 1);
        assertEquals(List.of(SomeQuestions.COIL), handout.asked());
        assertEquals(List.of(same, foreign), handout.leftOut());
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
        assertEquals("", Scene.of("Fifty milliamperes and 8 A", calculator, given), "another number in a word");
        assertEquals("", Scene.of("It draws 8 A.", calculator, Map.of("current", "8 A", "route-length", "8 m", "supply-voltage", "8 A")), "two entries are alike");
    }
}
