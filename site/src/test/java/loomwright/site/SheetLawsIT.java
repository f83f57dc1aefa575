package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import loomwright.handout.Handout;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Selection;
import loomwright.handout.Sheet;
import loomwright.handout.Task;
import loomwright.worked.AnswerCheck;
import loomwright.worked.Outcome;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every question of the site, for many seeds. Needs no browser. */
class SheetLawsIT {
    private static final int SEEDS = 50;
    private static final int PEOPLE = 6;

    @TestFactory
    Stream<DynamicTest> everyVariantHasAnAnswerThatNoNeighbourShares() {
        List<LessonQuestions> lessons = WorkshopLessons.read();
        assertTrue(Selection.all(lessons).size() > 100);
        return lessons.stream().map(lesson -> DynamicTest.dynamicTest(lesson.title(), () -> {
            int place = lessons.indexOf(lesson);
            for (int seed = 1; seed <= SEEDS; seed++) {
                Handout handout = new Handout(Selection.ofLessons(lessons, List.of(place), Selection.ALL), seed);
                assertTrue(handout.leftOut().size() <= 2, "seed " + seed + " leaves out " + handout.leftOut());
                List<Sheet> sheets = handout.sheets(PEOPLE);
                for (int i = 0; i < PEOPLE; i++) {
                    for (int j = 0; j < handout.asked().size(); j++) {
                        Task task = sheets.get(i).tasks().get(j);
                        String where = task.question().key() + ", seed " + seed + ", sheet " + (i + 1) + ": " + task.entries();
                        assertEquals(List.of(), Outcome.of(task.question().calculator(), task.entries()).faults(), where);
                        assertFalse(task.words().contains("{") || task.title().contains("{"), where);
                        boolean shared = i > 0 && AnswerCheck.agrees(task.answer(), sheets.get(i - 1).tasks().get(j).answer());
                        assertFalse(shared, where);
                    }
                }
            }
        }));
    }
}
