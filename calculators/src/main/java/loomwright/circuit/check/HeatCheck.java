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
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Sentence;
import loomwright.worked.Verdict;

/** Whether each conductor stands a short circuit until the device before it has opened, at both ends of the range of fault current. */
final class HeatCheck implements PartCheck {
    /** From this share of a current on, a point of the curve stands for it. */
    private static final double AT_THE_POINT = 0.8;
    private static final String SOONER = "Take a device that opens sooner, one of smaller rating, or a thicker conductor.";

    /** A conductor without a device has been found by another check. */
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.figures() instanceof Conductor conductor && node.deviceBefore() != null) {
            new Heating(node, conductor, node.deviceBefore(), context, context.currents(), findings).check();
        }
    }

    /** A conductor and the device that guards it. */
    private record Heating(Node node, Conductor conductor, Node device, Context context, FaultCurrents currents, Findings findings) {
        void check() {
            Quantity lowest = currents.lowest(node);
            Comparison opens = Comparison.of("The least that a short circuit at the end of " + node.title() + " may drive", lowest)
                    .atLeast(protection().rating(), "the rating of " + device.title() + ", at which it may never open", currents.source())
                    .exact()
                    .otherwise(Verdict.STOP, "Take a smaller rating, or a thicker conductor or a shorter route on the way there.");
            if (!opens.holds()) {
                findings.add(Check.SHORT_CIRCUIT_HEAT, node, opens);
                return;
            }
            addLate(lowest);
            Quantity highest = currents.highest(node.parent());
            Opening atLowest = opening(lowest);
            Opening atHighest = highest == null ? atLowest : opening(highest);
            Finding low = at(atLowest);
            Finding high = highest == null ? low : at(atHighest);
            boolean alike = low.verdict() == high.verdict();
            boolean lowestIsWorse = alike ? atLowest.hardship() >= atHighest.hardship() : low.verdict().isWorseThan(high.verdict());
            findings.add(Check.SHORT_CIRCUIT_HEAT, node, device, lowestIsWorse ? low : high);
        }

        /** Below twice its rating a device may take minutes. */
        private void addLate(Quantity lowest) {
            Quantity twice = Quantity.of(2 * protection().rating().in(Units.AMPERE).value(), Units.AMPERE);
            Comparison soon = Comparison.of("The least that a short circuit at the end of " + node.title() + " may drive", lowest)
                    .atLeast(
                            twice, "twice the rating of " + device.title() + ", below which it may burn for minutes before that opens",
                            PublishedTables.fuseGates().source())
                    .exact()
                    .otherwise(Verdict.CAUTION, "Take a smaller rating, or a thicker conductor or a shorter route on the way there.");
            if (!soon.holds()) {
                findings.add(Check.SHORT_CIRCUIT_HEAT, node, soon);
            }
        }

        private Protection protection() {
            return (Protection) device.figures();
        }

        private Opening opening(Quantity current) {
            return new Opening(
                    current, OpeningTimes.of(protection().device().key(), protection().rating(), current),
                    HeatingFormulas.longestTime(current, conductor.copper(), conductor.insulation().row()));
        }

        private Finding at(Opening race) {
            OpeningTimes times = race.times();
            Row insulation = conductor.insulation().row();
            if (times == null || times.latest() == null) {
                return unknown(
                        Sentence.later(() -> "the conductor stands it for " + words(race.longest()) + ", but no time is published by which a "
                                + protection().words() + " has opened."),
                        race.longest(), race, times == null ? insulation.source() : times.source(), insulation);
            }
            boolean passed = Comparison.atMost(times.latest(), race.longest());
            boolean failed = times.earliest() != null && times.earliest().base() > race.longest().base();
            boolean weak = failed ? times.earliestIsWeak() : times.latestIsWeak();
            Source timesSource = failed ? times.earliestSource() : times.source();
            Source source = weak || !passed && !failed ? timesSource : Comparison.weaker(insulation.source(), currents.source());
            Sentence words = Sentence.later(() -> "the conductor stands it for " + words(race.longest()) + "; a " + protection().words()
                    + (failed ? " does not open before " + OpeningTimes.words(times.earliest()) : " has opened by " + OpeningTimes.words(times.latest()))
                    + (passed || failed ? "." : ". The published times do not show whether it opens soon enough."));
            if (!failed && (!passed || weak || !source.standing().mayPass())) {
                return unknown(words, times.latest(), race, source, insulation);
            }
            Verdict verdict = failed ? Verdict.STOP : Verdict.PASSED;
            return new Finding(
                    verdict, Sentence.later(() -> beginning(race) + words.text()), failed ? times.earliest() : times.latest(), race.longest(), source,
                    Sentence.of(failed ? SOONER : ""));
        }

        private String beginning(Opening race) {
            return "A short circuit of " + race.current().text(3) + " in " + node.title() + ": ";
        }

        /** The clearing integral of the device settles it where its gates do not. */
        private Finding unknown(Sentence words, Quantity figure, Opening race, Source source, Row insulation) {
            Quantity current = race.current();
            Quantity longest = race.longest();
            Protection sheet = context.sheet(device);
            Quantity stands = HeatingFormulas.integral(conductor.copper(), insulation);
            Quantity opened = sheet.openedBy(current);
            // At more current than that of the point it opens sooner, so a longer time says nothing there.
            boolean decides = opened != null && (Comparison.atMost(opened, longest) || AT_THE_POINT * current.base() <= sheet.openingCurrent().base());
            if (decides) {
                return Comparison.of(
                                "The time by which " + device.title() + " has opened a short circuit of " + current.text(3) + " in " + node.title(), opened)
                        .atMost(longest, "what the conductor stands", insulation.source())
                        .restingOn(sheet.figuresFrom())
                        .settledBy(missing(sheet))
                        .otherwise(Verdict.STOP, SOONER)
                        .finding();
            }
            if (sheet.clearingIntegral() != null) {
                return Comparison.of(
                                "What " + device.title() + " lets through into a short circuit in " + node.title() + ", I²t", sheet.clearingIntegral())
                        .atMost(stands, "what the conductor stands", insulation.source())
                        .restingOn(sheet.figuresFrom())
                        .settledBy(missing(sheet))
                        .otherwise(Verdict.STOP, "Take a device that lets less through, or a thicker conductor.")
                        .finding();
            }
            return Finding.notKnown(
                    Sentence.later(() -> beginning(race) + words.text() + " It stands " + stands.text(3) + "."), figure, source, missing(sheet));
        }

        private static MissingFigure missing(Protection sheet) {
            return new MissingFigure(
                    "clearing-i2t", "clearing integral I²t of the " + sheet.words(),
                    "the data sheet of the device: total clearing I²t, in A²s; or a point of its curve");
        }

        /** The equation is made for 5 s at most, so a longer time is not stated. */
        private static String words(Quantity time) {
            boolean beyond = time.base() > HeatingFormulas.VALID_TO.base();
            return beyond ? "more than " + HeatingFormulas.VALID_TO.text() : time.in(Units.SECOND).text(3);
        }
    }

    /**
     * A device opens before its conductor is too hot, or after.
     *
     * @param current what flows
     * @param times between which times the device opens; null if no gates are in print for it
     * @param longest how long the conductor stands it
     */
    private record Opening(Quantity current, OpeningTimes times, Quantity longest) {
        /** Latest opening time as a share of what the conductor stands; beyond every limit where no time is in print. */
        double hardship() {
            Quantity latest = times == null ? null : times.latest();
            return latest == null ? Double.POSITIVE_INFINITY : latest.base() / longest.base();
        }
    }
}
