package loomwright.turned;

import java.util.ArrayList;
import java.util.List;
import loomwright.protection.DeviceKind;
import loomwright.quantity.Dimension;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.QuantityField;

/** The figures that a field can hold where not every figure can be bought or counted: sizes of conductor, ratings, whole numbers. */
public final class SoldSizes {
    private static final int MOST_COUNTED = 60;

    private SoldSizes() {}

    /** Those figures in {@code unit}, the least first; null if the field takes any figure. */
    public static List<Double> of(QuantityField field, Unit unit) {
        if (unit.dimension().equals(Dimension.AREA)) {
            return conductors(unit);
        }
        if (isRating(field)) {
            return ratings();
        }
        return isCounted(field) ? counted() : null;
    }

    /** Sizes of cable in the series of a unit, the thinnest first; null for a unit without a series. */
    public static List<Double> conductors(Unit unit) {
        if (unit == Units.SQUARE_MILLIMETRE) {
            return sizes(PublishedTables.iec60228().rows());
        }
        return unit == Units.AWG ? sizes(PublishedTables.no33Cfr183425Table5().rows()) : null;
    }

    /** Fields that ask for the rating of a protective device are named so. */
    public static boolean isRating(QuantityField field) {
        boolean named = field.key().endsWith("rating") || field.key().endsWith("fuse");
        return named && field.units().get(0) == Units.AMPERE;
    }

    /** A count begins at one and has no unit. */
    private static boolean isCounted(QuantityField field) {
        return field.units().get(0) == Units.ONE && field.limits().get(0).least().value() == 1
                && field.limits().get(0).greatest().value() >= 10;
    }

    private static List<Double> sizes(List<Row> rows) {
        List<Double> sizes = new ArrayList<>();
        for (Row row : rows) {
            sizes.add(row.quantity("size").value());
        }
        return sizes;
    }

    private static List<Double> ratings() {
        List<Double> ratings = new ArrayList<>();
        for (DeviceKind kind : DeviceKind.values()) {
            for (Row row : kind.ratings()) {
                double rating = row.quantity("rating").value();
                if (!ratings.contains(rating)) {
                    ratings.add(rating);
                }
            }
        }
        ratings.sort(Double::compare);
        return ratings;
    }

    private static List<Double> counted() {
        List<Double> counted = new ArrayList<>();
        for (int count = 1; count <= MOST_COUNTED; count++) {
            counted.add((double) count);
        }
        return counted;
    }
}
