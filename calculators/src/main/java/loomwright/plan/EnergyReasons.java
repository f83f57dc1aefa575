package loomwright.plan;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.Supply;
import loomwright.circuit.check.DayOfCircuit;
import loomwright.circuit.check.Examination;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Comparison;

/** Whether battery and panel are enough for the day: told, never in the way of a circuit. */
final class EnergyReasons {
    /** Nobody said how many days without sun: a weekend. */
    private static final Quantity WEEKEND = Quantity.of(2, Units.DAY);

    private EnergyReasons() {}

    /** What stands in the way, and whether the battery would last: it is told even where no device or cable is large enough. */
    static Obstacle beside(Job job, Obstacle obstacle) {
        if (!obstacle.fieldKey().equals("draws") || !job.answers().job().has("capacity")) {
            return obstacle;
        }
        List<Part> parts = new ArrayList<>();
        parts.add(job.battery().part());
        for (Need need : job.needs()) {
            parts.add(need.part("load-" + parts.size(), "battery"));
        }
        DayOfCircuit day = DayOfCircuit.of(new Circuit("", parts));
        boolean enough = day.days() == null || Comparison.atLeast(day.days(), Quantity.of(1, Units.DAY));
        return enough ? obstacle : new Obstacle(obstacle.item(), obstacle.fieldKey(), obstacle.words(), obstacle.help() + " The battery says the same: a day takes "
                + day.charge().text(3) + ", and a plan may take " + day.usable().text(3) + " from it.");
    }

    static void add(Job job, Workings workings, Examination examination, List<Chosen> chosen) {
        DayOfCircuit day = examination.day();
        if (day.days() == null) {
            return;
        }
        Supply battery = examination.circuit().battery();
        Quantity wanted = battery.daysWanted() == null ? WEEKEND : battery.daysWanted();
        boolean known = job.answers().job().has("capacity");
        boolean enough = Comparison.atLeast(day.days(), wanted);
        String takes = "A day takes " + day.charge().text(3);
        String of = " of " + day.usable().text(3) + " that a plan may take";
        String what = !known ? "Battery: its size was not said" : enough ? "Battery: enough for " + day.days().text(2) : "Battery: not enough for " + wanted.text();
        String why = !known
                ? takes + "; the working says how large a battery that asks for."
                : takes + of + (enough ? "." : ", so it lasts " + day.days().text(2) + ". Use less, charge more, or take a larger one.");
        chosen.add(new Chosen("battery", what, why, workings.battery(day, wanted), "05-the-battery-behind-it"));
        if (battery.solarPower() != null) {
            boolean filled = Comparison.atLeast(day.yield(), day.total());
            chosen.add(new Chosen(
                    "battery", filled ? "Solar panel: enough for such a day" : "Solar panel: not enough for such a day",
                    "It gives " + day.yield().text(3) + " a day, and the day takes " + day.total().text(3) + ".", workings.sun(day), "05b-what-charges-it"));
        }
    }
}
