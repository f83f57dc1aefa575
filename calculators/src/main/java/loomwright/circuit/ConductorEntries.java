package loomwright.circuit;

import java.util.ArrayList;
import java.util.List;
import loomwright.conductor.CapacitySteps;
import loomwright.conductor.ConductorFigures;
import loomwright.conductor.ConductorKind;
import loomwright.protection.ShortCircuitInsulation;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.Option;

/** What is asked for a conductor run, out and back. */
final class ConductorEntries {
    static final List<Field> FIELDS = fields();

    private ConductorEntries() {}

    private static List<Field> fields() {
        List<Field> fields = new ArrayList<>();
        fields.add(ConductorKind.field());
        fields.add(ConductorFigures.sizeField().usually("2.5 mm²"));
        fields.add(ConductorFigures.routeLengthField().usually("1 m"));
        // Warmer than the 20 °C of the single calculators: a whole circuit is looked at in use.
        fields.add(ConductorFigures.temperatureField().usually("40 °C"));
        fields.addAll(ConductorFigures.ampacityFields());
        ChoiceField insulation = ShortCircuitInsulation.field();
        // Its k is the smallest, so it stands in for an insulation that is not known.
        fields.add(new ChoiceField(
                "short-circuit-insulation", "Insulation, for the heat of a short circuit", insulation.help(), insulation.options(),
                "thermoplastic-90"));
        fields.add(CapacitySteps.sheetField());
        fields.add(ChoiceField.of(
                "sheath", "In a sheath or enclosure",
                "A conduit, loom or sheath over its whole length. It counts before the first device only: such a piece may be longer.",
                new Option("no", "no"), new Option("yes", "yes, all the way")));
        fields.add(FiguresFrom.field());
        return List.copyOf(fields);
    }
}
