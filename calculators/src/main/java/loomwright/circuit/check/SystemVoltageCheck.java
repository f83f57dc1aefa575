package loomwright.circuit.check;

import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Comparison;
import loomwright.worked.Verdict;

/**
 * Whether loads and battery belong to one voltage system. A load made for 12 V meets 10.5 V to 14.6 V, less than a third above its name; where
 * its data sheet gives the highest voltage it stands, that decides.
 */
final class SystemVoltageCheck implements PartCheck {
    /** 15.6 V on a 12 V load, 31.2 V on one for 24 V: above what batteries of these names come to at most while they charge. Common practice. */
    private static final double MOST = 1.3;
    /** Below this share of its rated voltage most loads do not start. Common practice. */
    private static final double LEAST = 0.8;

    @Override
    public void check(Node node, Context context, Findings findings) {
        if (!(node.figures() instanceof Load load)) {
            return;
        }
        Quantity highest = context.battery().highest();
        Quantity rated = load.ratedVoltage();
        boolean given = load.highestWorking() != null;
        Quantity most = given ? load.highestWorking() : Quantity.of(MOST * rated.value(), rated.unit());
        findings.add(Check.SYSTEM_VOLTAGE, node, Comparison.of("The highest voltage of the battery at " + node.title(), highest)
                .atMost(most, given ? "what it stands by its data sheet" : "130 % of the " + rated.text() + " it is made for", source(given))
                .exact()
                .otherwise(Verdict.STOP, "Take a load made for this battery, or feed it through a converter with its own device."));
        if (load.lowestWorking() == null) {
            Quantity least = Quantity.of(LEAST * rated.value(), rated.unit());
            findings.add(Check.SYSTEM_VOLTAGE, node, Comparison.of("The resting voltage of the battery at " + node.title(), context.battery().resting())
                    .atLeast(least, "80 % of the " + rated.text() + " it is made for", source(false))
                    .exact()
                    .otherwise(Verdict.CAUTION, "Take a load made for this battery, or feed it through a converter with its own device."));
        }
    }

    private static Source source(boolean given) {
        return given ? Findings.entered() : Source.commonPractice();
    }
}
