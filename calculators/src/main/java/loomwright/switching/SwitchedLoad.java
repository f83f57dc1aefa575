package loomwright.switching;

import loomwright.quantity.Quantity;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;

/** What a switch has to make and break: a cold lamp and a starting motor take many times their running current. The hardest stands first. */
public enum SwitchedLoad implements Choice {
    LAMP("lamp", "Filament lamp, or not known"),
    MOTOR("motor", "Motor: pump, fan, fridge"),
    INDUCTIVE("inductive", "Coil: relay, solenoid"),
    RESISTIVE("resistive", "Heater, LED without a converter"),
    CAPACITIVE("capacitive", "Converter, charger or inverter: capacitors at its input");

    public static final Choices<SwitchedLoad> CHOICES = Choices.among(values());
    /** Above this a 12 V system is none, and the rows for 28 V count. */
    private static final double MOST_VOLTS_OF_12 = 16;

    private final String key;
    private final String label;

    SwitchedLoad(String key, String label) {
        this.key = key;
        this.label = label;
    }

    /** The field that asks what is switched; without an answer it is taken as the hardest. */
    public static ChoiceField field() {
        return CHOICES.field("switched-load", "What is switched", "A cold filament or a starting motor takes many times its running current.");
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }

    /** The printed row of its factor at a system voltage; null if none is in print. */
    Row row(Quantity highestVoltage) {
        String system = highestVoltage.base() > MOST_VOLTS_OF_12 ? "28" : "12";
        return PublishedTables.switchDerating().find("case", system + "-v-" + key);
    }
}
