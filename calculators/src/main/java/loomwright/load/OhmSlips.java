package loomwright.load;

import static loomwright.load.OhmSymbols.AMPERES;
import static loomwright.load.OhmSymbols.CURRENT;
import static loomwright.load.OhmSymbols.OHMS;
import static loomwright.load.OhmSymbols.POWER;
import static loomwright.load.OhmSymbols.RESISTANCE;
import static loomwright.load.OhmSymbols.VOLTAGE;
import static loomwright.load.OhmSymbols.VOLTS;
import static loomwright.load.OhmSymbols.WATTS;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Entries;
import loomwright.worked.NamedFormula;
import loomwright.worked.QuantityField;
import loomwright.worked.WorkingBuilder;

/** The known mistakes with volts, amperes, ohms and watts. Most of them pay no heed to units, so they work on bare numbers. */
final class OhmSlips {
    private static final Formula THOUSAND_AMPERES = new Formula(CURRENT, Expression.number(1000).times(CURRENT));

    private static final List<OhmMistake> MISTAKES = List.of(
            OhmMistake.multiplied("voltage resistance", VOLTS.times(OHMS), CURRENT),
            OhmMistake.turnedOver("voltage resistance", OHMS.over(VOLTS), CURRENT),
            OhmMistake.squareForgotten("voltage resistance", VOLTS.over(OHMS), POWER, "Volts divided by ohms are the amperes."),
            OhmMistake.multiplied("voltage resistance", VOLTS.times(OHMS), POWER),
            OhmMistake.multiplied("voltage power", VOLTS.times(WATTS), CURRENT),
            OhmMistake.turnedOver("voltage power", VOLTS.over(WATTS), CURRENT),
            OhmMistake.squareForgotten("voltage power", VOLTS.over(WATTS), RESISTANCE,
                    "The volts count twice: volts times volts divided by watts."),
            OhmMistake.multiplied("voltage current", VOLTS.times(AMPERES), RESISTANCE),
            OhmMistake.turnedOver("voltage current", AMPERES.over(VOLTS), RESISTANCE),
            OhmMistake.divided("voltage current", VOLTS.over(AMPERES), POWER, "Volts divided by amperes are the ohms."),
            OhmMistake.divided("current resistance", AMPERES.over(OHMS), VOLTAGE, "Each ampere through each ohm takes one volt."),
            OhmMistake.dividedTheOtherWay("current resistance", OHMS.over(AMPERES), VOLTAGE,
                    "Each ampere through each ohm takes one volt."),
            OhmMistake.squareForgotten("current resistance", AMPERES.times(OHMS), POWER, "Amperes times ohms are the volts."),
            OhmMistake.multiplied("current power", AMPERES.times(WATTS), VOLTAGE),
            OhmMistake.turnedOver("current power", AMPERES.over(WATTS), VOLTAGE),
            OhmMistake.squareForgotten("current power", WATTS.over(AMPERES), RESISTANCE, "Watts divided by amperes are the volts."),
            OhmMistake.rootForgotten("resistance power", WATTS.over(OHMS), CURRENT),
            OhmMistake.rootForgotten("resistance power", WATTS.times(OHMS), VOLTAGE));

    private OhmSlips() {}

    static void add(WorkingBuilder working, Entries entries, List<QuantityField> given, Values values) {
        String pair = given.get(0).key() + " " + given.get(1).key();
        for (OhmMistake mistake : MISTAKES) {
            if (mistake.pair().equals(pair)) {
                working.slip(
                        mistake.key(), mistake.subject().meaning(), mistake.name(), mistake.words(), mistake.formula(),
                        numbers(mistake.formula(), values));
            }
        }
        if (!given.contains(OhmFields.CURRENT)) {
            working.slip(
                    "milliamperes-as-amperes", "current", "Milliamperes written as amperes",
                    "1000 mA make 1 A: write the unit beside the number.", THOUSAND_AMPERES, Values.of(CURRENT, values.of(CURRENT)));
        } else if (entries.quantity("current").unit() == Units.MILLIAMPERE) {
            addMisreadCurrent(working, given, values.with(CURRENT, Quantity.of(entries.quantity("current").value(), Units.AMPERE)));
        }
    }

    /** The number of milliamperes put in as if it were amperes. */
    private static void addMisreadCurrent(WorkingBuilder working, List<QuantityField> given, Values misread) {
        for (NamedFormula named : OhmFormulas.NAMED) {
            List<Symbol> letters = named.formula().symbols();
            String result = letters.get(0).meaning();
            boolean fromGiven = letters.contains(CURRENT) && letters.size() == 3;
            for (Symbol letter : letters.subList(1, letters.size())) {
                fromGiven &= isGiven(given, letter);
            }
            if (fromGiven) {
                working.slip(
                        "milliamperes-as-amperes-" + result, result, "Milliamperes taken as amperes",
                        "1000 mA make 1 A: turn them into amperes first.", named.formula(), misread);
            }
        }
    }

    private static boolean isGiven(List<QuantityField> given, Symbol letter) {
        for (QuantityField field : given) {
            if (field.key().equals(letter.meaning())) {
                return true;
            }
        }
        return false;
    }

    /** The bare numbers of the letters a formula uses. */
    private static Values numbers(Formula formula, Values values) {
        Values numbers = Values.none();
        for (Symbol letter : formula.symbols().subList(1, formula.symbols().size())) {
            numbers = numbers.with(letter, Quantity.number(bare(letter, values)));
        }
        return numbers;
    }

    private static double bare(Symbol letter, Values values) {
        if (letter == VOLTS) {
            return values.of(VOLTAGE).base();
        }
        if (letter == AMPERES) {
            return values.of(CURRENT).base();
        }
        return letter == OHMS ? values.of(RESISTANCE).base() : values.of(POWER).base();
    }
}
