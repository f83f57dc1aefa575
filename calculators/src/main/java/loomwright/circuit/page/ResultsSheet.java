package loomwright.circuit.page;

import java.util.List;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.check.DayOfCircuit;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.solve.CircuitSolution;
import loomwright.circuit.solve.FaultCurrents;
import loomwright.circuit.solve.Solved;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.SourceMarkup;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;

/** Voltage, current and fault current at every point, the drop to every load, and the energy of a day. */
final class ResultsSheet {
    private static final String NONE = "\u2013";

    private final Links links;
    private final Examination examination;
    private final CircuitSolution solution;
    private final Designations designations;
    private final Html html = new Html();

    private ResultsSheet(Links links, Examination examination) {
        this.links = links;
        this.examination = examination;
        this.solution = examination.solution();
        this.designations = Designations.of(examination.circuit());
    }

    static String of(Links links, Examination examination) {
        ResultsSheet sheet = new ResultsSheet(links, examination);
        sheet.points();
        sheet.drops();
        sheet.day();
        return sheet.html.toString();
    }

    private void points() {
        String low = solution.circuit().battery().lowest().text();
        String high = solution.circuit().battery().highest().text();
        html.tag("<h3 id=\"circuit-points\">Voltage and current at each point</h3><p>").text(
                "The battery reads " + low + " at its terminals when nearly empty and " + high
                        + " while it is charged, both with the loads on. Voltage is that behind the part, the least of all loads that may be on together; "
                        + "current is the most. The fault current is what a short circuit behind the part would draw, as a range.");
        html.tag("</p>");
        TableHtml table = new TableHtml(
                html, "Voltage and current at each point", "Point", "At " + low + "#", "Current#", "At " + high + "#", "Current#",
                "Fault current, lowest#", "highest#");
        FaultCurrents faults = examination.faultCurrents();
        List<Solved> lowest = solution.lowest();
        List<Solved> highest = solution.highest();
        for (Node node : solution.circuit().nodes()) {
            table.row(designations.titled(node.id()));
            table.number(leastVolts(lowest, node)).number(mostAmperes(lowest, node));
            table.number(leastVolts(highest, node)).number(mostAmperes(highest, node));
            table.number(faults.lowest(node).text(3)).number(text(faults.highest(node))).endRow();
        }
        table.end();
        html.tag("<p class=\"help\">").text("Voltage and current: computed. Resistance of the battery, which bounds the fault current:").tag("</p>");
        html.tag(SourceMarkup.paragraph(links, faults.source()));
    }

    private static String leastVolts(List<Solved> situations, Node node) {
        double least = Double.NaN;
        for (Solved solved : situations) {
            least = solved.exists() && !(solved.volts(node) >= least) ? solved.volts(node) : least;
        }
        return text(least, Units.VOLT);
    }

    private static String mostAmperes(List<Solved> situations, Node node) {
        double most = Double.NaN;
        for (Solved solved : situations) {
            most = solved.exists() && !(solved.amperes(node) <= most) ? solved.amperes(node) : most;
        }
        return text(most, Units.AMPERE);
    }

    private static String text(double figure, Unit unit) {
        return Double.isNaN(figure) ? NONE : Quantity.of(figure, unit).text(unit == Units.VOLT ? 4 : 3);
    }

    private static String text(Quantity quantity) {
        return quantity == null ? NONE : quantity.text(3);
    }

    private void drops() {
        html.tag("<h3 id=\"circuit-drops\">Drop to each load</h3>");
        TableHtml table = new TableHtml(html, "Drop to each load", "Load", "Current#", "Drop#", "Left at the load#", "With these on");
        for (Node node : solution.circuit().nodes()) {
            if (node.kind() == PartKind.LOAD) {
                Solved worst = solution.worstFor(node);
                table.row(designations.titled(node.id()));
                if (worst == null) {
                    table.number(NONE).number(NONE).number(NONE).words("no operating point");
                } else {
                    table.number(text(worst.amperes(node), Units.AMPERE)).number(Quantity.of(worst.drop(node), Units.VOLT).text(3));
                    table.number(text(worst.volts(node), Units.VOLT)).words(worst.situation().words());
                }
                table.endRow();
            }
        }
        table.end();
    }

    private void day() {
        DayOfCircuit day = examination.day();
        html.tag("<h3 id=\"circuit-day\">A day</h3>");
        TableHtml table = new TableHtml(html, "A day", "What", "Figure#");
        for (DayOfCircuit.LoadDay load : day.loads()) {
            figure(table, designations.titled(load.partId()), load.energy());
        }
        figure(table, "Standing draw: triggers, coils and what idles", day.standing());
        figure(table, "Standing draw, as charge", day.standingCharge());
        figure(table, "The whole day", day.total());
        figure(table, "The whole day, as charge", day.charge());
        figure(table, "What a plan may take from the battery", day.usable());
        figure(table, "Run time with nothing charging it", day.days());
        if (day.yield() != null) {
            figure(table, "What the solar panel gives in a day", day.yield());
        }
        table.end();
    }

    private static void figure(TableHtml table, String what, Quantity figure) {
        table.row(what).number(text(figure)).endRow();
    }
}
