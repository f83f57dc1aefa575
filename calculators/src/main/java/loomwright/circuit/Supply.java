package loomwright.circuit;

import loomwright.protection.FaultBattery;
import loomwright.protection.RuleSet;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.supply.BatteryDay;
import loomwright.supply.ChargeLimit;
import loomwright.supply.Chemistry;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;

/**
 * The battery of a circuit.
 *
 * @param resting its voltage at rest
 * @param lowest its voltage nearly empty, under load
 * @param highest its voltage while it is charged
 * @param resistance its inside resistance as a range
 * @param usableDepth the share of the capacity a plan may use
 * @param currentLimit the steady current it may give, or null
 * @param chargeVoltage the highest voltage it may be charged with by its data sheet, or null
 * @param chargeLimit the largest current that may flow into it, or null
 * @param daysWanted how long it shall last without charging, or null
 * @param solarPower the rated power of the solar panel, or null
 * @param figuresFrom where the figures of its data sheet come from
 * @param fuseRule what sets the highest rating of a device for a conductor
 */
public record Supply(
        Chemistry chemistry, Quantity capacity, Quantity stateOfCharge, Quantity usableDepth, Quantity resting, Quantity lowest,
        Quantity highest, FaultBattery resistance, Quantity currentLimit, Quantity chargeVoltage, Quantity chargeLimit, Quantity daysWanted,
        Quantity solarPower, Quantity peakSunHours, RuleSet fuseRule, Source figuresFrom) implements Figures {

    /**
     * The battery of a circuit, as it was entered.
     *
     * @throws Refusal if its figures do not go together
     */
    public static Supply of(Part part) {
        Entries entries = part.entries();
        Chemistry chemistry = Chemistry.of(entries);
        Quantity depth = entries.quantity(BatteryDay.depthField().key());
        Quantity lowest = entries.quantity("lowest-voltage");
        Quantity highest = entries.quantity("highest-voltage");
        if (lowest.base() > highest.base()) {
            throw new Refusal("lowest-voltage", "Lowest voltage at the battery is above the highest, " + highest.text() + ": turn them over");
        }
        return new Supply(
                chemistry, entries.quantity("capacity"), entries.quantity("state-of-charge"),
                depth == null ? chemistry.plannedDepth() : depth, entries.quantity("battery-voltage"), lowest, highest,
                resistance(part), entries.quantity(BatteryDay.limitField().key()), entries.quantity("charge-voltage-most"),
                entries.quantity("charge-current-most"), entries.quantity("days-wanted"), entries.quantity("panel-power"),
                entries.quantity("peak-sun-hours"), RuleSet.of(entries.option("fuse-rule")), part.figuresFrom());
    }

    /** A range in print keeps its source; what was typed is worth what it was typed from. */
    private static FaultBattery resistance(Part part) {
        FaultBattery range = FaultBattery.of(part.entries());
        return range.source().document() != Document.COMPUTED
                ? range
                : new FaultBattery(range.low(), range.high(), Comparison.weaker(range.source(), part.figuresFrom()));
    }

    /** The highest voltage it may be charged with. */
    public ChargeLimit chargingLimit() {
        return ChargeLimit.of(chemistry, resting, chargeVoltage, figuresFrom);
    }

    /** The ampere-hours that a plan may take at the state of charge entered; 0 if the plan has used them up. */
    public Quantity usable() {
        double share = Math.max(0, stateOfCharge.base() - (1 - usableDepth.base()));
        return BatteryDay.usable(capacity, Quantity.of(100 * share, Units.PERCENT));
    }

    @Override
    public double ohms() {
        return 0;
    }

    @Override
    public double leastOhms() {
        return 0;
    }

    @Override
    public String inPartsList() {
        return chemistry.label() + " battery of " + capacity.text();
    }

    @Override
    public String onLabel() {
        return "";
    }
}
