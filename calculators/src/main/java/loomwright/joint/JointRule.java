package loomwright.joint;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Verdict;

/**
 * How much heat one joint may make: P = I² × R, held against the heat of a sound contact at its rating, and against the heat that softens
 * the plastic around it.
 *
 * <p>A contact of 0.55 mΩ carries 30 A with 0.495 W and is then 27.8 K warmer than the air, 56 K for each watt. With 40 °C around it, rigid
 * PVC begins to give way 17 K above, at 57 °C, and a holder of thermoplastic ends 40 K above, at 80 °C: at 0.7 W. Sizes of joints differ, so these are
 * orders of size; a joint that is really measured warm or cold rules.
 *
 * @source table joint-heat: maker's data of a connector and of a holder; the products are computed
 */
public final class JointRule {
    private JointRule() {}

    /** The heat of a joint. */
    public static Quantity heat(Quantity resistance, Quantity current) {
        return JointHeat.DESIGN_HEAT.value(
                Values.of(JointHeat.JOINT, resistance).with(JointHeat.DESIGN_CURRENT, current), Units.WATT);
    }

    /**
     * The heat of a joint held against its limits.
     *
     * @param subject what it is, as the start of a sentence, such as {@code The heat in the joint}
     */
    public static Comparison heat(String subject, Quantity heat) {
        Row plastic = row("plastic-gives-way");
        Comparison most = Comparison.of(subject, heat)
                .atMost(plastic.quantity("heat"), "what brings a plastic holder to the end of its range", plastic.source())
                .exact()
                .otherwise(Verdict.STOP, "Make the joint anew. Warm is a warning; hot is a stop.");
        if (!most.holds()) {
            return most;
        }
        Row sound = row("sound-contact");
        return Comparison.of(subject, heat)
                .atMost(sound.quantity("heat"), "that of a sound contact of 30 A at its rating", sound.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Measure the millivolts across it with the load on, and feel it after half an hour: if it is warm, make the joint anew.");
    }

    private static Row row(String key) {
        return PublishedTables.jointHeat().row(key);
    }
}
