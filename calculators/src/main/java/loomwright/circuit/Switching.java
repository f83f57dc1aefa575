package loomwright.circuit;

import loomwright.conductor.AmpacityRuleSet;
import loomwright.conductor.CarryingCapacity;
import loomwright.conductor.ConductorFigures;
import loomwright.conductor.ConductorKind;
import loomwright.conductor.Insulation;
import loomwright.conductor.Surroundings;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.switching.SwitchFigures;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;

/**
 * A switching device and its trigger.
 *
 * @param device how it is switched
 * @param continuousCurrent what it may carry all the time
 * @param resistance its resistance when on
 * @param coil resistance of its coil, or null if it is no relay
 * @param triggerFuse the fuse-link where its trigger wire begins, or null if there is none
 * @param triggerInsulation what the insulation of its trigger wire is rated for
 * @param triggerCurrent what its input takes, or null if it is not solid-state
 * @param triggerOhms the resistance of its trigger wire, out and back, in Ω; 0 if it has none
 * @param triggerAmpacity what the data sheet of the trigger wire lets it carry, or null
 * @param figuresFrom where the figures of data sheets come from
 * @param junctionToAir thermal resistance to the air, or null if not known
 */
public record Switching(
        Device device, Quantity continuousCurrent, Quantity resistance, Quantity coil, Quantity triggerCurrent, Quantity hoursOn,
        Quantity triggerFuse, Insulation triggerInsulation, ConductorKind triggerKind, Quantity triggerSize, Quantity triggerRoute, Quantity junctionToAir, Quantity air,
        Quantity junctionLimit, Quantity triggerAmpacity, Source figuresFrom, double triggerOhms)
        implements Figures {
    /** How it is switched. */
    public enum Device {
        MANUAL("a switch by hand"),
        RELAY("a relay"),
        SOLID_STATE("a solid-state switch");

        private final String words;

        Device(String words) {
            this.words = words;
        }

        /** In the middle of a sentence. */
        public String words() {
            return words;
        }
    }

    private static final Quantity COOL = Quantity.of(20, Units.CELSIUS);

    /**
     * A switching device, as it was entered.
     *
     * @throws Refusal if a relay has neither coil resistance nor coil power, or both
     */
    public static Switching of(Part part) {
        Entries entries = part.entries();
        Device device = switch (entries.choice("switching")) {
            case "relay" -> Device.RELAY;
            case "solid-state" -> Device.SOLID_STATE;
            default -> Device.MANUAL;
        };
        return new Switching(
                device, entries.quantity("continuous-current"), entries.quantity("on-resistance"),
                device == Device.RELAY ? coil(entries) : null,
                device == Device.SOLID_STATE ? entries.quantity(SwitchFigures.triggerField().key()) : null, entries.quantity("hours-on"),
                entries.quantity(SwitchFigures.triggerFuseField().key()),
                Insulation.of(entries.option("trigger-insulation")), ConductorKind.of(entries.option("trigger-conductor")),
                entries.quantity("trigger-size"), entries.quantity("trigger-route-length"), entries.quantity("junction-to-air"),
                entries.quantity("switch-ambient"), entries.quantity("junction-limit"), entries.quantity("trigger-ampacity"), part.figuresFrom(),
                device == Device.MANUAL ? 0 : triggerOhms(entries));
    }

    private static Quantity coil(Entries entries) {
        Quantity resistance = entries.quantity("coil-resistance");
        Quantity power = entries.quantity("coil-power");
        if ((resistance == null) == (power == null)) {
            throw new Refusal(
                    "coil-resistance",
                    resistance == null
                            ? "Resistance of the coil is empty, and so is its power: enter one of the two from the data sheet"
                            : "Resistance of the coil and Power of the coil are both entered: one is enough, so empty the other");
        }
        return resistance != null ? resistance : SwitchFigures.coilResistance(power, entries.quantity("rated-voltage"));
    }

    /** Whether it needs a trigger: all but a switch by hand. */
    public boolean isTriggered() {
        return device != Device.MANUAL;
    }

    /** What its trigger wire may carry: two conductors, by Table 5 of 33 CFR, as careful as a wire nobody said more of. */
    public CarryingCapacity triggerCapacity() {
        return triggerAmpacity != null
                ? CarryingCapacity.bySheet(triggerSize, triggerAmpacity, figuresFrom)
                : CarryingCapacity.of(triggerSize, AmpacityRuleSet.BOAT, Surroundings.unsaid(triggerInsulation));
    }

    private static double triggerOhms(Entries entries) {
        try {
            Quantity perMetre =
                    ConductorFigures.perMetre(ConductorKind.of(entries.option("trigger-conductor")), entries.quantity("trigger-size"), COOL);
            return ConductorFigures.outAndBack(perMetre, entries.quantity("trigger-route-length")).base();
        } catch (Refusal refusal) {
            throw new Refusal("trigger-size", "Trigger wire: " + refusal.getMessage());
        }
    }

    /** What its trigger takes at a voltage, in amperes. */
    public double triggerAmperes(double volts) {
        return coil != null ? volts / coil.base() : triggerCurrent.base();
    }

    /** Not by its figures: printing a number the library's way costs the page more than all of this. */
    @Override
    public String toString() {
        return device.words();
    }

    @Override
    public double ohms() {
        return resistance.base();
    }

    @Override
    public double leastOhms() {
        return 0;
    }

    @Override
    public String inPartsList() {
        return device.words() + " for " + continuousCurrent.text();
    }

    @Override
    public String onLabel() {
        return "";
    }
}
