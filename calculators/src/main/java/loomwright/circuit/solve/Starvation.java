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
        int worst = 0;
        double worstShare = -1;
        for (int i = 1; i < installation.size(); i++) {
            double share = share(installation, situation, i);
            if (share > worstShare) {
                worst = i;
                worstShare = share;
            }
        }
        return described(installation, situation, worst);
    }

    /** What a load asks for as a share of what could reach it at most. */
    private static double share(Installation installation, Situation situation, int i) {
        Load load = installation.load(i);
        double volts = situation.sourceVolts();
        double ohms = wayOhms(installation, situation, i);
        if (load == null) {
            return installation.panel(i) == null ? -1 : installation.panel(i).presentLoad().base() * ohms / volts;
        }
        double amperes = heldAmperes(load, situation, i);
        double watts = situation.drawing()[i] && situation.starting() != i ? load.watts() : 0;
        return 4 * watts * ohms / (volts * volts) + amperes * ohms / volts;
    }

    private static double heldAmperes(Load load, Situation situation, int i) {
        if (situation.starting() == i) {
            return load.startCurrent().base();
        }
        return situation.drawing()[i] ? load.amperes() : load.standing().base();
    }

    private static Starvation described(Installation installation, Situation situation, int i) {
        Load load = installation.load(i);
        double volts = situation.sourceVolts();
        double ohms = wayOhms(installation, situation, i);
        boolean byPower = load != null && load.watts() > 0 && situation.starting() != i;
        double held = load == null ? installation.part(i).entries().quantity("present-load").base() : heldAmperes(load, situation, i);
        Quantity asked = byPower ? Quantity.of(load.watts(), Units.WATT) : Quantity.of(held, Units.AMPERE);
        Quantity most = byPower ? Quantity.of(volts * volts / (4 * ohms), Units.WATT) : Quantity.of(volts / ohms, Units.AMPERE);
        String words = installation.part(i).title() + " is starved with " + situation.words() + " on at "
                + Quantity.of(volts, Units.VOLT).text(3) + ": it asks for " + asked.text(3) + ", and through the "
                + Quantity.of(1000 * ohms, Units.MILLIOHM).text(3) + " on the way to it at most " + most.text(3)
                + " could arrive if nothing else were on. "
                + (byPower
                        ? "Its voltage would sink, it would draw more, and sink further: there is no point where it settles."
                        : "The conductors would need more than the whole voltage of the battery.");
        return new Starvation(i, asked, most, words);
    }

    private static double wayOhms(Installation installation, Situation situation, int part) {
        double ohms = situation.sourceOhms();
        for (int at = part; at > 0; at = installation.feeding(at)) {
            ohms += installation.ohms(at);
        }
        return ohms;
    }
}
