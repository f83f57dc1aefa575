package loomwright.circuit.check;

import loomwright.circuit.Node;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.supply.BatteryDay;
import loomwright.table.Row;
import loomwright.worked.Verdict;

/** The energy of a day against battery and solar panel, and the standing draw against the largest load. Asked once, at the battery. */
final class DayCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.parent() == null) {
            addStanding(node, context.day(), findings);
            addDay(node, context, findings);
        }
    }

    private static void addDay(Node node, Context context, Findings findings) {
        DayOfCircuit day = context.day();
        Row depth = context.battery().chemistry().depth();
        boolean passed = Findings.within(day.charge(), day.usable());
        String lasts = day.days() == null ? "" : " It lasts " + day.days().text(2) + " with nothing charging it.";
        findings.add(
                Check.DAY, node, passed, Verdict.CAUTION,
                "A day takes " + day.total().text(3) + ", " + day.charge().text(3) + ", " + Findings.withinOrAbove(passed) + " the "
                        + day.usable().text(3) + " that a plan may take from the battery as full as it is." + lasts,
                day.charge(), day.usable(), depth.source(), "Use less in a day, charge more, or plan with a larger battery.");
        if (day.yield() != null) {
            boolean enough = Findings.within(day.total(), day.yield());
            findings.add(
                    Check.DAY, node, enough, Verdict.CAUTION,
                    "The solar panel gives " + day.yield().text(3) + " in a day of " + context.battery().peakSunHours().text()
                            + " of peak sun; the day takes " + day.total().text(3) + ".",
                    day.total(), day.yield(), BatteryDay.efficiencyRow().source(), "Use less, or take a larger panel: the battery is not filled up again.");
        }
    }

    private static void addStanding(Node node, DayOfCircuit day, Findings findings) {
        Quantity largest = Quantity.of(0, Units.WATT_HOUR);
        for (DayOfCircuit.LoadDay load : day.loads()) {
            largest = load.energy() != null && load.energy().base() > largest.base() ? load.energy() : largest;
        }
        boolean small = day.standing().base() <= largest.base();
        findings.add(
                Check.STANDING_DRAW, node, small, Verdict.CAUTION,
                "Triggers, coils and standing currents take " + day.standing().text(3) + " a day, " + day.standingCharge().text(3) + ", "
                        + (small ? "no more than" : "more than") + " the largest load with " + largest.text(3) + ".",
                day.standing(), largest, Findings.computed(), "Switch off what nobody uses, or choose parts that draw less when idle.");
    }
}
