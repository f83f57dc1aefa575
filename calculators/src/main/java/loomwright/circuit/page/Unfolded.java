package loomwright.circuit.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.ChargeSource;
import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.Panel;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.DayOfCircuit;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.solve.Solved;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;

/** How the figure of a finding comes about where no calculator works it out: line by line what was multiplied and added up, and what it was held against. */
final class Unfolded {
    /** Less than this is lost in the last digit shown. */
    private static final double LEAST_AMPERES = 0.0005;

    private final Examination examination;
    private final Designations designations;
    private final CircuitFinding found;
    private final Node node;
    private final Quantity figure;
    private final Quantity limit;
    private final List<String> lines = new ArrayList<>();

    private Unfolded(Examination examination, Designations designations, CircuitFinding found) {
        this.examination = examination;
        this.designations = designations;
        this.found = found;
        this.node = examination.circuit().node(found.partId());
        this.figure = found.finding().figure();
        this.limit = found.finding().limit();
    }

    /** The lines; none where nothing was reckoned. */
    static List<String> lines(Examination examination, Designations designations, CircuitFinding found) {
        Unfolded unfolded = new Unfolded(examination, designations, found);
        unfolded.write();
        return unfolded.lines;
    }

    private void write() {
        switch (found.check()) {
            case VOLTAGE_DROP -> way();
            case OPERATING_POINT, CONTINUOUS_CURRENT, DEVICE_LOADING -> through();
            case DAY -> day(examination.day());
            case STANDING_DRAW -> days(examination.day(), examination.day().standingCharge());
            case CHARGING -> sources();
            default -> { }
        }
        if (limit != null && limit.dimension().equals(figure.dimension())) {
            lines.add(figure.text(3) + (figure.base() <= limit.base() ? " \u2264 " : " > ") + limit.text(3));
        }
    }

    private static String text(double value, Unit unit) {
        return Quantity.of(value, unit).text(3);
    }

    /** What each piece of the way takes: its current times its resistance, out and back. */
    private void way() {
        Solved lowest = lowest();
        boolean left = lowest != null && WorkingFigures.isSame(Quantity.of(lowest.volts(node), Units.VOLT), figure);
        Solved solved = left ? lowest : examination.solution().worstFor(node);
        List<Node> way = new ArrayList<>();
        for (Node at = node; at.parent() != null; at = at.parent()) {
            way.add(0, at);
        }
        for (Node at : way) {
            double ohms = at.figures().ohms();
            if (ohms > 0) {
                lines.add(designations.titled(at.id()) + ": " + text(solved.amperes(at), Units.AMPERE) + " \u00d7 " + text(1000 * ohms, Units.MILLIOHM)
                        + " = " + text(solved.amperes(at) * ohms, Units.VOLT));
            }
        }
        String drop = text(solved.drop(node), Units.VOLT);
        lines.add("Together " + drop);
        if (left) {
            lines.add(text(solved.situation().sourceVolts(), Units.VOLT) + " \u2212 " + drop + " = " + figure.text(3));
        }
    }

    private Solved lowest() {
        Solved lowest = null;
        for (Solved solved : examination.solution().lasting()) {
            lowest = solved.exists() && (lowest == null || solved.volts(node) < lowest.volts(node)) ? solved : lowest;
        }
        return lowest;
    }

    /** What flows through a part: what flows on behind it where the way first parts. */
    private void through() {
        Solved most = null;
        for (Solved solved : examination.solution().lasting()) {
            most = solved.exists() && (most == null || solved.amperes(node) > most.amperes(node)) ? solved : most;
        }
        double design = examination.solution().designAmperes(node);
        if (most == null) {
            return;
        }
        if (design > most.amperes(node) + LEAST_AMPERES) {
            sources();
            return;
        }
        Node at = node;
        while (at.children().size() == 1 && Math.abs(most.amperes(at.children().get(0)) - most.amperes(node)) < LEAST_AMPERES) {
            at = at.children().get(0);
        }
        double rest = most.amperes(node);
        if (at.figures() instanceof Load load && load.watts() > 0) {
            lines.add(designations.titled(at.id()) + ": " + text(load.watts(), Units.WATT) + " \u00f7 " + text(most.volts(at), Units.VOLT) + " = " + text(rest, Units.AMPERE));
            return;
        }
        for (Node child : at.children()) {
            rest -= most.amperes(child);
            flowing(designations.titled(child.id()), most.amperes(child));
        }
        if (at.figures() instanceof Panel panel) {
            rest -= panel.presentLoad().base();
            flowing("Present loads of " + designations.titled(at.id()), panel.presentLoad().base());
        }
        flowing(at.children().isEmpty() ? designations.titled(at.id()) : "Triggers", rest);
        lines.add("Together " + text(most.amperes(node), Units.AMPERE) + " with " + most.situation().words() + " on");
    }

    private void flowing(String what, double amperes) {
        if (amperes > LEAST_AMPERES) {
            lines.add(what + ": " + text(amperes, Units.AMPERE));
        }
    }

    private void sources() {
        if (figure.unit().dimension().equals(Units.AMPERE.dimension())) {
            for (Node each : examination.circuit().nodes()) {
                if (each.figures() instanceof ChargeSource source && (found.check() == Check.CHARGING || node.isOnTheWayTo(each))) {
                    flowing(designations.titled(each.id()), source.current().base());
                }
            }
        }
    }

    private void day(DayOfCircuit day) {
        for (DayOfCircuit.LoadDay load : day.loads()) {
            if (load.energy() != null && load.energy().base() > 0) {
                lines.add(designations.titled(load.partId()) + ": " + load.energy().text(3));
            }
        }
        if (day.standing().base() > 0) {
            lines.add("Triggers, coils and standing currents: " + day.standing().text(3));
        }
        lines.add("Together " + day.total().text(3) + ", at " + examination.circuit().battery().resting().text() + " " + day.charge().text(3));
        if (figure.unit() == Units.DAY) {
            days(day, day.charge());
        }
    }

    private void days(DayOfCircuit day, Quantity charge) {
        lines.add(day.usable().text(3) + " \u00f7 " + charge.text(3) + " a day = " + figure.text(3));
    }
}
