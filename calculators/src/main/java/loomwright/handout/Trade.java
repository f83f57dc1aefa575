package loomwright.handout;

import java.util.Map;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;
import loomwright.worked.Result;
import loomwright.worked.Working;

/**
 * Whether numbers are such as a person meets on a 12 V or 24 V job in a van, a boat, a trailer or a shed: sizes that are sold, runs that fit
 * in, voltages of the trade. The limits are <em>common practice</em> and decide nothing but what stands on a sheet.
 */
final class Trade {
    private static final double HIGHEST_VOLTS = 30;
    private static final double LONGEST_METRES = 15;
    private static final double MOST_WATTS = 1500;
    private static final double[] SQUARE_MILLIMETRES = {0.35, 0.5, 0.75, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 16, 20, 25, 35, 50, 70, 95, 120};
    private static final double[] PORT_VOLTS = {5, 9, 15, 20};
    /** What a port gives at most at each of them: only at 20 V, and with a cable made for it, more than 3 A. */
    private static final double[] PORT_AMPERES = {3, 3, 3, 5};
    /** Amperes to a square millimetre of a run that somebody would lay. */
    private static final double LEAST_DENSITY = 0.9;
    private static final double HIGHEST_DENSITY = 12;

    private static final double MOST_DROP = 0.12;

    private Trade() {}

    /** Whether each entry is one of the trade, and they go together. */
    static boolean isReal(Calculator calculator, Map<String, String> entries) {
        for (Field field : calculator.description().fields()) {
            Quantity entry = read(field, entries);
            if (entry != null && !isReal(field.key(), entry)) {
                return false;
            }
        }
        return isPort(calculator, entries) && isRun(calculator, entries);
    }

    private static boolean isReal(String field, Quantity entry) {
        Dimension dimension = entry.dimension();
        double base = Math.abs(entry.base());
        if (dimension.equals(Dimension.AREA)) {
            return isSold(entry);
        }
        if (dimension.equals(Dimension.VOLTAGE)) {
            return base <= HIGHEST_VOLTS || field.contains("rated");
        }
        if (dimension.equals(Dimension.POWER)) {
            return base <= MOST_WATTS;
        }
        boolean run = field.contains("length") || field.contains("distance");
        return !run || !dimension.equals(Dimension.LENGTH) || base <= LONGEST_METRES;
    }

    private static boolean isSold(Quantity size) {
        if (size.unit() == Units.AWG) {
            double gauge = size.value();
            return gauge == Math.floor(gauge) && gauge >= -3 && gauge <= 22 && (gauge <= 2 || gauge % 2 == 0);
        }
        for (double sold : SQUARE_MILLIMETRES) {
            if (size.unit() == Units.SQUARE_MILLIMETRE && Math.abs(size.value() - sold) < 1e-9) {
                return true;
            }
        }
        return false;
    }

    /** A port of a few volts gives a few amperes, and its watts at the lowest voltage that can. */
    private static boolean isPort(Calculator calculator, Map<String, String> entries) {
        for (String key : new String[] {"voltage", "device-voltage"}) {
            double volts = base(calculator, key, entries);
            double current = base(calculator, key.equals("voltage") ? "current" : "device-current", entries);
            double power = base(calculator, "power", entries);
            double before = 0;
            for (int i = 0; i < PORT_VOLTS.length; i++) {
                double most = PORT_VOLTS[i] * PORT_AMPERES[i];
                if (volts == PORT_VOLTS[i] && (current > PORT_AMPERES[i] || power > most || power <= before)) {
                    return false;
                }
                before = most;
            }
        }
        return true;
    }

    /** A cable of a run is neither a rope for a lamp nor a thread for a winch. */
    private static boolean isRun(Calculator calculator, Map<String, String> entries) {
        double area = base(calculator, "size", entries);
        double current = base(calculator, "current", entries);
        double run = base(calculator, "route-length", entries);
        if (Double.isNaN(area) || Double.isNaN(current) || Double.isNaN(run)) {
            return true;
        }
        double density = current / Quantity.ofBase(area, Units.SQUARE_MILLIMETRE).value();
        return density >= LEAST_DENSITY && density <= HIGHEST_DENSITY;
    }

    /** Nobody lays a run that takes so much of the voltage, unless the printed question is about such a one. */
    static boolean isRun(Working working, Working printed) {
        Result share = working.result("drop-percent");
        Result usual = printed.result("drop-percent");
        return share == null || usual == null || share.quantity().base() <= Math.max(MOST_DROP, usual.quantity().base());
    }

    /** The entry of a field in its basic unit; not a number if there is none, which no comparison finds too large. */
    private static double base(Calculator calculator, String key, Map<String, String> entries) {
        Field field = calculator.description().field(key);
        Quantity entry = field == null ? null : read(field, entries);
        return entry == null ? Double.NaN : entry.base();
    }

    private static Quantity read(Field field, Map<String, String> entries) {
        String text = entries.get(field.key());
        return field instanceof QuantityField asked && text != null && !text.isBlank() ? QuantityText.read(text, asked.units().get(0)).quantity() : null;
    }
}
