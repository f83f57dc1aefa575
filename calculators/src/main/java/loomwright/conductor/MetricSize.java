package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.table.Row;

/**
 * Where an area lies in the metric series.
 *
 * @param below the largest size with less copper, or null if there is none
 * @param enough the first size with at least as much copper, or null if there is none
 * @param nearest the nearer of the two
 * @param difference copper of the nearest against the area, as a share of the area
 */
record MetricSize(Row below, Row enough, Row nearest, Quantity difference) {
    Quantity nearestSize() {
        return nearest.quantity("size");
    }
}
