package loomwright.conductor;

import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Entries;
import loomwright.worked.WorkingBuilder;

/** The known mistakes of a voltage drop, with the present numbers. */
final class DropSlips {
    private static final Formula SHARE_OF_LOAD =
            new Formula(Symbols.DROP_SHARE, Symbols.DROP.over(Symbols.SUPPLY_VOLTAGE.minus(Symbols.DROP)));
    private static final Formula POWER_OF_SUPPLY =
            new Formula(Symbols.POWER_LOST, Symbols.SUPPLY_VOLTAGE.times(Symbols.CURRENT));
    private static final Formula ADDED = new Formula(Symbols.LOAD_VOLTAGE, Symbols.SUPPLY_VOLTAGE.plus(Symbols.DROP));

    private DropSlips() {}

    static void add(
            WorkingBuilder working, Entries entries, Quantity current, Quantity outAndBack, Quantity perMetre, Values shareValues) {
        Quantity metres = outAndBack.in(Units.METRE);
        Values values = Values.of(Symbols.CURRENT, current)
                .with(Symbols.PER_METRE, perMetre)
                .with(Symbols.CIRCUIT_LENGTH, metres);
        working.slip(
                "forgot-the-return", "drop", "The return conductor left out",
                "The current also has to come back, through a conductor that loses as much again.", DropFormulas.lengthCounted(0.5), values);
        working.slip(
                "return-counted-twice", "drop", "The return conductor counted twice",
                "The length was already out and back when it was doubled.", DropFormulas.lengthCounted(2), values);
        boolean feet = entries.quantity("route-length").unit() == Units.FEET;
        Quantity misread = Quantity.of(outAndBack.value(), feet ? Units.METRE : Units.FEET).in(Units.METRE);
        working.slip(
                "feet-for-metres", "drop", feet ? "Feet taken as metres" : "Metres taken as feet",
                "A foot is 0.3048 m, so the two differ by more than three times.", DropFormulas.lengthCounted(1),
                values.with(Symbols.CIRCUIT_LENGTH, misread));
        addShares(working, shareValues);
        working.slip(
                "added-the-drop", "voltage-at-load", "The drop added instead of taken away",
                "The load gets what is left after the conductors have had their share.", ADDED, shareValues);
        working.slip(
                "supply-voltage-for-drop", "power-lost", "The whole supply voltage used in place of the drop",
                "Only the volts lost in the conductors heat them; the rest is used by the load.", POWER_OF_SUPPLY, shareValues);
    }

    private static void addShares(WorkingBuilder working, Values values) {
        Quantity share = DropFormulas.SHARE.value(values, Units.PERCENT);
        working.slip(
                "percent-for-volts", "voltage-at-load", "The percent taken for volts",
                "A share in percent is no number of volts: only volts can be taken from volts.", DropFormulas.LOAD_VOLTAGE,
                values.with(Symbols.DROP, Quantity.of(share.value(), Units.VOLT)));
        working.slip(
                "share-of-the-load-voltage", "drop-percent", "The share taken of the voltage at the load",
                "The allowances are shares of the supply voltage.", SHARE_OF_LOAD, values);
        Quantity nominal = Quantity.of(12, Units.VOLT);
        boolean atNominal = values.of(Symbols.SUPPLY_VOLTAGE).base() == nominal.base();
        Quantity other = atNominal ? Quantity.of(13.8, Units.VOLT) : nominal;
        working.slip(
                "share-of-another-voltage", "drop-percent", "The share taken of " + other.text(),
                "Take the share of the voltage that the rule names, and of no other.", DropFormulas.SHARE,
                values.with(Symbols.SUPPLY_VOLTAGE, other));
    }
}
