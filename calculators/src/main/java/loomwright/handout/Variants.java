package loomwright.handout;

import java.util.ArrayList;
import java.util.List;
import loomwright.practice.Variation;
import loomwright.quantity.Quantity;
import loomwright.worked.Finding;
import loomwright.worked.Outcome;
import loomwright.worked.Output;
import loomwright.worked.Result;
import loomwright.worked.Verdict;
import loomwright.worked.Working;

/**
 * One question with many numbers, no two with the same answer, and none that ends in a stop.
 *
 * <p>The variants stand in a ring, found in the order of the seed. Person after person takes the next, so people with numbers that follow
 * each other never share an answer, and the sheet of a person does not depend on how many people there are.
 */
final class Variants {
    /** With so many in the ring, no more than one in eight share an answer, however many people there are: the first fifteen share none. */
    static final int ENOUGH = 15;

    private static final int MOST = 40;
    private static final int FRUITLESS = 150;
    /** Answers nearer than this could both be right for one figure, rounded. */
    private static final double APART = 0.03;
    /** An answer many times the printed one is seldom one that a job has. */
    private static final double TIMES = 4;

    private final Question question;
    private final int seed;
    private final Working printed;
    private final List<Variation> found = new ArrayList<>();
    private int tried;
    private boolean exhausted;

    Variants(Question question, int seed) {
        this.question = question;
        this.seed = seed;
        this.printed = Outcome.of(question.calculator(), question.given()).working();
    }

    /** Whether there are enough for a room of any size. */
    boolean isEnough() {
        for (Output asked : question.asked()) {
            if (answer(printed, asked) == null) {
                return false;
            }
        }
        return Trade.isReal(question.calculator(), question.given()) && find(ENOUGH);
    }

    /** What the person of that number gets, counted from 1. Only if there are enough. */
    Variation of(int person) {
        return found.get(find(person) ? person - 1 : (person - 1) % found.size());
    }

    private boolean find(int count) {
        int fruitless = 0;
        while (found.size() < count && !exhausted) {
            tried++;
            Variation variation = Variation.of(question.calculator(), question.given(), question.keep(), Variation.seed(question.key(), seed * 1009 + tried));
            if (variation != null && isFit(variation)) {
                found.add(variation);
                fruitless = 0;
            } else {
                fruitless++;
            }
            exhausted = found.size() >= MOST || fruitless >= FRUITLESS;
        }
        return found.size() >= count;
    }

    private boolean isFit(Variation variation) {
        if (stops(variation.working()) || !Trade.isReal(question.calculator(), variation.entries()) || !Scene.reads(question.words(), variation.entries())
                || !Trade.isRun(variation.working(), printed)) {
            return false;
        }
        for (Output asked : question.asked()) {
            if (!isFit(answer(variation.working(), asked), asked)) {
                return false;
            }
        }
        return true;
    }

    private static boolean stops(Working working) {
        for (Finding finding : working.findings()) {
            if (finding.verdict() == Verdict.STOP) {
                return true;
            }
        }
        return false;
    }

    private static Quantity answer(Working working, Output asked) {
        Result result = working.result(asked.key());
        return result == null ? null : result.quantity();
    }

    /** A number of the sign and the order of the printed answer, apart from every answer so far. */
    private boolean isFit(Quantity answer, Output asked) {
        double usual = answer(printed, asked).base();
        if (answer == null || Double.isNaN(answer.value()) || Double.isInfinite(answer.value()) || answer.base() == 0 || answer.base() > 0 != usual > 0) {
            return false;
        }
        double times = answer.base() / usual;
        if (times > TIMES || times < 1 / TIMES) {
            return false;
        }
        for (Variation other : found) {
            if (!isApart(answer, answer(other.working(), asked))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isApart(Quantity one, Quantity other) {
        double largest = Math.max(Math.abs(one.base()), Math.abs(other.base()));
        return Math.abs(one.base() - other.base()) > APART * largest;
    }
}
