package loomwright.turned;

import java.util.List;
import java.util.Map;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import loomwright.worked.QuantityField;

/** Turns the question of any calculator round. */
public final class TurnedRound {
    private TurnedRound() {}

    /**
     * Finds the figure of a field with which a calculator gives what is wanted.
     *
     * @param typed what was typed into the fields; that of the unknown says only in which unit, or which series of sizes, it is asked for
     */
    public static Turned of(Calculator calculator, Map<String, String> typed, QuantityField unknown, Wish wish) {
        Quantity entered = entered(unknown, typed.get(unknown.key()));
        Unit unit = unit(unknown, entered);
        Asking asking = new Asking(calculator, typed, unknown, unit, wish);
        List<Double> series = SoldSizes.of(unknown, unit);
        Scan scan = Scan.over(asking, series == null ? Scan.grid(asking, entered) : series);
        String obstacle = obstacle(asking, scan);
        if (obstacle != null) {
            return Told.none(asking, obstacle);
        }
        return series == null ? new Between(asking, scan).found() : new Series(asking, scan).found();
    }

    private static Quantity entered(QuantityField unknown, String text) {
        String taken = text == null || text.isBlank() ? unknown.usual() : text;
        return taken == null || taken.isBlank() ? null : QuantityText.read(taken, unknown.units().get(0)).quantity();
    }

    private static Unit unit(QuantityField unknown, Quantity entered) {
        Unit unit = entered == null || unknown.limits(entered.unit()) == null ? unknown.units().get(0) : entered.unit();
        boolean without = unit.dimension().equals(Dimension.AREA) && SoldSizes.conductors(unit) == null;
        return without ? Units.AWG : unit;
    }

    /** A figure that the field takes. */
    private static double some(Asking asking) {
        return asking.unknown().limits(asking.unit()).greatest().in(asking.unit()).value();
    }

    /** Why no figure can be found, or null. */
    private static String obstacle(Asking asking, Scan scan) {
        String label = asking.unknown().label();
        if (scan.isEmpty()) {
            Outcome now = Outcome.of(asking.calculator(), asking.typed());
            Outcome tried = now.working() == null ? now : asking.outcome(some(asking));
            String why = tried.faults().isEmpty() ? "" : ": " + tried.faults().get(0).message();
            return "With the other figures as they are, no " + Told.small(label) + " gives " + Told.wanted(asking.wish()) + why + ".";
        }
        if (scan.isLevel() && asking.wish().output() != null) {
            return Told.capital(Told.subject(asking.wish())) + " does not depend on " + Told.the(label) + " here: it is "
                    + asking.wish().said(scan.given().get(0)) + " with every figure.";
        }
        if (!scan.isOneWay()) {
            return Told.capital(Told.subject(asking.wish())) + " both rises and falls while " + Told.the(label)
                    + " grows, so no single figure answers this: change the entry and watch the result.";
        }
        return null;
    }
}
