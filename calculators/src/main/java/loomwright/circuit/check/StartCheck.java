package loomwright.circuit.check;

import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.Protection;
import loomwright.circuit.solve.Solved;
import loomwright.circuit.solve.Starvation;
import loomwright.protection.OpeningTimes;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Sentence;
import loomwright.worked.Verdict;

/** Whether the devices hold while a motor starts, and whether the other loads still get their voltage. */
final class StartCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.figures() instanceof Load load) {
            for (Solved start : context.solution().starts()) {
                if (start.situation().starting() == node) {
                    check(node, load, start, context, findings);
                }
            }
        }
    }

    private static void check(Node node, Load load, Solved start, Context context, Findings findings) {
        if (!start.exists()) {
            if (works(context)) {
                Starvation starvation = Starvation.of(context.circuit(), start);
                findings.add(Check.START, starvation.part(), node, new Finding(
                        Verdict.STOP, Sentence.of(starvation.words()), starvation.asked(), starvation.most(), Findings.computed(),
                        Loss.remedy(starvation.part(), null, ", or take a load that asks for less")));
            }
            return;
        }
        for (Node device = node.deviceBefore(); device != null; device = device.deviceBefore()) {
            addDevice(start, node, load.startTime(), device, context, findings);
        }
        for (Node other : context.circuit().nodes()) {
            addDip(start, node, other, context, findings);
        }
    }

    /** What is starved without a start as well is found by another check. */
    private static boolean works(Context context) {
        for (Solved lasting : context.solution().lasting()) {
            if (!lasting.exists()) {
                return false;
            }
        }
        return true;
    }

    private static void addDevice(Solved start, Node node, Quantity lasts, Node device, Context context, Findings findings) {
        Protection protection = (Protection) device.figures();
        Quantity current = Quantity.of(start.amperes(device), Units.AMPERE);
        Comparison within = Comparison.of(node.title() + " starting, for " + lasts.text() + ": the current through " + device.title(), current)
                .atMost(protection.rating(), "its rating", Findings.computed())
                .exact();
        if (within.holds()) {
            findings.add(Check.START, node, device, within.finding());
            return;
        }
        String opening = node.title() + " starting: " + current.text(3) + " flow through " + device.title() + " for "
                + lasts.text() + ". ";
        OpeningTimes times = OpeningTimes.of(protection.device().key(), protection.rating(), current);
        if (times != null && times.soonest() != null && Comparison.atMost(times.soonest(), lasts)) {
            findings.add(Check.START, node, device, new Finding(
                    Verdict.STOP, opening + "A " + protection.words() + " has opened by " + OpeningTimes.words(times.soonest()) + ".", lasts,
                    times.soonest(), times.soonestSource(), "Take a slower kind or a larger rating, with a thicker conductor where it asks for one, or a load with a gentler start."));
        } else if (times != null && times.earliest() != null && Comparison.atLeast(times.earliest(), lasts) && !times.earliestIsWeak()
                && times.earliestSource().standing().mayPass()) {
            findings.add(Check.START, node, device, new Finding(
                    Verdict.PASSED, opening + "A " + protection.words() + " does not open before " + OpeningTimes.words(times.earliest()) + ".", lasts,
                    times.earliest(), times.earliestSource(), ""));
        } else {
            findings.add(Check.START, node, device, bySheet(context.sheet(device), opening, current, lasts, times == null ? Findings.computed() : times.source()));
        }
    }

    /** A point of its curve settles what no table shows. */
    private static Finding bySheet(Protection sheet, String opening, Quantity current, Quantity lasts, Source source) {
        MissingFigure curve = new MissingFigure(
                "holding-time", "time for which the " + sheet.words() + " holds a start", "the curve in its data sheet: at that current it must not have opened");
        return sheet.holds(current, lasts)
                ? Comparison.of(opening + "That time", lasts)
                        .atMost(sheet.holdingTime(), "the time for which the " + sheet.words() + " holds it", sheet.figuresFrom())
                        .exact()
                        .settledBy(curve)
                        .finding()
                : Finding.notKnown(opening + "Nothing shows that a " + sheet.words() + " holds that long.", current, source, curve);
    }

    /** Only loads whose lowest voltage is known, and only where a start takes it away. */
    private static void addDip(Solved start, Node starting, Node other, Context context, Findings findings) {
        if (!(other.figures() instanceof Load load) || load.lowestWorking() == null || !start.situation().isDrawing(other)) {
            return;
        }
        double least = load.lowestWorking().base();
        // What has too little without a start as well is found by another check.
        if (start.volts(other) < least && context.solution().leastVolts(other) >= least) {
            boolean own = other == starting;
            findings.add(Check.START, other, starting, Comparison.of(
                            own ? "What is left for " + other.title() + " at its own start" : "What is left for " + other.title() + " while " + starting.title() + " starts",
                            Quantity.of(start.volts(other), Units.VOLT))
                    .atLeast(load.lowestWorking(), "the lowest voltage it works at", other.part().figuresFrom())
                    .exact()
                    .otherwise(Verdict.CAUTION, Loss.remedy(other, start, own
                            ? ", or take a load with a gentler start"
                            : ", feed the two by runs of their own, or use them one at a time"))
                    .finding());
        }
    }
}
