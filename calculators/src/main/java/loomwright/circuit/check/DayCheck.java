package loomwright.circuit.check;

import loomwright.circuit.Node;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.supply.BatteryDay;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;

/** The energy of a day against battery and what charges it, and the standing draw by itself. Asked once, at the battery. */
final class DayCheck implements PartCheck {
    private static final Source INVENTED = Source.of(Document.INVENTED, "");

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
        findings.add(Check.DAY, node, Comparison.of("What a day takes of " + node.title(), day.charge())
                .atMost(day.usable(), "what a plan may take from it as full as it is", depth.source())
                .otherwise(Verdict.CAUTION, "Use less in a day, or plan with a larger battery."));
        if (day.days() != null) {
            addDays(node, day.days(), context.battery().daysWanted(), findings);
        }
        if (day.yield() != null) {
            findings.add(Check.DAY, node, Comparison.of("What a day takes", day.total())
                    .atMost(day.yield(), "what charges the battery in a day", BatteryDay.efficiencyRow().source())
                    .otherwise(Verdict.CAUTION, "Use less, or take a larger panel: the battery is not filled up again."));
        }
    }

    /** Nobody said how many days: then a careful plan reckons with two. */
    private static void addDays(Node node, Quantity days, Quantity wanted, Findings findings) {
        boolean said = wanted != null;
        Quantity least = said ? wanted : Quantity.of(2, Units.DAY);
        findings.add(Check.DAY, node, Comparison.of("The time that " + node.title() + " lasts with nothing charging it", days)
                .atLeast(least, said ? "the days without sun that you want" : "two days without sun", said ? Findings.entered() : INVENTED)
                .exact()
                .settledBy(new MissingFigure("days-wanted", "days without sun that the battery shall last", "your own plan: a weekend is two"))
                .otherwise(Verdict.CAUTION, "Use less, charge on the way, or plan with a larger battery."));
    }

    /** What flows while nobody uses anything, alone against what a plan may take. */
    private static void addStanding(Node node, DayOfCircuit day, Findings findings) {
        if (day.standingCharge().base() <= 0) {
            return;
        }
        Quantity days = Quantity.of(day.usable().base() / day.standingCharge().base(), Units.DAY);
        findings.add(Check.STANDING_DRAW, node, Comparison.of(
                        "Triggers, coils and standing currents take " + day.standingCharge().text(3) + " a day of " + node.title()
                                + ": the time they alone take to use up what a plan may take", days)
                .atLeast(Quantity.of(7, Units.DAY), "a week", Source.commonPractice())
                .exact()
                .otherwise(Verdict.CAUTION, "Switch off what nobody uses, choose parts that draw less when idle, or plan with a larger battery."));
    }
}
