package loomwright.circuit.sheet;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Conductor;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.Switching;
import loomwright.quantity.NumberText;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;

/**
 * Parts list and cut list of a circuit.
 *
 * @param parts the parts, alike ones on one line
 * @param cuts the conductors to cut, two of each
 * @param allowanceSource where the allowance comes from
 */
public record PartsAndCuts(List<PartsLine> parts, List<CutLine> cuts, Source allowanceSource) {
    /** The usual allowance in proportion: none, for the route is measured along its bends. */
    public static final Quantity USUAL_SHARE = Quantity.of(0, Units.PERCENT);

    /** The usual allowance for each end: for a terminal, for one that is spoiled, and for a loop that takes the strain. */
    public static final Quantity USUAL_END = Quantity.of(0.25, Units.METRE);

    private static final Quantity NOTHING = Quantity.of(0, Units.METRE);

    /** The lists with the usual allowance. */
    public static PartsAndCuts of(Circuit circuit) {
        return of(circuit, Extent.WHOLE);
    }

    /** The lists of a piece of the circuit with the usual allowance. */
    public static PartsAndCuts of(Circuit circuit, Extent extent) {
        return of(circuit, extent, USUAL_SHARE, USUAL_END);
    }

    /**
     * The lists with another allowance: each conductor is cut to route length × (1 + share) + 2 × end. A run that no device
     * protects gets none, for it must stay as short as it was planned.
     */
    public static PartsAndCuts of(Circuit circuit, Quantity share, Quantity end) {
        return of(circuit, Extent.WHOLE, share, end);
    }

    private static PartsAndCuts of(Circuit circuit, Extent extent, Quantity share, Quantity end) {
        Designations designations = Designations.of(circuit);
        List<CutLine> cuts = new ArrayList<>();
        Tally tally = new Tally();
        for (Node node : circuit.nodes()) {
            if (!extent.has(node.id())) {
                continue;
            }
            String designation = designations.of(node.id());
            String title = designations.title(node.id());
            if (node.figures() instanceof Conductor conductor) {
                boolean open = node.deviceBefore() == null;
                cuts.add(cut(
                        tally, node, designation, title, conductor.size(), conductor.kind().label(), conductor.routeLength(),
                        open ? USUAL_SHARE : share, open ? NOTHING : end));
            } else {
                tally.add(described(node, title), designation, 1);
            }
            if (node.figures() instanceof Switching switching && switching.isTriggered()) {
                cuts.add(cut(
                        tally, node, designation + " trigger", title, switching.triggerSize(), switching.triggerKind().label(),
                        switching.triggerRoute(), share, end));
                if (switching.triggerFuse() != null) {
                    tally.add("fuse-link of " + switching.triggerFuse().text() + " with holder, for a trigger", designation, 1);
                }
            }
        }
        return new PartsAndCuts(tally.lines(), List.copyOf(cuts), Source.commonPractice());
    }

    private static CutLine cut(
            Tally tally, Node node, String designation, String title, Quantity size, String kind, Quantity route, Quantity share, Quantity end) {
        Quantity metres = Quantity.of(route.base() * (1 + share.base()) + 2 * end.base(), Units.METRE);
        Quantity each = metres.in(size.unit() == Units.AWG ? Units.FEET : Units.METRE);
        String conductor = size.text() + ", " + kind;
        tally.addLength(conductor, designation, 2 * each.value(), each.unit().symbol());
        return new CutLine(node.id(), designation, title, conductor, route, each);
    }

    private static String described(Node node, String title) {
        String words = node.figures().inPartsList();
        // Joints are alike only at one place.
        return words.isEmpty() ? title : node.kind() == PartKind.JOINT ? words + ": " + title : words;
    }

    /** The circuit's parts counted, alike ones together. */
    private static final class Tally {
        private final List<Count> counts = new ArrayList<>();

        void add(String name, String designation, double count) {
            addLength(name, designation, count, "");
        }

        void addLength(String name, String designation, double count, String unit) {
            for (Count each : counts) {
                if (each.what.equals(name)) {
                    each.count += count;
                    each.places += ", " + designation;
                    return;
                }
            }
            counts.add(new Count(name, designation, count, unit));
        }

        List<PartsLine> lines() {
            List<PartsLine> lines = new ArrayList<>();
            for (Count each : counts) {
                boolean length = !each.unit.isEmpty();
                // Nobody cuts by less than a tenth of a metre or foot, so it is rounded up.
                double count = length ? Math.ceil(10 * each.count - 1e-6) / 10 : each.count;
                lines.add(new PartsLine(each.what, NumberText.fixed(count, length ? 1 : 0), each.unit, each.places));
            }
            return List.copyOf(lines);
        }
    }

    /** How many of one part. Not a list of {@code Double}: that would bring the library's printing of numbers into the page. */
    private static final class Count {
        private final String what;
        private final String unit;
        private String places;
        private double count;

        Count(String what, String places, double count, String unit) {
            this.what = what;
            this.places = places;
            this.count = count;
            this.unit = unit;
        }
    }
}
