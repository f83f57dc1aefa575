package loomwright.conductor;

import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/** The figures of a conductor by its kind and size, for a whole circuit, where no single step is shown. */
public final class ConductorFigures {
    private ConductorFigures() {}

    /** The field that asks for the size. */
    public static QuantityField sizeField() {
        return ConductorFields.size();
    }

    /** The field that asks for the length one way. */
    public static QuantityField routeLengthField() {
        return DropFields.ROUTE_LENGTH;
    }

    /** The field that asks for the temperature the conductor works at. */
    public static QuantityField temperatureField() {
        return ConductorFields.temperature();
    }

    /** The fields of what decides the ampacity: the rule set first, then the surroundings. */
    public static List<Field> ampacityFields() {
        return List.of(
                AmpacityRuleSet.field(), Insulation.field(Insulation.values()), AmpacityFields.ENGINE_SPACE, AmpacityFields.AMBIENT,
                AmpacityFields.TOGETHER);
    }

    /**
     * The resistance of one metre at a temperature.
     *
     * @throws loomwright.worked.Refusal if the table of the kind has no such size
     */
    public static Quantity perMetre(ConductorKind kind, Quantity size, Quantity temperature) {
        if (kind.table() != null) {
            return ResistancePerMetre.of(kind, SizeRow.of(kind.table(), size, kind.sizesIn()), temperature);
        }
        Quantity at20 = ResistancePerMetre.BY_AREA.value(
                Values.of(Symbols.AREA, size.in(Units.SQUARE_MILLIMETRE)), Units.MILLIOHM_PER_METRE);
        Values values = Values.of(Symbols.PER_METRE_TABLE, at20)
                .with(Symbols.TEMPERATURE, temperature)
                .with(Symbols.TABLE_TEMPERATURE, kind.tableTemperature());
        return ResistancePerMetre.AT_TEMPERATURE.value(values, Units.MILLIOHM_PER_METRE);
    }

    /**
     * The least resistance of one metre to be reckoned with in a short circuit: copper of the full area of its size, at 20 °C or as cold as
     * it works. The tables of the standards give the highest resistance.
     */
    public static Quantity leastPerMetre(ConductorKind kind, Quantity size, Quantity temperature) {
        Quantity cold = Quantity.of(Math.min(20, temperature.in(Units.CELSIUS).value()), Units.CELSIUS);
        return perMetre(kind.givesArea() ? kind : ConductorKind.COPPER_BY_AREA, size, cold);
    }

    /** The area of copper of a size. SAE gauge has less copper than the AWG that tables of ampacity list. */
    public static Quantity copper(ConductorKind kind, Quantity size) {
        Row row = kind.givesArea() ? kind.table().find("size", size) : null;
        return row == null ? size : row.quantity("sae-cross-section");
    }

    /** The resistance of a run out and back. */
    public static Quantity outAndBack(Quantity perMetre, Quantity routeLength) {
        Quantity length = DropFormulas.CIRCUIT_LENGTH.value(Values.of(Symbols.ROUTE_LENGTH, routeLength), Units.METRE);
        Values values = Values.of(Symbols.PER_METRE, perMetre).with(Symbols.CIRCUIT_LENGTH, length);
        return DropFormulas.CIRCUIT_RESISTANCE.value(values, Units.MILLIOHM);
    }

    /** Where the resistance of a size comes from. */
    public static Source source(ConductorKind kind, Quantity size) {
        if (kind.table() == null) {
            return Source.of(Document.COMPUTED, "from the area");
        }
        return SizeRow.of(kind.table(), size, kind.sizesIn()).source();
    }

    /** The allowance of that key in the table of voltage drops, such as {@code abyc-main}. */
    public static Row allowance(String key) {
        return PublishedTables.voltageDropAllowance().row(key);
    }
}
