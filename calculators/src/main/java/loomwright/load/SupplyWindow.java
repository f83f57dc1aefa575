package loomwright.load;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** Between what voltages a 12 V system moves. Common practice. */
final class SupplyWindow {
    private static final Row ROW = PublishedTables.tradeFacts().row("supply-window");

    static final Quantity LOWEST = ROW.quantity("value", Units.VOLT);
    static final Quantity HIGHEST = ROW.quantity("value-to", Units.VOLT);

    private SupplyWindow() {}

    static Source source() {
        return ROW.source();
    }

    static boolean holds(Quantity voltage) {
        return voltage.base() >= LOWEST.base() && voltage.base() <= HIGHEST.base();
    }
}
