package loomwright.worked;

import loomwright.quantity.Quantity;

/** Whether two figures are one figure, worked out by two people who round each in their own way. */
public final class Agreement {
    private static final double ROUNDED_ON_THE_WAY = 0.01;
    private static final double ROUNDED_TO_THREE_FIGURES = 0.005;
    private static final double NEARER = 4;

    private Agreement() {}

    /** Whether a number is the right one, but for rounding in the middle of a working: within 1 % of it. */
    public static boolean agrees(Quantity answer, Quantity right) {
        return difference(answer, right) <= ROUNDED_ON_THE_WAY;
    }

    /** Whether two numbers stay two when each is written with three figures: that moves a number by half a percent at most. */
    public static boolean isApart(Quantity answer, Quantity right) {
        return difference(answer, right) > ROUNDED_TO_THREE_FIGURES;
    }

    /** Whether a number is not the right one, but one that was worked out with a mistake. */
    public static boolean isAnother(Quantity answer, Quantity mistaken, Quantity right) {
        return !agrees(answer, right) || isRather(answer, mistaken, right);
    }

    /** Whether a number that may pass for {@code right} is far rather {@code wrong}: less than a quarter as far away from it. */
    private static boolean isRather(Quantity answer, Quantity wrong, Quantity right) {
        return agrees(answer, wrong)
                && isApart(wrong, right)
                && NEARER * Math.abs(answer.base() - wrong.base()) < Math.abs(answer.base() - right.base());
    }

    /** The difference as a share of what it is held against. */
    public static double difference(Quantity answer, Quantity against) {
        double base = against.base();
        double apart = Math.abs(answer.base() - base);
        return apart == 0 ? 0 : apart / Math.max(Math.abs(base), 1e-300);
    }
}
