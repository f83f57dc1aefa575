package loomwright.circuit.check;

import loomwright.circuit.Conductor;
import loomwright.circuit.Node;
import loomwright.circuit.Protection;
import loomwright.circuit.solve.FaultCurrents;
import loomwright.protection.HeatingFormulas;
import loomwright.protection.OpeningTimes;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.Row;
import loomwright.worked.Verdict;

/** Whether each conductor stands a short circuit until the device before it has opened, at both ends of the range of fault current. */
final class HeatCheck implements PartCheck {
    /** A conductor without a device has been found by another check. */
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.figures() instanceof Conductor conductor && node.deviceBefore() != null) {
            new Heating(node, conductor, node.deviceBefore(), context.currents(), findings).check();
        }
    }

    /** A conductor and the device that guards it. */
    private record Heating(Node node, Conductor conductor, Node device, FaultCurrents currents, Findings findings) {
        void check() {
            Quantity lowest = currents.lowest(node);
            if (Findings.within(lowest, protection().rating())) {
                findings.add(
                        Check.SHORT_CIRCUIT_HEAT, node, false, Verdict.STOP,
                        "A short circuit at the end of " + node.title() + " may drive as little as " + lowest.text(3)
                                + ", no more than the rating of " + device.title() + ": it may never open.",
                        lowest, protection().rating(), currents.source(), "Take a smaller rating, a thicker conductor or a shorter route.");
                return;
            }
            Quantity highest = currents.highest(node.parent());
            double atLowest = hardship(lowest);
            boolean lowestIsWorse = highest == null || atLowest >= hardship(highest);
            addWorse(lowestIsWorse ? lowest : highest);
        }

        private Protection protection() {
            return (Protection) device.figures();
        }

        /** Latest opening time as a share of what the conductor stands; beyond every limit where no time is in print. */
        private double hardship(Quantity current) {
            Protection protection = protection();
            OpeningTimes times = OpeningTimes.of(protection.device().key(), protection.rating(), current);
            boolean known = times != null && times.latest() != null;
            return known ? times.latest().base() / longest(current).base() : Double.POSITIVE_INFINITY;
        }

        private void addWorse(Quantity current) {
            Protection protection = protection();
            OpeningTimes times = OpeningTimes.of(protection.device().key(), protection.rating(), current);
            Quantity longest = longest(current);
            Row insulation = conductor.insulation().row();
            String opening = "A short circuit of " + current.text(3) + " in " + node.title() + ": ";
            if (times == null || times.latest() == null) {
                findings.caution(
                        Check.SHORT_CIRCUIT_HEAT, node,
                        opening + "the conductor stands it for " + words(longest) + ", but no time is in print by which a " + protection.words()
                                + " has opened.",
                        longest, times == null ? insulation.source() : times.source(), "Take the time from the curve in the data sheet of the device.");
                return;
            }
            boolean passed = Findings.within(times.latest(), longest);
            boolean failed = times.earliest() != null && times.earliest().base() > longest.base();
            boolean weak = failed ? times.earliestIsWeak() : times.latestIsWeak();
            Source timesSource = failed ? times.earliestSource() : times.source();
            Source source = weak || !passed && !failed ? timesSource : Findings.weaker(insulation.source(), currents.source());
            String words = opening + "the conductor stands it for " + words(longest) + "; a " + protection.words()
                    + (failed ? " does not open before " + OpeningTimes.words(times.earliest()) : " has opened by " + OpeningTimes.words(times.latest()))
                    + (passed || failed ? "." : ". Print says no more of it, so nothing is shown either way.");
            if (weak || !passed && !failed) {
                findings.caution(Check.SHORT_CIRCUIT_HEAT, node, words, times.latest(), source, integral(insulation));
            } else {
                Quantity time = failed ? times.earliest() : times.latest();
                findings.add(
                        Check.SHORT_CIRCUIT_HEAT, node, passed, Verdict.STOP, words, time, longest, source,
                        "Take a device that opens sooner, one of smaller rating, or a thicker conductor.");
            }
        }

        /** What the data sheet of the device has to show where its gates do not. */
        private String integral(Row insulation) {
            Quantity stands = HeatingFormulas.integral(conductor.copper(), insulation);
            return "Look in the data sheet of the device for its clearing integral, I²t: the conductor stands " + stands.text(3) + ".";
        }

        private Quantity longest(Quantity current) {
            return HeatingFormulas.longestTime(current, conductor.copper(), conductor.insulation().row());
        }

        /** The equation is made for 5 s at most, so a longer time is not stated. */
        private static String words(Quantity time) {
            boolean beyond = time.base() > HeatingFormulas.VALID_TO.base();
            return beyond ? "more than " + HeatingFormulas.VALID_TO.text() : time.in(Units.SECOND).text(3);
        }
    }
}
