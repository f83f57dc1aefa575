package loomwright.load;

import loomwright.quantity.Quantity;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;
import loomwright.worked.Option;

/** The cable between a USB port and the device, by what it is marked for. */
enum UsbCable implements Choice {
    PLAIN("3-a", "3 A, without marker chip", "pd-3-a"),
    MARKED("5-a", "5 A, with marker chip", "pd-5-a"),
    EXTENDED("5-a-50-v", "5 A and 50 V, for the extended range", "epr-48-v");

    private static final Choices<UsbCable> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final String row;

    UsbCable(String key, String label, String row) {
        this.key = key;
        this.label = label;
        this.row = row;
    }

    static ChoiceField field(String fieldKey, String fieldLabel, String help) {
        return CHOICES.field(fieldKey, fieldLabel, help);
    }

    static UsbCable of(Option chosen) {
        return CHOICES.of(chosen);
    }

    /** The row with the most it carries. */
    Row row() {
        return PublishedTables.usbPower().row(row);
    }

    /** The most watts Power Delivery settles through it. */
    Quantity most() {
        return row().quantity("power");
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
