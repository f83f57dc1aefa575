package loomwright.plan;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Conductor;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.Protection;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.PartsAndCuts;
import loomwright.circuit.sheet.PartsLine;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** What to buy for a plan: parts and cable as the sheets list them, and the small things beside. Counts of small things are common practice. */
public final class Shopping {
    /** A terminal at each end of both conductors of a run. */
    private static final int ENDS = 4;
    /** One in five is spoiled by a beginner. */
    private static final int SPARE_EVERY = 5;

    private final Circuit circuit;
    private final Designations designations;
    private final List<Bought> list = new ArrayList<>();

    private Shopping(Circuit circuit) {
        this.circuit = circuit;
        this.designations = Designations.of(circuit);
    }

    /** The list; what is there already, battery and loads, is not on it. */
    public static List<Bought> of(Plan plan) {
        Shopping shopping = new Shopping(plan.circuit());
        shopping.addParts();
        shopping.addTerminals();
        shopping.addSmall();
        return List.copyOf(shopping.list);
    }

    private void addParts() {
        String loads = " ";
        for (Node node : circuit.nodes()) {
            boolean there = node.parent() == null || node.kind() == PartKind.LOAD;
            loads += there ? designations.of(node.id()) + " " : "";
        }
        for (PartsLine line : PartsAndCuts.of(circuit).parts()) {
            boolean there = true;
            for (String each : places(line.designations())) {
                there &= loads.contains(" " + each + " ");
            }
            if (!there) {
                String count = (line.count() + " " + line.unit()).strip();
                list.add(new Bought(count, line.what() + insulation(line), line.designations()));
            }
        }
        for (Node node : circuit.nodes()) {
            if (node.figures() instanceof Protection device) {
                list.add(new Bought("1", "holder for a " + device.device().words() + ", rated " + device.rating().text() + " or more, unless its box has one", designations.of(node.id())));
                list.add(new Bought("2", "spare " + device.words(), designations.of(node.id())));
            }
        }
    }

    private static List<String> places(String designations) {
        List<String> places = new ArrayList<>();
        int from = 0;
        for (int at = designations.indexOf(", "); at >= 0; at = designations.indexOf(", ", from)) {
            places.add(designations.substring(from, at));
            from = at + 2;
        }
        places.add(designations.substring(from));
        return places;
    }

    /** Cable of one size may be asked for with two kinds of insulation: the better one is bought for all of it. */
    private String insulation(PartsLine line) {
        double degrees = 0;
        for (Node node : circuit.nodes()) {
            if (node.figures() instanceof Conductor run && places(line.designations()).contains(designations.of(node.id()))) {
                degrees = Math.max(degrees, run.around().insulation().rating().value());
            }
        }
        return degrees == 0 ? "" : ", insulation for " + Quantity.of(degrees, Units.CELSIUS).text() + " or more";
    }

    private void addTerminals() {
        List<String> sizes = new ArrayList<>();
        List<Integer> counts = new ArrayList<>();
        for (Node node : circuit.nodes()) {
            if (node.figures() instanceof Conductor run) {
                String kind = "terminals for " + run.size().text() + ", " + colour(run.size());
                int at = sizes.indexOf(kind);
                if (at < 0) {
                    sizes.add(kind);
                    counts.add(ENDS);
                } else {
                    counts.set(at, counts.get(at) + ENDS);
                }
            }
        }
        for (int i = 0; i < sizes.size(); i++) {
            int spare = (counts.get(i) + SPARE_EVERY - 1) / SPARE_EVERY;
            list.add(new Bought(Integer.toString(counts.get(i) + spare), sizes.get(i) + ": rings or receptacles that fit the studs and tabs, with " + spare + " to spare", ""));
        }
    }

    /** The colour of its sleeve; bare tube terminals beyond the colours. */
    private static String colour(Quantity size) {
        for (Row row : PublishedTables.terminalColours().rows()) {
            boolean gauge = size.unit() == Units.AWG;
            double from = row.quantity(gauge ? "thinnest" : "size-from").base();
            double to = row.quantity(gauge ? "thickest" : "size-to").base();
            if (size.base() >= from * (1 - 1e-6) && size.base() <= to * (1 + 1e-6)) {
                return row.text("sleeve") + " sleeve";
            }
        }
        return "tube terminals with heat-shrink";
    }

    private void addSmall() {
        int runs = 0;
        double metres = 0;
        for (Node node : circuit.nodes()) {
            if (node.figures() instanceof Conductor run) {
                runs++;
                metres += run.routeLength().base();
            }
        }
        list.add(new Bought(ENDS * runs + "", "pieces of heat-shrink tube with glue, 40 mm, of a bore that slips over the terminal", "every joint"));
        list.add(new Bought(2 * runs + "", "grommets: one for each hole that a run goes through, two a run taken", "every hole"));
        Quantity spacing = PublishedTables.jointsAndSupport().row("support-iso").quantity("value", Units.METRE);
        list.add(new Bought(
                (int) Math.ceil(metres / spacing.base()) + "", "cushioned clips, one each " + spacing.text() + " as ISO 10133 asks on boats, or as your code does", "along every run"));
        list.add(new Bought(2 * runs + "", "labels, one at each end of a run", "see the label sheet on the bench"));
    }
}
