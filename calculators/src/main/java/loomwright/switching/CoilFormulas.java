package loomwright.switching;

import loomwright.formula.Formula;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** The formulas of a relay coil, and the figures of the relays in print. */
final class CoilFormulas {
    static final Formula RESISTANCE_FROM_POWER = new Formula(
            SwitchSymbols.COIL_RESISTANCE, SwitchSymbols.RATED_VOLTAGE.squared().over(SwitchSymbols.RATED_POWER));
    static final Formula CURRENT =
            new Formula(SwitchSymbols.COIL_CURRENT, SwitchSymbols.SUPPLY.over(SwitchSymbols.COIL_RESISTANCE));
    static final Formula POWER =
            new Formula(SwitchSymbols.COIL_POWER, SwitchSymbols.SUPPLY.times(SwitchSymbols.COIL_CURRENT));
    static final Formula CHARGE = new Formula(SwitchSymbols.CHARGE, SwitchSymbols.COIL_CURRENT.times(SwitchSymbols.HOURS));
    static final Formula ENERGY = new Formula(SwitchSymbols.ENERGY, SwitchSymbols.COIL_POWER.times(SwitchSymbols.HOURS));
    static final Formula SHARE = new Formula(SwitchSymbols.SHARE, SwitchSymbols.CHARGE.over(SwitchSymbols.CAPACITY));

    private CoilFormulas() {}

    /** A row of the relay table. */
    static Row relay(String item) {
        return PublishedTables.relayData().row(item);
    }

    /** The voltage at which a 12 V relay of the 70 A class must have pulled in. */
    static Quantity mustOperate() {
        return relay("70-a-operate").quantity("value", Units.VOLT);
    }
}
