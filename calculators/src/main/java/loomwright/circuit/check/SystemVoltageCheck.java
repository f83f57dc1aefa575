package loomwright.circuit.check;

import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;

/**
 * Whether loads and battery belong to one voltage system. Where its data sheet gives the highest voltage a load stands, that decides; else
 * what a load for 12 V may meet, in proportion for 24 V. Far above that it is a load of another system.
 *
 * @source table battery-limits, row system-window (common practice)
 */
final class SystemVoltageCheck implements PartCheck {
    private static final double TWELVE = 12;
    /** A battery that is charged a little high is a question; at this much more than the window the load is made for another battery. */
    private static final double OTHER_SYSTEM = 1.1;
    private static final String REMEDY = "Take a load made for this battery, or feed it through a converter with its own device.";

    @Override
    public void check(Node node, Context context, Findings findings) {
        if (!(node.figures() instanceof Load load)) {
            return;
        }
        Row window = PublishedTables.batteryLimits().row("system-window");
        Quantity highest = context.battery().highest();
        boolean given = load.highestWorking() != null;
        Quantity most = given ? load.highestWorking() : share(window.quantity("value-to", Units.VOLT), load);
        Source source = given ? node.part().figuresFrom() : window.source();
        boolean far = given || highest.base() > OTHER_SYSTEM * most.base();
        findings.add(Check.SYSTEM_VOLTAGE, node, Comparison.of("The highest voltage of the battery at " + node.title(), highest)
                .atMost(most, given ? "what it stands by its data sheet" : "what a load for " + load.ratedVoltage().text() + " may meet", source)
                .exact()
                .settledBy(new MissingFigure("highest-working-voltage", "highest voltage that " + node.title() + " stands", "its data sheet"))
                .otherwise(far ? Verdict.STOP : Verdict.CAUTION, far ? REMEDY : "Look up in its data sheet the highest voltage it stands, and enter it."));
        if (load.lowestWorking() == null) {
            findings.add(Check.SYSTEM_VOLTAGE, node, Comparison.of(
                            "The resting voltage of the battery at " + node.title(), context.battery().resting())
                    .atLeast(share(window.quantity("value", Units.VOLT), load), "the least that a load for " + load.ratedVoltage().text() + " may meet", window.source())
                    .exact()
                    .otherwise(Verdict.CAUTION, REMEDY));
        }
    }

    private static Quantity share(Quantity ofTwelve, Load load) {
        return Quantity.of(ofTwelve.value() * load.ratedVoltage().in(Units.VOLT).value() / TWELVE, Units.VOLT);
    }
}
