package loomwright.load;

import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;
import loomwright.worked.Option;

/** What a USB port offers: a fixed voltage and current by its kind, or as many watts as Power Delivery settles. */
enum UsbLevel implements Choice {
    NONE("none", "no port", ""),
    USB_2("usb-2", "USB 2.0, 0.5 A", "usb-2-host"),
    USB_3("usb-3", "USB 3.0 or 3.1, 0.9 A", "usb-3-host"),
    BATTERY_CHARGING("bc-1.2", "charging port, Battery Charging 1.2, 1.5 A", "bc-1-2"),
    TYPE_C_MEDIUM("type-c-1.5", "USB-C, 1.5 A", "type-c-medium"),
    TYPE_C_HIGH("type-c-3", "USB-C, 3 A", "type-c-high"),
    POWER_DELIVERY("pd", "USB-C with Power Delivery", "");

    private static final Choices<UsbLevel> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final String row;

    UsbLevel(String key, String label, String row) {
        this.key = key;
        this.label = label;
        this.row = row;
    }

    static ChoiceField field(String fieldKey, String fieldLabel, String help) {
        return CHOICES.field(fieldKey, fieldLabel, help);
    }

    static UsbLevel of(Option chosen) {
        return CHOICES.of(chosen);
    }

    /** The row with its voltage and current; of a fixed level only. */
    Row row() {
        return PublishedTables.usbPower().row(row);
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
