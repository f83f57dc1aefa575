package loomwright.circuit.check;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.Conductor;
import loomwright.circuit.Node;
import loomwright.circuit.Part;
import loomwright.circuit.Protection;
import loomwright.conductor.RunSize;
import loomwright.protection.DeviceKind;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Verdict;

/** Goes up the standard sizes of a run, or the standard ratings of a device, to the first with which nothing that it decides is left to change. */
public final class SmallestThatPasses {
    /** What a part decides for itself. */
    private static final List<Check> OWN =
            List.of(Check.AMPACITY, Check.CONDUCTOR_PROTECTED, Check.SHORT_CIRCUIT_HEAT, Check.DEVICE_LOADING);

    /** What a run decides for all behind it. */
    private static final List<Check> BEHIND_A_RUN = List.of(Check.OPERATING_POINT, Check.VOLTAGE_DROP);

    /** What a device decides for all behind it. */
    private static final List<Check> BEHIND_A_DEVICE = List.of(Check.CONDUCTOR_PROTECTED, Check.START);

    private SmallestThatPasses() {}

    /**
     * The circuit with the smallest size of one run, or the smallest rating of one device, that passes.
     *
     * @param id a conductor run, or a fuse-link or breaker
     */
    public static Suggestion of(Circuit circuit, String id) {
        Part part = circuit.part(id);
        if (part == null || !circuit.faults().isEmpty()) {
            return Suggestion.none("First correct what cannot be understood: the checks need every part.");
        }
        if (circuit.node(id).figures() instanceof Conductor conductor) {
            return first(circuit, id, "size", sizes(conductor), BEHIND_A_RUN);
        }
        if (circuit.node(id).figures() instanceof Protection protection) {
            DeviceKind kind = protection.device();
            return kind.ratings().isEmpty()
                    ? Suggestion.none("No series of standard ratings is in print for the kind of " + part.title() + ": choose from its maker's list.")
                    : first(circuit, id, "rating", ratings(kind), BEHIND_A_DEVICE);
        }
        return Suggestion.none("Only a conductor run and a fuse-link or breaker have standard sizes.");
    }

    private static Suggestion first(Circuit circuit, String id, String field, List<String> texts, List<Check> behind) {
        String was = circuit.part(id).text(field);
        Examination before = Examination.of(circuit);
        List<String> left = new ArrayList<>();
        for (String text : texts) {
            Circuit tried = CircuitEdits.changed(circuit, id, field, text).circuit();
            if (tried == null) {
                continue;
            }
            Examination after = Examination.of(tried);
            CircuitFinding open = firstOpen(after, tried.node(id), behind);
            open = open == null ? Worsened.first(before, after) : open;
            if (open == null) {
                return Suggestion.of(circuit, tried, id, was, text, left);
            }
            left.add(text + ": " + open.finding().words());
        }
        return Suggestion.none("None of the " + texts.size() + " standard sizes passes every check. The last: "
                + (left.isEmpty() ? "none could be tried." : left.get(left.size() - 1)), left);
    }

    /** The first finding that the part decides and that stands against it. */
    private static CircuitFinding firstOpen(Examination examination, Node node, List<Check> behind) {
        for (CircuitFinding finding : examination.findings()) {
            boolean own = OWN.contains(finding.check()) && finding.concerns(node.id());
            boolean further = behind.contains(finding.check()) && node.isOnTheWayTo(examination.circuit().node(finding.partId()));
            if ((own || further) && standsAgainst(finding)) {
                return finding;
            }
        }
        return null;
    }

    /** A stop, a caution whose figure is above its limit, or a conductor of which no table says what it carries. Other figures to get, which no size would mend, do not count. */
    private static boolean standsAgainst(CircuitFinding finding) {
        if (finding.finding().verdict() == Verdict.NOT_KNOWN) {
            // What no table gives does not pass.
            return finding.check() == Check.AMPACITY || finding.check() == Check.CONDUCTOR_PROTECTED;
        }
        if (finding.finding().verdict() != Verdict.CAUTION) {
            return finding.finding().verdict() == Verdict.STOP;
        }
        if (finding.check() == Check.DEVICE_LOADING || finding.check() == Check.SHORT_CIRCUIT_HEAT) {
            // A rating that only just carries its load, or opens late, is none to propose.
            return true;
        }
        boolean limited = finding.finding().limit() != null && finding.check() != Check.START;
        return limited && !Comparison.atMost(finding.finding().figure(), finding.finding().limit());
    }

    private static List<String> sizes(Conductor conductor) {
        List<String> texts = new ArrayList<>();
        if (conductor.kind().table() != null) {
            for (RunSize size : RunSize.series(conductor.kind(), conductor.temperature())) {
                texts.add(plain(size.size().text()));
            }
        }
        return texts;
    }

    private static List<String> ratings(DeviceKind kind) {
        List<String> texts = new ArrayList<>();
        for (Row row : kind.ratings()) {
            texts.add(plain(row.quantity("rating").text()));
        }
        return texts;
    }

    /** As a reader would type it. */
    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
