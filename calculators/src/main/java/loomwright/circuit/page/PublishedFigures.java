package loomwright.circuit.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.Conductor;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.Protection;
import loomwright.circuit.check.Examination;
import loomwright.markup.Fragment;
import loomwright.markup.PartFigures;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Field;

/** The figures of a circuit for the examples of the lessons: of each run, device, load and battery, under the keys that calculators use. */
public final class PublishedFigures {
    private static final int DIGITS = 4;

    private final Examination examination;

    private PublishedFigures(Examination examination) {
        this.examination = examination;
    }

    /** One line a part; empty if the circuit cannot be worked out, or nothing was put into it yet. */
    public static String of(Examination examination) {
        if (!examination.faults().isEmpty() || isEmpty(examination.circuit())) {
            return "";
        }
        PublishedFigures figures = new PublishedFigures(examination);
        List<PartFigures> all = new ArrayList<>();
        for (Node node : examination.circuit().nodes()) {
            Map<String, String> entries = figures.entries(node);
            if (!entries.isEmpty()) {
                all.add(new PartFigures(node.title(), entries));
            }
        }
        return PartFigures.write(all);
    }

    /** Whether it is a battery alone of which nobody said anything. */
    private static boolean isEmpty(Circuit circuit) {
        boolean empty = circuit.parts().size() == 1;
        for (Field field : circuit.supply().kind().fields()) {
            empty &= circuit.supply().part().isAsUsual(field.key());
        }
        return empty;
    }

    private Map<String, String> entries(Node node) {
        Map<String, String> entries = new HashMap<>();
        if (node.kind() == PartKind.PROTECTION) {
            for (Node behind : node.behind()) {
                if (behind.figures() instanceof Conductor && entries.isEmpty()) {
                    typed(behind, entries);
                }
            }
        }
        typed(node, entries);
        if (node.kind() == PartKind.LOAD) {
            ofTheDay(entries);
        }
        Quantity current = Quantity.of(examination.solution().designAmperes(node), Units.AMPERE);
        boolean carries = node.kind() == PartKind.CONDUCTOR || node.kind() == PartKind.PROTECTION || node.kind() == PartKind.LOAD;
        if (carries && current.value() > 0) {
            for (String key : new String[] {"current", "design-current", "load-current"}) {
                entries.put(key, current.text(DIGITS));
            }
        }
        Node device = node.kind() == PartKind.PROTECTION ? node : node.kind() == PartKind.CONDUCTOR ? node.deviceBefore() : null;
        if (device != null && device.figures() instanceof Protection guard) {
            entries.put("fuse-rating", guard.rating().text());
        }
        Quantity fault = node.kind() == PartKind.PROTECTION ? examination.faultCurrents().highest(node.parent()) : null;
        if (fault != null) {
            entries.put("prospective-current", fault.text(DIGITS));
        }
        return entries;
    }

    /** What was typed for a part, or what is taken where nothing was. */
    private static void typed(Node node, Map<String, String> entries) {
        for (Field field : node.kind().fields()) {
            String text = node.part().text(field.key());
            String taken = text.isBlank() ? field.usual() : text;
            if (taken != null && !taken.isEmpty()) {
                entries.put(field.key(), taken);
            }
        }
        if (node.kind() == PartKind.CONDUCTOR) {
            entries.put("length-counts", "one-way");
            entries.put(PartFigures.COPPER, ((Conductor) node.figures()).copper().text());
        }
    }

    /** A load as the first of a day. */
    private static void ofTheDay(Map<String, String> entries) {
        for (String key : new String[] {"power", "current", "hours", "duty"}) {
            if (entries.containsKey(key)) {
                entries.put("load-1-" + key, entries.get(key));
            }
        }
    }
}
