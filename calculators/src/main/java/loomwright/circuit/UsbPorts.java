package loomwright.circuit;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Entries;

/**
 * What the USB ports of a load give, and what their converter takes for it.
 *
 * <p>power taken = power at the ports ÷ efficiency.
 *
 * @param power at the ports, all together
 * @param limit what the ports share, or null if no one said
 * @param efficiency of the converter
 * @param assumed whether nobody gave the efficiency, so that the least of the planning values stands in
 * @source efficiency for planning: table dc-dc-efficiency, USB outlet for vehicles (common practice)
 */
public record UsbPorts(Quantity power, Quantity limit, Quantity efficiency, boolean assumed) {
    /** The ports entered, or null. */
    static UsbPorts of(Entries entries) {
        Quantity power = entries.quantity(LoadEntries.PORTS_POWER.key());
        if (power == null) {
            return null;
        }
        Quantity typed = entries.quantity("converter-efficiency");
        Quantity efficiency = typed == null ? planning().quantity("efficiency") : typed;
        return new UsbPorts(power, entries.quantity("ports-limit"), efficiency, typed == null);
    }

    /** What the converter takes. */
    public Quantity input() {
        return Quantity.of(power.base() / efficiency.base(), Units.WATT);
    }

    /** Where its efficiency comes from. */
    public Source source() {
        return assumed ? planning().source() : Source.of(Document.COMPUTED, "held against the figure you entered");
    }

    /** The most that print says of a converter. */
    public static Row best() {
        return PublishedTables.dcDcEfficiency().row("synchronous-half-load");
    }

    private static Row planning() {
        return PublishedTables.dcDcEfficiency().row("vehicle-usb-outlet");
    }
}
