package loomwright.circuit.solve;

import loomwright.circuit.Installation;
import loomwright.circuit.Load;
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
public record Starvation(int part, Quantity asked, Quantity most, String words) {

    /** The reason; null if there is an operating point. */
    public static Starvation of(Installation installation, Solved solved) {
        if (solved.exists()) {
            return null;
        }
        Situation situation = solved.situation();
        Asking worst = null;
        for (int i = 1; i < installation.size(); i++) {
            Asking asking = asking(installation, situation, i);
            if (asking != null && (worst == null || asking.share(situation.sourceVolts()) > worst.share(situation.sourceVolts()))) {
                worst = asking;
            }
        }
        return worst.starved(situation);
    }

    /** What one part asks for, at the end of which resistance. Without a load of held power or current a network always works. */
    private record Asking(int part, String title, double watts, double amperes, double ohms) {

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

    private static Asking asking(Installation installation, Situation situation, int i) {
        String title = installation.part(i).title();
        double ohms = wayOhms(installation, situation, i);
        Load load = installation.load(i);
        if (load != null) {
            boolean starting = situation.starting() == i && load.startCurrent() != null;
            double watts = situation.drawing()[i] && !starting ? load.watts() : 0;
            return new Asking(i, title, watts, starting ? load.startCurrent().base() : heldAmperes(load, situation, i), ohms);
        }
        if (installation.panel(i) != null) {
            return new Asking(i, title, 0, installation.panel(i).presentLoad().base(), ohms);
        }
        int from = installation.trigger(i);
        if (from < 0 || installation.switching(i).triggerCurrent() == null) {
            return null;
        }
        return new Asking(
                i, "The trigger of " + title, 0, installation.switching(i).triggerCurrent().base(),
                wayOhms(installation, situation, from) + installation.triggerOhms(i));
    }

    private static double heldAmperes(Load load, Situation situation, int i) {
        return situation.drawing()[i] ? load.amperes() : load.standing().base();
    }

    private static double wayOhms(Installation installation, Situation situation, int part) {
        double ohms = situation.sourceOhms();
        for (int at = part; at > 0; at = installation.feeding(at)) {
            ohms += installation.ohms(at);
        }
        return ohms;
    }
}
