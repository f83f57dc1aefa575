package loomwright.circuit;

import loomwright.quantity.Quantity;
import loomwright.worked.Entries;

/**
 * A source that charges the battery.
 *
 * @param current the largest current it gives
 * @param voltage the highest voltage it charges with, or null
 * @param ownDevice the rating of the device at its own end, or null
 * @param solarPower the rated power of the solar panel behind it, or null
 * @param hours how long it charges in a day; not for solar panels
 */
public record ChargeSource(
        SourceKind kind, Quantity current, Quantity voltage, Quantity ownDevice, Quantity solarPower, Quantity peakSunHours, Quantity hours)
        implements Figures {
    static ChargeSource of(Part part) {
        Entries entries = part.entries();
        SourceKind kind = SourceKind.CHOICES.of(entries.option("source-kind"));
        return new ChargeSource(
                kind, entries.quantity("charge-current"), entries.quantity("charge-voltage"), entries.quantity("device-at-source"),
                kind == SourceKind.SOLAR_CONTROLLER ? entries.quantity("panel-power") : null,
                entries.quantity("peak-sun-hours"), entries.quantity("hours-charging"));
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
        return kind.label() + ", up to " + current.text();
    }

    @Override
    public String onLabel() {
        return current.text();
    }
}
