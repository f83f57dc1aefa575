package loomwright.practice;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** Round numbers near a given one, such as a person would meet on the job. */
final class RoundNumbers {
    private static final double[] STEPS = {1, 1.2, 1.5, 1.6, 1.8, 2, 2.2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 7.5, 8, 9};
    private static final double[] SQUARE_MILLIMETRES = {0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120};
    /** 1/0 is gauge 0, 2/0 is −1, 4/0 is −3. */
    private static final double[] GAUGES = {22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3};
    /** At rest, under load and on charge. */
    private static final double[] TWELVE_VOLTS = {11.8, 12, 12.2, 12.5, 12.8, 13.2, 13.6, 14.4};
    /** Where a 12 V system ends: a battery empty or nearly so. */
    private static final double[] LOW_TWELVE_VOLTS = {10, 10.5, 10.8, 11, 11.4};
    private static final double[] TWENTY_FOUR_VOLTS = {23.6, 24, 24.4, 25, 25.6, 26.4, 27.2, 28, 28.8};
    private static final double[] RATINGS = {1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300};
    /** What a port or an adapter gives. */
    private static final double[] DEVICE_VOLTS = {5, 9, 15, 20};
    /** Runs in a van, a boat, a trailer or a shed. */
    private static final double[] METRES = {
        0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.2, 1.5, 1.8, 2, 2.2, 2.5, 2.8, 3, 3.2, 3.5, 3.8, 4, 4.2, 4.5, 4.8, 5, 5.5, 6, 6.5, 7, 7.5, 8, 9, 10, 11, 12
    };
    private static final double[] FEET = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 18, 20, 22, 24, 25, 28, 30, 32, 35, 40};
    /** Batteries as they are sold. */
    private static final double[] AMPERE_HOURS = {40, 50, 60, 70, 75, 80, 90, 95, 100, 105, 110, 120, 140, 150, 180, 200, 220, 250, 280, 300};
    /** Solar panels as they are sold. */
    private static final double[] PANEL_WATTS = {50, 60, 80, 90, 100, 110, 120, 130, 140, 150, 160, 175, 180, 190, 200, 220, 240, 250, 300};
    private static final int SIZES_APART = 2;

    private RoundNumbers() {}

    /**
     * Another number in the place of {@code given}, in its unit; the same one if there is no other that makes sense.
     *
     * @param field the key of the field it stands in
     * @param rating whether it is the rating of a fuse-link or breaker, which come in a series
     */
    static Quantity near(String field, Quantity given, boolean rating, Seeds seeds) {
        List<Double> numbers = rating ? neighbours(RATINGS, given.value()) : numbers(field, given);
        numbers.removeIf(number -> Math.abs(number - given.value()) <= 1e-9 * Math.abs(number));
        return numbers.isEmpty() ? given : Quantity.of(numbers.get(seeds.below(numbers.size())), given.unit());
    }

    private static List<Double> numbers(String field, Quantity given) {
        double value = given.value();
        double[] sold = sold(field, given);
        if (sold.length > 0) {
            return near(sold, value);
        }
        if (given.unit() == Units.AWG) {
            return neighbours(GAUGES, value);
        }
        if (given.unit() == Units.SQUARE_MILLIMETRE) {
            return neighbours(SQUARE_MILLIMETRES, value);
        }
        if (given.unit() == Units.CELSIUS || given.unit() == Units.FAHRENHEIT) {
            return steps(value, 5, 15);
        }
        if (given.unit() == Units.PERCENT && value >= 20) {
            return value == 100 ? new ArrayList<>() : below(steps(value, 5, 20), 100);
        }
        if (given.unit() == Units.ONE) {
            return value == Math.floor(value) ? above(steps(value, 1, 2), 0) : hundredths(value);
        }
        if (given.unit() == Units.VOLT && value >= 5) {
            return volts(value);
        }
        return value > 0 ? ofTheSameOrder(value) : new ArrayList<>();
    }

    /** The series in which such a thing is sold or met, empty if there is none or the given one lies outside it. */
    private static double[] sold(String field, Quantity given) {
        double value = given.value();
        boolean run = field.contains("length") || field.contains("distance");
        if (run && given.unit() == Units.METRE && value <= METRES[METRES.length - 1]) {
            return METRES;
        }
        if (run && given.unit() == Units.FEET && value <= FEET[FEET.length - 1]) {
            return FEET;
        }
        if (given.unit() == Units.AMPERE_HOUR && field.contains("capacity") && value >= AMPERE_HOURS[0]) {
            return AMPERE_HOURS;
        }
        boolean panel = field.contains("panel") && given.unit() == Units.WATT && value >= PANEL_WATTS[0];
        return panel ? PANEL_WATTS : new double[0];
    }

    private static List<Double> near(double[] series, double value) {
        List<Double> list = new ArrayList<>();
        for (double number : series) {
            if (number >= value / 2 && number <= value * 2) {
                list.add(number);
            }
        }
        return list;
    }

    private static List<Double> volts(double value) {
        if (value > 11.4 && value < 15) {
            return listed(TWELVE_VOLTS);
        }
        if (value >= 10 && value <= 11.4) {
            return listed(LOW_TWELVE_VOLTS);
        }
        if (value >= 22 && value <= 30) {
            return listed(TWENTY_FOUR_VOLTS);
        }
        for (double device : DEVICE_VOLTS) {
            if (value == device) {
                return listed(DEVICE_VOLTS);
            }
        }
        return ofTheSameOrder(value);
    }

    /** An exponent or another factor with digits after the point: a little more or less, on the same side of one. */
    private static List<Double> hundredths(double value) {
        List<Double> list = steps(Math.floor(value * 100 + 0.5), 5, 10);
        List<Double> kept = new ArrayList<>();
        for (double hundred : list) {
            if (hundred > 0 && hundred > 100 == value > 1) {
                kept.add(hundred / 100);
            }
        }
        return kept;
    }

    private static List<Double> listed(double[] numbers) {
        List<Double> list = new ArrayList<>();
        for (double number : numbers) {
            list.add(number);
        }
        return list;
    }

    /** The sizes of a series close to one of its sizes. */
    private static List<Double> neighbours(double[] series, double value) {
        List<Double> list = new ArrayList<>();
        for (int i = 0; i < series.length; i++) {
            if (Math.abs(series[i] - value) < 1e-9) {
                for (int j = Math.max(0, i - SIZES_APART); j <= Math.min(series.length - 1, i + SIZES_APART); j++) {
                    list.add(series[j]);
                }
            }
        }
        return list;
    }

    private static List<Double> steps(double value, double step, double reach) {
        double middle = Math.floor(value / step + 0.5) * step;
        List<Double> list = new ArrayList<>();
        for (double apart = -reach; apart <= reach; apart += step) {
            list.add(middle + apart);
        }
        return list;
    }

    private static List<Double> below(List<Double> numbers, double limit) {
        numbers.removeIf(number -> number >= limit);
        return numbers;
    }

    private static List<Double> above(List<Double> numbers, double limit) {
        numbers.removeIf(number -> number <= limit);
        return numbers;
    }

    /** Numbers of two digits from half of it to twice it. */
    private static List<Double> ofTheSameOrder(double value) {
        List<Double> list = new ArrayList<>();
        for (int power = -9; power <= 9; power++) {
            for (double step : STEPS) {
                // Divided, not multiplied by a tenth: 35 / 10 is 3.5, 35 * 0.1 is not.
                double number = power < 0 ? step / tens(-power) : step * tens(power);
                if (number >= value / 2 && number <= value * 2) {
                    list.add(number);
                }
            }
        }
        return list;
    }

    private static double tens(int power) {
        double tens = 1;
        for (int i = 0; i < power; i++) {
            tens *= 10;
        }
        return tens;
    }
}
