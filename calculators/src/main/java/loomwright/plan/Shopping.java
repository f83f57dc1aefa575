package loomwright.plan;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Conductor;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.Protection;
import loomwright.circuit.Switching;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.Extent;
import loomwright.circuit.sheet.PartsAndCuts;
import loomwright.circuit.sheet.PartsLine;
import loomwright.quantity.NumberText;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** What to buy for a plan: parts and cable as the sheets list them, and the small things beside. Counts of small things are common practice. */
public final class Shopping {
    /** A terminal at each end of both conductors of a run. */
    private static final int ENDS = 4;
    /** One in five is spoiled by a beginner. */
    private static final int SPARE_EVERY = 5;
    private static final int SPARE_LINKS = 2;

    private final Circuit circuit;
    private final List<String> there;
    private final Designations designations;
    private final List<Bought> list = new ArrayList<>();

    private Shopping(Plan plan) {
        this.circuit = plan.circuit();
        this.there = plan.there();
        this.designations = Designations.of(circuit);
    }

    /** The list; what is there already is not on it. */
    public static List<Bought> of(Plan plan) {
        Shopping shopping = new Shopping(plan);
        shopping.addParts();
        shopping.addTerminals();
        shopping.addSmall();
        return List.copyOf(shopping.list);
    }

    private void addParts() {
        for (PartsLine line : PartsAndCuts.of(circuit, Extent.without(circuit, there)).parts()) {
            list.add(new Bought(count(line), line.what() + insulation(line) + more(line), line.designations()));
        }
        for (Node node : bought()) {
            if (node.figures() instanceof Protection device) {
                put(1, 1, "holder for a " + device.device().words() + ", rated " + device.rating().text() + " or more, unless its box has one", node);
                put(SPARE_LINKS, 0, "spare " + device.words(), node);
            }
        }
    }

    /** One line for all alike: so many for the first of them, and so many more for each other. */
    private void put(int first, int more, String what, Node node) {
        String where = designations.of(node.id());
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i).what().equals(what)) {
                list.set(i, new Bought(Integer.toString(Integer.parseInt(list.get(i).count()) + more), what, list.get(i).where() + ", " + where));
                return;
            }
        }
        list.add(new Bought(Integer.toString(first), what, where));
    }

    /** Pieces; of cable whole metres or feet, as it is sold. */
    private static String count(PartsLine line) {
        return line.unit().isEmpty() ? line.count() : NumberText.fixed(Math.ceil(QuantityText.read(line.count(), Units.ONE).quantity().value()), 0) + " " + line.unit();
    }

    private List<Node> bought() {
        List<Node> bought = new ArrayList<>();
        for (Node node : circuit.nodes()) {
            if (!there.contains(node.id())) {
                bought.add(node);
            }
        }
        return bought;
    }

    /** Of a panel how many ways it needs: one for each device behind it, and one to spare. Of a relay which class carries so much where it is hot. */
    private String more(PartsLine line) {
        for (Node node : bought()) {
            if (places(line.designations()).contains(designations.of(node.id()))) {
                boolean relay = node.figures() instanceof Switching switching && switching.isTriggered();
                if (node.kind() == PartKind.PANEL) {
                    return " or more, with " + ways(node) + " ways or more: one is to spare";
                } else if (relay) {
                    return " in a hot place, of the 70 A class, with its socket";
                }
            }
        }
        return "";
    }

    private static int ways(Node panel) {
        return panel.children().size() + 1;
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
        for (Node node : bought()) {
            if (node.figures() instanceof Conductor run && places(line.designations()).contains(designations.of(node.id()))) {
                degrees = Math.max(degrees, run.around().insulation().rating().value());
            }
        }
        return degrees == 0 ? "" : ", insulation for " + Quantity.of(degrees, Units.CELSIUS).text() + " or more";
    }

    private void addTerminals() {
        List<String> sizes = new ArrayList<>();
        List<Integer> counts = new ArrayList<>();
        for (Node node : bought()) {
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
        Row sleeve = Cables.sleeve(size);
        return sleeve == null ? "tube terminals with heat-shrink" : sleeve.text("sleeve") + " sleeve";
    }

    private void addSmall() {
        int runs = 0;
        double metres = 0;
        for (Node node : bought()) {
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
        for (Node node : bought()) {
            if (node.kind() == PartKind.PANEL) {
                list.add(new Bought("1", "bar for the conductors that go back to the battery, with " + ways(node)
                        + " screws or more and rated as the panel, unless the panel has one", designations.of(node.id())));
            }
        }
        list.add(new Bought(2 * runs + "", "labels, one at each end of a run", "see the label sheet on the bench"));
    }
}
