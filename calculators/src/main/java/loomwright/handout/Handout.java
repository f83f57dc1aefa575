package loomwright.handout;

import java.util.ArrayList;
import java.util.List;
import loomwright.practice.Variation;

/** The sheets of a day: the same questions for everyone, the numbers of each person their own. */
public final class Handout {
    private final Selection selection;
    private final int seed;
    private final List<Question> asked = new ArrayList<>();
    private final List<Variants> variants = new ArrayList<>();
    private final List<Question> leftOut = new ArrayList<>();

    /**
     * Prepares the sheets of a selection.
     *
     * @param seed the same seed gives the same sheets, on every machine
     */
    public Handout(Selection selection, int seed) {
        this.selection = selection;
        this.seed = seed;
        for (Question question : selection.questions()) {
            Variants some = new Variants(question, seed);
            if (some.isEnough()) {
                asked.add(question);
                variants.add(some);
            } else {
                leftOut.add(question);
            }
        }
    }

    /** The questions on every sheet, in order. */
    public List<Question> asked() {
        return List.copyOf(asked);
    }

    /** Questions for which no two answers were found: their numbers cannot be changed, so they stand on no sheet. */
    public List<Question> leftOut() {
        return List.copyOf(leftOut);
    }

    /** The sheet of a person, counted from 1. */
    public Sheet sheet(int person) {
        List<Task> tasks = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            Variation variation = variants.get(i).of(person);
            tasks.add(new Task(asked.get(i), variation.entries(), variation.working()));
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
