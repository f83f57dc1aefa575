package loomwright.protection;

import loomwright.conductor.Insulation;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Entries;

/**
 * One choice of a fuse-link, as far as it has been worked out.
 *
 * @param row the row of Table 5
 * @param warmRow the row of the re-rating sheet, or null if the place is not warm or the reader has a figure of his own
 * @param warmShare the share left in the warm by the reader's own data sheet, or null
 * @param assumed what nobody said of the conductor and was taken, in words; empty if all was said
 * @param values what the letters of {@link FuseSymbols} stand for
 */
record FuseCase(
        Quantity size, Row row, Insulation insulation, boolean engineSpace, RuleSet rules, DeviceKind type, boolean continuous,
        Quantity ambient, Row warmRow, Quantity warmShare, String assumed, Values values) {

    static FuseCase of(Entries entries, Row row) {
        Quantity ambient = entries.quantity("ambient");
        Quantity own = entries.quantity(FuseFields.WARM_SHARE.key());
        return new FuseCase(
                entries.quantity("size"), row, Insulation.of(entries.option("insulation-temperature")),
                entries.choice("engine-space").equals("yes"), RuleSet.of(entries.option("rule-set")),
                DeviceKind.CHOICES.of(entries.option("fuse-type")),
                entries.choice("continuous").equals("yes"), ambient, own == null ? warmRow(ambient) : null, own, assumed(entries),
                Values.none());
    }

    FuseCase with(Values more) {
        return new FuseCase(size, row, insulation, engineSpace, rules, type, continuous, ambient, warmRow, warmShare, assumed,
                more);
    }

    FuseLimits limits() {
        return new FuseLimits(values.of(FuseSymbols.LEAST), values.of(FuseSymbols.HIGHEST));
    }

    boolean isWarm() {
        return warmRow != null || warmShare != null;
    }

    /** Whether the load fits the conductor at all. */
    boolean conductorCarriesLoad() {
        return FuseLimits.reaches(values.of(FuseSymbols.AMPACITY), values.of(FuseSymbols.DESIGN));
    }

    private static String assumed(Entries entries) {
        String insulation = entries.isAssumed("insulation-temperature") ? "insulation for 60 °C" : "";
        String place = entries.isAssumed("engine-space") ? "a conductor outside engine spaces" : "";
        return insulation + (insulation.isEmpty() || place.isEmpty() ? "" : " and ") + place;
    }

    /** The row of the place, or the next hotter one; null where the sheet leaves the rating whole. */
    private static Row warmRow(Quantity ambient) {
        for (Row row : PublishedTables.fuseRerating().rows()) {
            if (row.quantity("ambient").base() >= ambient.base()) {
                boolean whole = row.quantity("current").base() >= row.quantity("rating").base();
                return whole ? null : row;
            }
        }
        throw new IllegalStateException("no re-rating row for " + ambient.text());
    }
}
