package loomwright.load;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.QuantityField;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * Voltage, current, resistance and power of one part: any two give the rest.
 *
 * <p>U = I × R and P = U × I. Holds for steady direct current and the resistance the part has while it works.
 *
 * @source Ohm's law; the definition of power
 */
public final class OhmAndPower implements Calculator {
    private static final List<Symbol> LETTERS =
            List.of(OhmSymbols.VOLTAGE, OhmSymbols.CURRENT, OhmSymbols.RESISTANCE, OhmSymbols.POWER);

    @Override
    public Description description() {
        return OhmFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        List<QuantityField> given = given(entries);
        Values values = Values.none();
        List<Symbol> known = new ArrayList<>();
        for (QuantityField field : given) {
            Symbol letter = letter(field);
            Quantity converted = working.convert(
                    "Turn the " + letter.meaning() + " into " + field.units().get(0).spoken(), entries.quantity(field.key()),
                    field.units().get(0), "Volts, amperes, ohms and watts fit together without a factor; their thousandths do not.");
            values = values.with(letter, converted);
            known.add(letter);
        }
        for (OhmWay way : OhmWay.IN_ORDER) {
            Symbol wanted = way.formula().subject();
            if (!known.contains(wanted) && known.containsAll(way.needs())) {
                Quantity found = way.formula().value(values, field(wanted).units().get(0));
                refuseBeyondLimits(given, entries, wanted, found);
                values = values.with(wanted, working.compute(way.words(), way.formula(), values, found.unit(), way.why()));
                known.add(wanted);
            }
        }
        for (Symbol letter : LETTERS) {
            working.result(field(letter).key(), values.of(letter));
        }
        OhmFindings.add(working, given, values);
        OhmSlips.add(working, entries, given, values);
        addNext(working, values);
    }

    private static List<QuantityField> given(Entries entries) {
        List<QuantityField> given = new ArrayList<>();
        List<QuantityField> empty = new ArrayList<>();
        for (QuantityField field : OhmFields.ALL) {
            (entries.has(field.key()) ? given : empty).add(field);
        }
        if (given.isEmpty()) {
            throw new Refusal("voltage", "Voltage, Current, Resistance and Power are all empty: enter two of them");
        }
        if (given.size() == 1) {
            throw new Refusal(
                    empty.get(0).key(), "Only " + labels(given, "and") + " is entered: enter one of " + labels(empty, "or") + " as well");
        }
        if (given.size() > 2) {
            throw new Refusal(
                    given.get(given.size() - 1).key(),
                    labels(given, "and") + " are entered: two are enough and give the rest, so empty the others");
        }
        return given;
    }

    private static String labels(List<QuantityField> fields, String last) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < fields.size(); i++) {
            text.append(i == 0 ? "" : i < fields.size() - 1 ? ", " : " " + last + " ").append(fields.get(i).label());
        }
        return text.toString();
    }

    /** Two entries may each be possible and yet not together: mostly a wrong unit. */
    private static void refuseBeyondLimits(List<QuantityField> given, Entries entries, Symbol wanted, Quantity found) {
        QuantityField field = field(wanted);
        if (!field.limits().get(0).hold(found)) {
            boolean above = found.base() > field.limits().get(0).greatest().base();
            Quantity limit = above ? field.limits().get(0).greatest() : field.limits().get(0).least();
            throw new Refusal(
                    given.get(1).key(),
                    given.get(0).label() + " of " + entries.quantity(given.get(0).key()).text() + " and " + given.get(1).label() + " of "
                            + entries.quantity(given.get(1).key()).text() + " do not go together: the " + wanted.meaning() + " would be "
                            + (above ? "above " : "below ") + limit.text() + ". Look at the units of both");
        }
    }

    private static void addNext(WorkingBuilder working, Values values) {
        Quantity current = values.of(OhmSymbols.CURRENT);
        if (current.value() >= 0.001 && current.value() <= 1000) {
            working.next("voltage-drop", "What voltage does a cable lose at this current?", "current", current.text());
        }
        Quantity power = values.of(OhmSymbols.POWER);
        Quantity voltage = values.of(OhmSymbols.VOLTAGE);
        if (power.value() >= 0.01 && power.value() <= 10_000 && SupplyWindow.holds(voltage)) {
            working.next(
                    "device-current", "What does it draw when the battery is low, or being charged?",
                    "power", power.in(Units.WATT).text(), "supply-voltage", voltage.text());
        }
    }

    private static Symbol letter(QuantityField field) {
        return LETTERS.get(OhmFields.ALL.indexOf(field));
    }

    private static QuantityField field(Symbol letter) {
        return OhmFields.ALL.get(LETTERS.indexOf(letter));
    }
}
