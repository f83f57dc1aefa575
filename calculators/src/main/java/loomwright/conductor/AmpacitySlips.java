package loomwright.conductor;

import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.WorkingBuilder;

/** The known mistakes of an ampacity, with the present numbers. */
final class AmpacitySlips {
    private AmpacitySlips() {}

    static void add(WorkingBuilder working, RatedCurrent rated, Quantity ampacity) {
        if (rated.own() != null) {
            slip(
                    working, "own-factor-left-out", "Your own factor left out", "It takes its share of the current as the others do.",
                    AmpacityFormulas.of(rated.warmth() != null, rated.bundleBinds()), rated.values());
            return;
        }
        Values values = rated.values();
        slip(
                working, "conductors-added", "The currents of both conductors added",
                "The same current goes out and comes back: two conductors do not carry twice of it.", AmpacityFormulas.DOUBLED,
                values.with(AmpacitySymbols.TABLE_CURRENT, ampacity));
        if (rated.warmth() != null) {
            warmth(working, values, rated.bundleBinds());
        }
        if (rated.bundle() != null) {
            bundle(working, values, rated);
        }
        if (rated.row().table() == AmpacityRuleSet.BOAT.table()) {
            slip(
                    working, "fuse-limit-for-ampacity", "The 150 % of the fuse rule used in place of the ampacity",
                    "150 % is the most a fuse or breaker may be rated at below 50 V; the conductor may carry its ampacity only.",
                    AmpacityFormulas.FUSE_LIMIT, values);
        }
        if (!rated.column().equals("current")) {
            otherColumn(working, rated, values);
            neighbours(working, rated, values);
        }
    }

    private static void warmth(WorkingBuilder working, Values values, boolean bundled) {
        slip(
                working, "warmth-turned-over", "Divided by the factor for warm surroundings",
                "A warm place takes current away: multiply by the factor, do not divide.",
                bundled ? AmpacityFormulas.WARMTH_TURNED_OVER_BUNDLED : AmpacityFormulas.WARMTH_TURNED_OVER, values);
        slip(
                working, "warmth-left-out", "The factor for warm surroundings left out",
                "The table holds at the temperature printed with it; it is warmer here.", AmpacityFormulas.of(false, bundled), values);
        slip(
                working, "warmth-taken-away", "The factor used as the part that is lost",
                "The factor is the share that is left, not the share that is lost.", AmpacityFormulas.TAKEN_AWAY, values);
    }

    private static void bundle(WorkingBuilder working, Values values, RatedCurrent rated) {
        boolean warm = rated.warmth() != null;
        slip(
                working, "bundle-turned-over", "Divided by the bundling factor",
                "Conductors side by side warm each other: the current gets less, so multiply by the factor.",
                warm ? AmpacityFormulas.BUNDLE_TURNED_OVER_WARM : AmpacityFormulas.BUNDLE_TURNED_OVER, values);
        slip(
                working, "bundle-left-out", "The bundling factor left out",
                "Conductors that lie together warm each other, at any voltage.", AmpacityFormulas.of(warm, false), values);
        Row raceway = PublishedTables.necRacewayFactor().rows().get(0);
        slip(
                working, "rule-sets-mixed", "The factor of a raceway in a building used on the table for boats",
                "The NEC factors belong to NEC tables: a factor is used only with the table it was made for.",
                AmpacityFormulas.of(warm, true), values.with(AmpacitySymbols.BUNDLE_FACTOR, raceway.quantity("factor", Units.ONE)));
    }

    private static void otherColumn(WorkingBuilder working, RatedCurrent rated, Values values) {
        String best = rated.row().table().key().startsWith("free-air") ? Insulation.T90.column() : Insulation.T200.column();
        if (rated.row().has(best)) {
            slip(
                    working, "column-of-better-insulation", "Read in the column of better insulation",
                    "Insulation of a lower rating must stay cooler, so its conductor may carry less.",
                    AmpacityFormulas.of(rated.warmth() != null, rated.bundleBinds()),
                    values.with(AmpacitySymbols.TABLE_CURRENT, rated.row().quantity(best)));
        }
    }

    /** The cells beside and below the right one. */
    private static void neighbours(WorkingBuilder working, RatedCurrent rated, Values values) {
        Formula formula = AmpacityFormulas.of(rated.warmth() != null, rated.bundleBinds());
        String words = "Each temperature rating has its own column: read the one printed on the cable.";
        String before = null;
        String after = null;
        boolean past = false;
        for (Insulation each : Insulation.values()) {
            boolean own = each.column().equals(rated.column());
            if (rated.row().has(each.column())) {
                before = past || own ? before : each.column();
                after = past && after == null ? each.column() : after;
            }
            past |= own;
        }
        if (after != null) {
            slip(
                    working, "hotter-column", "Read in the next column to the right", words, formula,
                    values.with(AmpacitySymbols.TABLE_CURRENT, rated.row().quantity(after)));
        }
        if (before != null) {
            slip(
                    working, "colder-column", "Read in the next column to the left", words, formula,
                    values.with(AmpacitySymbols.TABLE_CURRENT, rated.row().quantity(before)));
        }
        Row thicker = StandIn.thicker(rated.row().table(), rated.row());
        if (thicker != null && thicker.has(rated.column())) {
            slip(
                    working, "thicker-row", "Read in the row of the next thicker size", "That row has more copper than this conductor.", formula,
                    values.with(AmpacitySymbols.TABLE_CURRENT, thicker.quantity(rated.column())));
        }
    }

    private static void slip(WorkingBuilder working, String key, String name, String words, Formula formula, Values values) {
        working.slip(key, "ampacity", name, words, formula, values);
    }
}
