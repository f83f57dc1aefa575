package loomwright.handout;

import java.util.ArrayList;
import java.util.List;
import loomwright.practice.Variation;
import loomwright.quantity.Quantity;
import loomwright.worked.Outcome;
import loomwright.worked.Result;

/**
 * One question with many numbers, no two with the same answer.
 *
 * <p>The variants stand in a ring, found in the order of the seed. Person after person takes the next, so people with numbers that follow
 * each other never share an answer, and the sheet of a person does not depend on how many people there are.
 */
final class Variants {
    private static final int MOST = 40;
    private static final int FRUITLESS = 30;
    /** Answers nearer than this could both be right for one figure, rounded. */
    private static final double APART = 0.03;
    /** An answer many times the printed one is seldom one that a job has. */
    private static final double TIMES = 4;

    private final Question question;
    private final int seed;
    private final Quantity printed;
    private final List<Variation> found = new ArrayList<>();
    private int tried;
    private boolean exhausted;

    Variants(Question question, int seed) {
        this.question = question;
        this.seed = seed;
        Result result = Outcome.of(question.calculator(), question.given()).working().result(question.asked().key());
        this.printed = result == null ? null : result.quantity();
    }

    /** Whether there are at least two, so that neighbours can differ. */
    boolean isEnough() {
        return printed != null && find(2);
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
            if (variation != null && isFit(answer(variation))) {
                found.add(variation);
                fruitless = 0;
            } else {
                fruitless++;
            }
            exhausted = found.size() >= MOST || fruitless >= FRUITLESS;
        }
        return found.size() >= count;
    }

    private Quantity answer(Variation variation) {
        Result result = variation.working().result(question.asked().key());
        return result == null ? null : result.quantity();
    }

    /** A number of the sign and the order of the printed answer, apart from every answer so far. */
    private boolean isFit(Quantity answer) {
        if (answer == null || Double.isNaN(answer.value()) || Double.isInfinite(answer.value())) {
            return false;
        }
        if (answer.base() == 0 || answer.base() > 0 != printed.base() > 0) {
            return false;
        }
        double times = answer.base() / printed.base();
        if (times > TIMES || times < 1 / TIMES) {
            return false;
        }
        for (Variation other : found) {
            if (!isApart(answer, answer(other))) {
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
