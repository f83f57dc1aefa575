package loomwright.protection;

import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.ChoiceField;
import loomwright.worked.Option;

/** The kinds of conductor and insulation whose k is printed. */
public enum ShortCircuitInsulation {
    PVC_70("pvc-70", "70 °C thermoplastic (PVC)"),
    THERMOPLASTIC_90("thermoplastic-90", "90 °C thermoplastic"),
    RUBBER_60("rubber-60", "60 °C rubber"),
    XLPE_90("xlpe-90", "90 °C thermosetting (XLPE, EPR)"),
    PROTECTIVE_PVC("protective-pvc", "Separate protective conductor, 70 °C thermoplastic, cold at the start"),
    PROTECTIVE_XLPE("protective-xlpe", "Separate protective conductor, 90 °C thermosetting, cold at the start");

    private final Option option;

    ShortCircuitInsulation(String key, String label) {
        this.option = new Option(key, label);
    }

    public static ChoiceField field() {
        Option[] options = new Option[values().length];
        for (ShortCircuitInsulation insulation : values()) {
            options[insulation.ordinal()] = insulation.option;
        }
        return ChoiceField.of(
                "insulation",
                "Insulation",
                "It decides how hot the copper may get. If you do not know it, take 90 °C thermoplastic: its k is the smallest here.",
                options);
    }

    public static ShortCircuitInsulation of(Option chosen) {
        for (ShortCircuitInsulation insulation : values()) {
            if (insulation.option.equals(chosen)) {
                return insulation;
            }
        }
        throw new IllegalArgumentException("no insulation " + chosen.key());
    }

    /** The printed row of its k. */
    public Row row() {
        return PublishedTables.kValues().find("case", option.key());
    }

    /** The insulation a reader would most easily mistake it for. */
    ShortCircuitInsulation mistaken() {
        return this == PVC_70 ? XLPE_90 : PVC_70;
    }
}
