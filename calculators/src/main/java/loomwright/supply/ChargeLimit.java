package loomwright.supply;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.MissingFigure;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/**
 * The highest voltage a battery may be charged with: what its data sheet says, or else what print says of its kind.
 *
 * <p>LiFePO4: number of cells × 3.65 V; lead-acid: 15 V for each 12 V, the highest of the printed voltages, for equalising.
 *
 * @source table battery-limits: lifepo4-cell-full, lead-acid-equalisation
 */
public record ChargeLimit(Quantity voltage, String name, Source source) {
    private static final double NOMINAL = 12;
    private static final double CELLS = 4;

    /**
     * @param chemistry its kind
     * @param resting its resting voltage, which tells whether it is one for 12 V or for 24 V
     * @param typed what its data sheet says, or null
     * @param typedFrom where that comes from
     */
    public static ChargeLimit of(Chemistry chemistry, Quantity resting, Quantity typed, Source typedFrom) {
        if (typed != null) {
            return new ChargeLimit(typed, "the highest charging voltage of its data sheet", typedFrom);
        }
        double blocks = Math.max(1, Math.floor(resting.in(Units.VOLT).value() / NOMINAL + 0.35));
        boolean lithium = chemistry == Chemistry.LIFEPO4;
        Row row = PublishedTables.batteryLimits().row(lithium ? "lifepo4-cell-full" : "lead-acid-equalisation");
        double volts = row.quantity("value", Units.VOLT).value() * blocks * (lithium ? CELLS : 1);
        String cells = lithium ? (int) (blocks * CELLS) + " cells" : (int) blocks * 6 + " cells";
        return new ChargeLimit(Quantity.of(volts, Units.VOLT), "the highest that is published for " + cells + " of " + chemistry.label(), row.source());
    }

    /** A charging voltage held against it. */
    public Finding held(String subject, Quantity charging, Source chargingFrom) {
        return Comparison.of(subject, charging)
                .atMost(voltage, name, source)
                .restingOn(chargingFrom)
                .exact()
                .settledBy(new MissingFigure("charge-voltage-most", "highest charging voltage of the battery", "its data sheet"))
                .otherwise(Verdict.STOP, "Set the charger to what the battery\u2019s data sheet says, or take one made for this kind of battery.")
                .finding();
    }
}
