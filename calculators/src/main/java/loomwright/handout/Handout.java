package loomwright.handout;

import java.util.ArrayList;
import java.util.List;
import loomwright.markup.Absent;
import loomwright.practice.Variation;
import loomwright.worked.Outcome;
import loomwright.worked.Working;

/** The sheets of a day: the same questions for everyone, the numbers of each person their own. */
public final class Handout {
    private final Selection selection;
    private final int seed;
    private final List<Question> asked = new ArrayList<>();
    /** For each question asked its numbers, or null if everyone gets it alike. */
    private final List<Variants> variants = new ArrayList<>();
    private final List<Absent> needless = new ArrayList<>();
    private final List<Question> leftOut = new ArrayList<>();

    /**
     * Prepares the sheets of a selection.
     *
     * @param seed the same seed gives the same sheets, on every machine
     */
    public Handout(Selection selection, int seed) {
        this.selection = selection;
        this.seed = seed;
        for (LessonQuestions lesson : selection.lessons()) {
            choose(lesson.questions());
        }
    }

    private void choose(List<Question> questions) {
        int varying = 0;
        int alike = 0;
        for (Question question : questions) {
            if (question.varies() && varying < selection.mostVarying()) {
                varying += ask(question) ? 1 : 0;
            } else if (!question.varies() && alike < selection.mostAlike() && (question.isInWords() || selection.isSingle() || !alike(question, Absent.NONE).stops().isEmpty())) {
                asked.add(question);
                variants.add(null);
                needless.add(Needless.of(question));
                alike++;
            }
        }
    }

    /** A question as it stands in the lesson. */
    private static Task alike(Question question, Absent without) {
        Working working = question.isInWords() ? null : Outcome.of(question.calculator(), question.given()).working();
        return new Task(question, question.given(), working, without);
    }

    private boolean ask(Question question) {
        Variants some = new Variants(question, seed);
        if (!some.isEnough()) {
            leftOut.add(question);
            return false;
        }
        asked.add(question);
        variants.add(some);
        needless.add(Needless.of(question));
        return true;
    }

    /** The questions on every sheet, in order. */
    public List<Question> asked() {
        return List.copyOf(asked);
    }

    /** Questions for which too few answers were found that differ enough: they stand on no sheet. */
    public List<Question> leftOut() {
        return List.copyOf(leftOut);
    }

    /** The sheet of a person, counted from 1. */
    public Sheet sheet(int person) {
        List<Task> tasks = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            Question question = asked.get(i);
            if (variants.get(i) == null) {
                tasks.add(alike(question, needless.get(i)));
            } else {
                Variation variation = variants.get(i).of(person);
                tasks.add(new Task(question, variation.entries(), variation.working(), needless.get(i)));
            }
        }
        return new Sheet(person, SheetCode.of(selection, seed, person), List.copyOf(tasks));
    }

    /** The sheets of people 1 to {@code people}. */
    public List<Sheet> sheets(int people) {
        List<Sheet> sheets = new ArrayList<>();
        for (int person = 1; person <= people; person++) {
            sheets.add(sheet(person));
        }
        return sheets;
    }
}
