package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.table.Table;

/**
 * The factor for warm surroundings: that of the rule set, or of the next warmer row.
 *
 * <p>33 CFR prints one factor only, for an engine space of 50 °C. For other places from 30 °C to 55 °C the factors of the NEC are used with
 * its table: both start at 30 °C, and at 50 °C both print 0.58, 0.75 and 0.82 for insulation of 60, 75 and 90 °C. For better insulation the
 * column of 90 °C stands in, which is harder.
 *
 * @param row the row of the factor, or null if none applies
 * @param column the column of the factor
 * @param words what stood in, in a sentence; empty if nothing did
 * @param isBeyond whether it is warmer than the warmest row, so that the conductor carries less than this factor gives
 */
record Warmth(Row row, String column, String words, boolean isBeyond) {
    private static final double ENGINE_SPACE = 50;

    static Warmth of(AmpacityRuleSet rules, Insulation insulation, Surroundings around) {
        double celsius = around.celsius();
        double base = rules == AmpacityRuleSet.AIRCRAFT ? 70 : 30;
        if (rules == AmpacityRuleSet.BOAT && around.engineSpace() && celsius <= ENGINE_SPACE + 1e-9) {
            Row row = PublishedTables.no33Cfr183425EngineSpace().find("insulation", insulation.rating());
            return new Warmth(row, "factor", "", false);
        }
        if (celsius <= base + 1e-9) {
            return new Warmth(null, "", "", false);
        }
        return switch (rules) {
            case BOAT, FREE_AIR -> factor(
                    PublishedTables.necAmbientFactor(), "ambient-to", insulation, Insulation.T60, Insulation.T75, Insulation.T90, celsius);
            case CORD -> factor(
                    PublishedTables.bs7671CordAmbientFactor(), "ambient", insulation, Insulation.T60, Insulation.T60, Insulation.T90, celsius);
            case AIRCRAFT -> new Warmth(null, "", "The table holds up to 70 °C, and it is warmer here.", true);
            case TOWING -> new Warmth(null, "", "The page names no temperature and no factor; in a warm place a conductor carries less.", true);
        };
    }

    private static Warmth factor(
            Table table, String upTo, Insulation insulation, Insulation low, Insulation middle, Insulation high, double celsius) {
        Insulation taken = insulation.compareTo(Insulation.T75) < 0 ? low : insulation.compareTo(Insulation.T90) < 0 ? middle : high;
        Row warmest = null;
        for (Row row : table.rows()) {
            taken = upTo.equals("ambient-to") && insulation.compareTo(Insulation.T105) >= 0 && row.has(Insulation.T105.column()) ? Insulation.T105 : taken;
            if (row.has(taken.column())) {
                warmest = row;
                if (row.quantity(upTo).value() >= celsius - 1e-9) {
                    String words = taken == insulation ? "" : "The factor for insulation of " + taken.rating().text() + " stands in.";
                    boolean unseen = !row.source().standing().mayPass();
                    String end = unseen ? "The factors in print end below " + Quantity.of(celsius, Units.CELSIUS).text() + "; the one used is " + row.source().standing().words() + ". " : "";
                    return new Warmth(row, taken.column(), (end + words).strip(), unseen);
                }
            }
        }
        Quantity last = warmest.quantity(upTo);
        return new Warmth(
                warmest, taken.column(), "The factors end at " + last.text() + ", and it is " + Quantity.of(celsius, Units.CELSIUS).text() + " here.",
                true);
    }
}
