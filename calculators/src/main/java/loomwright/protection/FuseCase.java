package loomwright.protection;

import loomwright.conductor.CarryingCapacity;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Entries;

/**
 * One choice of a fuse-link, as far as it has been worked out.
 *
 * @param capacity what the conductor may carry where it lies
 * @param ambient the temperature around the fuse-link
 * @param warmRow the row of the re-rating sheet, or null if the place is not warm or the reader has a figure of his own
 * @param warmShare the share left in the warm by the reader's own data sheet, or null
 * @param values what the letters of {@link FuseSymbols} stand for
 */
record FuseCase(
        CarryingCapacity capacity, RuleSet rules, DeviceKind type, boolean continuous, Quantity ambient, Row warmRow, Quantity warmShare,
        Values values) {

    static FuseCase of(Entries entries, CarryingCapacity capacity) {
        Quantity ambient = entries.quantity(FuseFields.AMBIENT.key());
        Quantity own = entries.quantity(FuseFields.WARM_SHARE.key());
        return new FuseCase(
                capacity, RuleSet.of(entries.option("fuse-rule")), DeviceKind.CHOICES.of(entries.option("fuse-type")),
                entries.choice("continuous").equals("yes"), ambient, own == null ? warmRow(ambient) : null, own, Values.none());
    }

    FuseCase with(Values more) {
        return new FuseCase(capacity, rules, type, continuous, ambient, warmRow, warmShare, more);
    }

    FuseLimits limits() {
        return new FuseLimits(values.of(FuseSymbols.LEAST), values.of(FuseSymbols.HIGHEST));
    }

    boolean isWarm() {
        return warmRow != null || warmShare != null;
    }

    /** Whether the rule lets the rating be more than the conductor may carry. */
    boolean allowsMore() {
        return rules.shareOf(capacity.isByTableFive()).base() > 1;
    }

    /** Whether it is known that the conductor carries the load. */
    boolean conductorCarriesLoad() {
        return capacity.isRated() && FuseLimits.reaches(capacity.value(), values.of(FuseSymbols.DESIGN));
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
