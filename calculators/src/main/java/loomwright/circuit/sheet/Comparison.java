package loomwright.circuit.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.Part;
import loomwright.circuit.PartFault;
import loomwright.circuit.check.Examination;
import loomwright.circuit.solve.Situation;
import loomwright.circuit.solve.Solved;
import loomwright.proving.Readings;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/**
 * Readings under load held against what they should be: each stretch between two readings agrees, or has a resistance too much.
 *
 * @param findings one for each reading that could be read, in the order of the circuit
 * @param faults readings that are no voltages
 */
public record Comparison(List<ReadingFinding> findings, List<PartFault> faults) {
    private static final Source COMPUTED = Source.of(Document.COMPUTED, "");

    /**
     * Compares the readings of a circuit. The reading at the battery is needed, for every other is held against it in the end.
     *
     * @param examination the circuit, understood
     */
    public static Comparison of(Examination examination, Meter meter) {
        Circuit circuit = examination.circuit();
        List<PartFault> faults = new ArrayList<>();
        Map<Node, Quantity> read = new HashMap<>();
        for (Node node : circuit.nodes()) {
            Quantity volts = volts(node.part(), faults);
            if (volts != null) {
                read.put(node, volts);
            }
        }
        Quantity battery = read.get(circuit.supply());
        if (battery == null || battery.base() <= 0) {
            faults.add(new PartFault(
                    circuit.supply().id(), "", "The reading at the battery is needed, with the loads on: the others are held against it"));
            return new Comparison(List.of(), List.copyOf(faults));
        }
        Situation loaded = Situation.heaviest(circuit, battery.base(), 0).get(0);
        Solved worn = Solved.of(circuit, loaded);
        Solved sound = Solved.withLeastResistance(circuit, loaded);
        if (!worn.exists() || !sound.exists()) {
            faults.add(new PartFault("", "", "The circuit has no operating point under all its loads at this voltage: correct it first"));
            return new Comparison(List.of(), List.copyOf(faults));
        }
        List<ReadingFinding> findings = new ArrayList<>();
        for (Node node : circuit.nodes()) {
            if (node.parent() != null && read.containsKey(node)) {
                Node from = node.parent();
                while (!read.containsKey(from)) {
                    from = from.parent();
                }
                findings.add(new Stretch(examination, worn, sound, from, node, read.get(from), read.get(node), meter).finding());
            }
        }
        return new Comparison(List.copyOf(findings), List.copyOf(faults));
    }

    /** Whether anything was read in a circuit. */
    public static boolean isAsked(Circuit circuit) {
        for (Part part : circuit.parts()) {
            if (!part.reading().isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private static Quantity volts(Part part, List<PartFault> faults) {
        if (part.reading().isEmpty()) {
            return null;
        }
        QuantityText.Reading reading = QuantityText.read(part.reading(), Units.VOLT);
        if (reading.quantity() == null) {
            faults.add(new PartFault(part.id(), "", "The reading " + reading.fault() + ": enter volts"));
            return null;
        }
        Quantity quantity = reading.quantity();
        if (!quantity.dimension().equals(Dimension.VOLTAGE) || Math.abs(quantity.base()) > 100) {
            faults.add(new PartFault(part.id(), "", "The reading must be a voltage between 0 V and 100 V, but is " + quantity.text()));
            return null;
        }
        return quantity;
    }

    /** The way between two readings. */
    private record Stretch(
            Examination examination, Solved worn, Solved sound, Node from, Node to, Quantity before, Quantity after, Meter meter) {

        ReadingFinding finding() {
            double lost = before.base() - after.base();
            double one = worn.volts(from) - worn.volts(to);
            double other = sound.volts(from) - sound.volts(to);
            double most = Math.max(one, other);
            double least = Math.min(one, other);
            double doubt = meter.uncertainty(before).base() + meter.uncertainty(after).base();
            String stretch = "Between " + from.title() + " and " + to.title() + " ";
            Quantity lostVolts = volts(lost);
            String range = volts(least).text(3) + " to " + volts(most).text(3);
            if (lost > most + doubt) {
                return tooMuch(stretch, lostVolts, volts(most), volts(lost - most), range);
            }
            boolean agrees = lost >= least - doubt;
            String words = stretch + lostVolts.text(3) + " are lost; expected are " + range + ", and the meter may be wrong by "
                    + volts(doubt).text(2) + (agrees ? ". It agrees." : ". That is less than it can be: less current flows than planned.");
            String remedy = agrees ? "" : "See that every load is on, and measure the current; then check sizes and lengths.";
            return found(null, null, new Finding(agrees ? Verdict.PASSED : Verdict.CAUTION, words, lostVolts, volts(most), COMPUTED, remedy));
        }

        private ReadingFinding tooMuch(String stretch, Quantity lost, Quantity most, Quantity extra, String range) {
            double flowing = worn.amperes(to);
            String opening = stretch + lost.text(3) + " are lost; expected are " + range + ".";
            if (flowing < 0.01) {
                return found(null, null, new Finding(
                        Verdict.CAUTION, opening + " Hardly any current should flow there: a load is on that is not in this circuit, or the path is broken.",
                        lost, most, COMPUTED, "Measure the current, and look for an open fuse-link, switch or joint."));
            }
            Quantity current = Quantity.of(flowing, Units.AMPERE);
            Quantity hidden = Readings.hidden(extra, current);
            Quantity heat = Readings.heat(hidden, Quantity.of(examination.solution().designAmperes(to), Units.AMPERE));
            String words = opening + " An extra resistance of " + hidden.text(3) + " there would explain it. In one joint it would make "
                    + heat.text(3) + " of heat at the largest current.";
            return found(hidden, heat, new Finding(
                    Verdict.CAUTION, words, lost, most, COMPUTED,
                    "Go along this stretch joint by joint with the loads on: the one with the most millivolts across it is the fault."));
        }

        private ReadingFinding found(Quantity hidden, Quantity heat, Finding finding) {
            return new ReadingFinding(to.id(), from.id(), hidden, heat, finding);
        }

        private static Quantity volts(double volts) {
            return Quantity.of(volts, Units.VOLT);
        }
    }
}
