package loomwright.protection;

import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;
import loomwright.worked.Option;

/** The kinds of conductor and insulation whose k is printed. */
public enum ShortCircuitInsulation implements Choice {
    PVC_70("pvc-70", "70 °C thermoplastic (PVC)"),
    THERMOPLASTIC_90("thermoplastic-90", "90 °C thermoplastic"),
    RUBBER_60("rubber-60", "60 °C rubber"),
    XLPE_90("xlpe-90", "90 °C thermosetting (XLPE, EPR)"),
    PROTECTIVE_PVC("protective-pvc", "Separate protective conductor, 70 °C thermoplastic, cold at the start"),
    PROTECTIVE_XLPE("protective-xlpe", "Separate protective conductor, 90 °C thermosetting, cold at the start");

    static final Choices<ShortCircuitInsulation> CHOICES = Choices.among(values());

    private final String key;
    private final String label;

    ShortCircuitInsulation(String key, String label) {
        this.key = key;
        this.label = label;
    }

    public static ChoiceField field() {
        return CHOICES.field(
                "insulation",
                "Insulation",
                        "It decides how hot the copper may get. If you do not know it, take 90 °C thermoplastic: it begins hottest, so it fails first.")
                .usually(THERMOPLASTIC_90.key);
    }

    public static ShortCircuitInsulation of(Option chosen) {
        return CHOICES.of(chosen);
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }

    /** The printed row of its k. */
    public Row row() {
        return PublishedTables.kValues().row(key);
    }

    /** The insulation a reader would most easily mistake it for. */
    ShortCircuitInsulation mistaken() {
        return this == PVC_70 ? XLPE_90 : PVC_70;
    }
}
