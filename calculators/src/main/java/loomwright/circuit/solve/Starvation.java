package loomwright.circuit.solve;

import loomwright.circuit.Circuit;
import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.Panel;
import loomwright.circuit.Switching;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/**
 * Why a circuit has no operating point in a situation.
 *
 * @param part the load that asks for most against what can reach it
 * @param asked what it asks for
 * @param most what could reach it at most if nothing else were on: U²/(4 R) for a load that holds its power, U/R for one that holds its
 *     current
 * @param words the whole reason
 */
public record Starvation(Node part, Quantity asked, Quantity most, String words) {

    /** The reason; null if there is an operating point. */
    public static Starvation of(Circuit circuit, Solved solved) {
        if (solved.exists()) {
            return null;
        }
        Situation situation = solved.situation();
        Asking worst = null;
        for (Node node : circuit.nodes()) {
            Asking asking = asking(situation, node);
            if (asking != null && (worst == null || asking.share(situation.sourceVolts()) > worst.share(situation.sourceVolts()))) {
                worst = asking;
            }
        }
        return worst.starved(situation);
    }

    /** What one part asks for, at the end of which resistance. Without a load of held power or current a network always works. */
    private record Asking(Node part, String title, double watts, double amperes, double ohms) {

        /** As a share of what could reach it at most. */
        double share(double volts) {
            return 4 * watts * ohms / (volts * volts) + amperes * ohms / volts;
        }

        Starvation starved(Situation situation) {
            double volts = situation.sourceVolts();
            boolean byPower = watts > 0;
            Quantity asked = byPower ? Quantity.of(watts, Units.WATT) : Quantity.of(amperes, Units.AMPERE);
            Quantity most = byPower ? Quantity.of(volts * volts / (4 * ohms), Units.WATT) : Quantity.of(volts / ohms, Units.AMPERE);
            String words = title + " is starved with " + situation.words() + " on at " + Quantity.of(volts, Units.VOLT).text(3)
                    + ": it asks for " + asked.text(3) + ", and through the " + Quantity.of(1000 * ohms, Units.MILLIOHM).text(3)
                    + " on the way to it at most " + most.text(3) + " could arrive if nothing else were on. "
                    + (byPower
                            ? "Its voltage would sink, it would draw more, and sink further: there is no point where it settles."
                            : "The conductors would need more than the whole voltage of the battery.");
            return new Starvation(part, asked, most, words);
        }
    }

    private static Asking asking(Situation situation, Node node) {
        double ohms = wayOhms(situation, node);
        if (node.figures() instanceof Load load) {
            boolean starting = situation.starting() == node && load.startCurrent() != null;
            double watts = situation.isDrawing(node) && !starting ? load.watts() : 0;
            double held = situation.isDrawing(node) ? load.amperes() : load.standing().base();
            return new Asking(node, node.title(), watts, starting ? load.startCurrent().base() : held, ohms);
        }
        if (node.figures() instanceof Panel panel) {
            return new Asking(node, node.title(), 0, panel.presentLoad().base(), ohms);
        }
        if (node.trigger() == null || !(node.figures() instanceof Switching switching) || switching.triggerCurrent() == null) {
            return null;
        }
        return new Asking(
                node, "The trigger of " + node.title(), 0, switching.triggerCurrent().base(),
                wayOhms(situation, node.trigger()) + switching.triggerOhms());
    }

    private static double wayOhms(Situation situation, Node node) {
        double ohms = situation.sourceOhms();
        for (Node at = node; at != null; at = at.parent()) {
            ohms += at.figures().ohms();
        }
        return ohms;
    }
}
