package loomwright.turned;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.worked.Limits;

/**
 * What comes of the figures from the least a field takes to the greatest: those that the calculator answers, in order.
 *
 * @param figures the figures
 * @param given what each gives
 */
record Scan(List<Double> figures, List<Double> given) {
    private static final int POINTS = 60;
    private static final double HAIR = 1e-9;
    /** Where a field begins at nought or below, the steps from nought upwards begin at this share of its greatest figure. */
    private static final double SMALLEST_SHARE = 1e-5;

    static Scan over(Asking asking, List<Double> tried) {
        List<Double> figures = new ArrayList<>();
        List<Double> given = new ArrayList<>();
        for (double figure : tried) {
            double gives = asking.given(figure);
            if (!Double.isNaN(gives)) {
                figures.add(figure);
                given.add(gives);
            }
        }
        return new Scan(figures, given);
    }

    /** Figures close enough to each other to see where what they give rises and falls. */
    static List<Double> grid(Asking asking, Quantity typed) {
        Limits limits = asking.unknown().limits(asking.unit());
        double one = limits.least().in(asking.unit()).value();
        double other = limits.greatest().in(asking.unit()).value();
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        List<Double> grid = new ArrayList<>();
        grid.add(low);
        double start = low > 0 ? low : high * SMALLEST_SHARE;
        for (int i = low > 0 ? 1 : 0; i < POINTS; i++) {
            boolean even = low < 0;
            grid.add(even ? low + (high - low) * (i + 1) / (POINTS + 1) : start * Math.pow(high / start, (double) i / POINTS));
        }
        grid.add(high);
        if (typed != null && typed.dimension().equals(asking.unit().dimension())) {
            add(grid, typed.in(asking.unit()).value());
        }
        return grid;
    }

    private static void add(List<Double> grid, double figure) {
        for (int i = 0; i < grid.size(); i++) {
            if (grid.get(i) >= figure) {
                if (grid.get(i) != figure) {
                    grid.add(i, figure);
                }
                return;
            }
        }
    }

    boolean isEmpty() {
        return figures.isEmpty();
    }

    int last() {
        return figures.size() - 1;
    }

    /** Whether every figure gives the same. */
    boolean isLevel() {
        for (double each : given) {
            if (direction(given.get(0), each) != 0) {
                return false;
            }
        }
        return true;
    }

    /** Whether it rises all the way, or falls all the way. */
    boolean isOneWay() {
        int way = 0;
        for (int i = 1; i < given.size(); i++) {
            int step = direction(given.get(i - 1), given.get(i));
            if (step * way < 0) {
                return false;
            }
            way = way == 0 ? step : way;
        }
        return true;
    }

    boolean rises() {
        return direction(given.get(0), given.get(last())) > 0;
    }

    /** The place before which what is given is on one side of the border, and from which it is on the other; −1 if there is none. */
    int crossing(double border) {
        for (int i = 1; i < given.size(); i++) {
            if (given.get(i - 1) <= border != given.get(i) <= border) {
                return i;
            }
        }
        return -1;
    }

    private static int direction(double from, double to) {
        double most = Math.max(Math.abs(from), Math.abs(to));
        return Math.abs(to - from) <= HAIR * most ? 0 : to > from ? 1 : -1;
    }
}
