package loomwright.units;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;
import loomwright.worked.Result;
import loomwright.worked.Working;

/** A working with its results in the units of a reader. Steps and checks stay as they were worked out. */
public final class Shown {
    private Shown() {}

    /** What a field holds, as it opens for a reader: converted where the field offers the unit. A size stays what its cable is marked with. */
    public static String text(UnitSystem system, Field field, String text) {
        Quantity held = field instanceof QuantityField ? QuantityText.read(text, null).quantity() : null;
        if (held == null || held.dimension().equals(Dimension.AREA)) {
            return text;
        }
        Unit wanted = system.inPlaceOf(held.unit(), ((QuantityField) field).units());
        return wanted == held.unit() ? text : Converted.text(held, wanted);
    }

    /** A field as it opens for a reader: one that holds nothing yet asks in the reader's unit first. */
    public static Field field(UnitSystem system, Field field, String text) {
        if (!(field instanceof QuantityField quantity) || !text.isBlank()) {
            return field;
        }
        Unit first = quantity.units().get(0);
        Unit wanted = system.inPlaceOf(first, quantity.units());
        return wanted == first ? field : quantity.beginning(wanted);
    }

    /** The same working if its results are in these units already. A chosen size stays what it is sold as. */
    public static Working in(UnitSystem system, Working working) {
        List<Result> results = new ArrayList<>();
        boolean same = true;
        for (Result result : working.results()) {
            Quantity quantity = result.quantity();
            boolean size = quantity.dimension().equals(Dimension.AREA);
            Quantity shown = size ? quantity : quantity.in(system.inPlaceOf(quantity.unit()));
            same &= shown == quantity;
            results.add(new Result(result.output(), shown));
        }
        return same ? working : new Working(
                working.description(), working.entries(), working.steps(), List.copyOf(results), working.findings(), working.slips(),
                working.nextQuestions());
    }
}
