package loomwright.load;

import loomwright.quantity.Quantity;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.ChoiceField;
import loomwright.worked.Option;

/** The cable between a USB port and the device, by what it is marked for. */
enum UsbCable {
    PLAIN("3-a", "3 A, without marker chip", "pd-3-a"),
    MARKED("5-a", "5 A, with marker chip", "pd-5-a"),
    EXTENDED("5-a-50-v", "5 A and 50 V, for the extended range", "epr-48-v");

    private final String key;
    private final String label;
    private final String row;

    UsbCable(String key, String label, String row) {
        this.key = key;
        this.label = label;
        this.row = row;
    }

    static ChoiceField field(String fieldKey, String fieldLabel, String help) {
        return ChoiceField.of(fieldKey, fieldLabel, help, PLAIN.option(), MARKED.option(), EXTENDED.option());
    }

    static UsbCable of(Option chosen) {
        for (UsbCable cable : values()) {
            if (cable.key.equals(chosen.key())) {
                return cable;
            }
        }
        throw new IllegalArgumentException("no cable for " + chosen.key());
    }

    String label() {
        return label;
    }

    /** The row with the most it carries. */
    Row row() {
        return PublishedTables.usbPower().row(row);
    }

    /** The most watts Power Delivery settles through it. */
    Quantity most() {
        return row().quantity("power");
    }

    private Option option() {
        return new Option(key, label);
    }
}
