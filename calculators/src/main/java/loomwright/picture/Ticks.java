package loomwright.picture;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.NumberText;

/** Chooses where the numbers of an axis stand: at multiples of 1, 2, 2.5 or 5 times a power of ten. */
final class Ticks {
    /** A hair, so that a tick at the very end is not lost to rounding. */
    private static final double HAIR = 1e-9;

    private static final double[] STEPS = {1, 2, 2.5, 5, 10};

    private Ticks() {}

    /** The smallest round step that cuts {@code span} into at most {@code most} parts. */
    static double step(double span, int most) {
        double power = powerOfTenBelow(span / most);
        for (double step : STEPS) {
            if (span / (step * power) <= most * (1 + HAIR)) {
                return step * power;
            }
        }
        return 10 * power;
    }

    static List<Tick> linear(double from, double to, int most) {
        double step = step(to - from, most);
        int digits = digits(step);
        long first = (long) Math.ceil(from / step - HAIR);
        long last = (long) Math.floor(to / step + HAIR);
        List<Tick> ticks = new ArrayList<>();
        for (long i = first; i <= last; i++) {
            ticks.add(new Tick(i * step, NumberText.fixed(i * step, digits)));
        }
        return ticks;
    }

    /** Every whole multiple of each power of ten; numbered are 1, 2 and 5, or over a wide span 1 alone. */
    static List<Tick> logarithmic(double from, double to) {
        boolean wide = to / from > 2000;
        List<Tick> ticks = new ArrayList<>();
        for (double power = powerOfTenBelow(from); power <= to * (1 + HAIR); power *= 10) {
            for (int times = 1; times < 10; times++) {
                double value = times * power;
                if (value >= from * (1 - HAIR) && value <= to * (1 + HAIR)) {
                    boolean numbered = times == 1 || !wide && (times == 2 || times == 5);
                    ticks.add(new Tick(value, numbered ? NumberText.significant(value, 1) : ""));
                }
            }
        }
        return ticks;
    }

    /** The power of ten at or below a positive number. */
    private static double powerOfTenBelow(double value) {
        double power = 1;
        while (power * 10 <= value * (1 + HAIR)) {
            power *= 10;
        }
        while (power > value * (1 + HAIR)) {
            power /= 10;
        }
        return power;
    }

    /** How many digits after the point the multiples of {@code step} need. */
    private static int digits(double step) {
        int digits = 0;
        double scaled = step;
        while (digits < 6 && Math.abs(scaled - Math.floor(scaled + 0.5)) > HAIR * scaled) {
            scaled *= 10;
            digits++;
        }
        return digits;
    }
}
