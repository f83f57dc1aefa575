package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import loomwright.handout.Handout;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Paper;
import loomwright.handout.Printout;
import loomwright.handout.Question;
import loomwright.handout.Selection;
import loomwright.handout.Sheet;
import loomwright.handout.SheetMarkup;
import loomwright.handout.Task;
import loomwright.worked.Agreement;
import loomwright.worked.Outcome;
import loomwright.worked.Output;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every question of the site, for many seeds. Needs no browser. */
class SheetLawsIT {
    private static final int SEEDS = 40;
    private static final int PEOPLE = 20;

    private final List<LessonQuestions> lessons = WorkshopLessons.read();

    @TestFactory
    Stream<DynamicTest> everyAnswerIsOfItsOwnNumbersAndSharedByFew() {
        return lessons.stream().map(lesson -> DynamicTest.dynamicTest(lesson.title(), () -> {
            int place = lessons.indexOf(lesson);
            for (int seed = 1; seed <= SEEDS; seed++) {
                Handout handout = new Handout(Selection.ofLessons(lessons, List.of(place), Selection.ALL, true), seed);
                assertTrue(lesson.varying() < 2 || handout.asked().stream().anyMatch(Question::varies), "seed " + seed + " asks no number");
                List<Sheet> sheets = handout.sheets(PEOPLE);
                for (int j = 0; j < handout.asked().size(); j++) {
                    for (int i = 0; i < PEOPLE; i++) {
                        check(sheets, i, j, handout.asked().get(j).key() + ", seed " + seed + ", sheet " + (i + 1));
                    }
                }
            }
        }));
    }

    private static void check(List<Sheet> sheets, int person, int number, String where) {
        Task task = sheets.get(person).tasks().get(number);
        assertFalse(task.words().contains("{") || task.title().contains("{") || task.because().contains("{"), where);
        if (task.question().isInWords()) {
            assertFalse(task.because().isEmpty(), where);
            return;
        }
        assertEquals(List.of(), Outcome.of(task.question().calculator(), task.entries()).faults(), where);
        for (Output box : task.question().varies() ? task.question().asked() : List.<Output>of()) {
            assertEquals(List.of(), task.stops(), where + ": " + task.entries());
            long alike = sheets.stream().filter(other -> Agreement.agrees(task.answer(box), other.tasks().get(number).answer(box))).count();
            assertTrue(alike * 8 <= PEOPLE, where + ": " + alike + " share " + box.label());
            boolean beside = person > 0 && Agreement.agrees(task.answer(box), sheets.get(person - 1).tasks().get(number).answer(box));
            assertFalse(beside, where);
        }
    }

    /** Whoever sets nothing gets no more than four pages a person, and each lesson of the day is asked. */
    @Test
    void whatStandsThereByItselfIsFourPagesAPerson() {
        List<Integer> day = new ArrayList<>();
        for (int i = 0; i < lessons.size(); i++) {
            if (lessons.get(i).inDay()) {
                day.add(i);
            }
        }
        assertTrue(day.size() >= 6);
        for (Paper paper : Paper.values()) {
            for (int seed = 1; seed <= 10; seed++) {
                Handout handout = new Handout(Selection.ofLessons(lessons, day, Selection.USUAL, true), seed);
                assertEquals(day.size(), handout.asked().stream().filter(Question::varies).count());
                assertTrue(handout.asked().stream().filter(Question::isInWords).count() >= 4);
                assertTrue(new Printout(handout, 12, seed, "Club", paper).pagesOfOne() <= SheetMarkup.PAGES, paper + ", seed " + seed);
            }
        }
    }

    /** What the lesson says of its trap goes with it: twelve amperes on one square. */
    @Test
    void theTrapOfTheFuseLinksKeepsItsNumbersAndItsWords() {
        Question trap = Selection.all(lessons).stream().filter(each -> each.key().equals("twelve-amperes-on-one-square")).findFirst().orElseThrow();
        assertFalse(trap.varies());
        assertTrue(trap.words().contains("12") && trap.because().contains("Only a thicker cable does"), trap.because());
    }
}
