package loomwright.load;

import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;

/** What stands between the supply and a device, each kind with the least efficiency that is planned or published for it. */
public enum Converter implements Choice {
    /** Taken as that of a USB outlet; as none where the load does not hold its power, or its label gives a voltage of the supply. */
    NOT_KNOWN("not-known", "I do not know", "vehicle-usb-outlet"),
    USB_OUTLET("usb-outlet", "USB outlet or charger for vehicles", "vehicle-usb-outlet"),
    MODULE("module", "small adjustable module", "hobby-module"),
    SYNCHRONOUS("synchronous", "synchronous step-down converter, 12 V to 5 V", "synchronous-full-load"),
    NONE("none", "none: the device runs straight from the supply", "");

    private static final Choices<Converter> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final String row;

    Converter(String key, String label, String row) {
        this.key = key;
        this.label = label;
        this.row = row;
    }

    /** The field {@code converter}. */
    public static ChoiceField field() {
        return CHOICES.field(
                "converter", "Converter before the device",
                "USB ports, laptop chargers and anything that is not for 12 V have one. It counts only while no efficiency is entered.");
    }

    public static Converter named(String key) {
        return CHOICES.named(key);
    }

    /** The row with its efficiency in the table of converters; null if it passes all on. */
    public Row row() {
        return row.isEmpty() ? null : PublishedTables.dcDcEfficiency().row(row);
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }
}
