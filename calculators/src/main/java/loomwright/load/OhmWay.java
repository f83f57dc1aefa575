package loomwright.load;

import java.util.List;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;

/**
 * One way to find a quantity from two others.
 *
 * @param formula the formula
 * @param words the step in words
 * @param why why it holds
 */
record OhmWay(Formula formula, String words, String why) {
    /** The ways a working uses, in the order they are tried. One pass through them finds all four from any two. */
    static final List<OhmWay> IN_ORDER = List.of(
            new OhmWay(
                    OhmFormulas.CURRENT_FROM_VOLTAGE_AND_RESISTANCE, "Divide the voltage by the resistance",
                    "Ohm's law: each ohm asks for one volt to drive one ampere."),
            new OhmWay(
                    OhmFormulas.CURRENT_FROM_VOLTAGE_AND_POWER, "Divide the power by the voltage",
                    "Power is volts times amperes, so watts divided by volts leave the amperes."),
            new OhmWay(
                    OhmFormulas.CURRENT_FROM_RESISTANCE_AND_POWER, "Divide the power by the resistance and take the square root",
                    "Heat grows with the current times itself, so the way back is a square root."),
            new OhmWay(
                    OhmFormulas.VOLTAGE_FROM_CURRENT_AND_RESISTANCE, "Multiply the current by the resistance",
                    "Ohm's law: each ampere through each ohm takes one volt."),
            new OhmWay(
                    OhmFormulas.VOLTAGE_FROM_CURRENT_AND_POWER, "Divide the power by the current",
                    "Power is volts times amperes, so watts divided by amperes leave the volts."),
            new OhmWay(
                    OhmFormulas.POWER_FROM_VOLTAGE_AND_CURRENT, "Multiply the voltage by the current",
                    "One volt that drives one ampere delivers one watt."),
            new OhmWay(
                    OhmFormulas.RESISTANCE_FROM_VOLTAGE_AND_CURRENT, "Divide the voltage by the current",
                    "Resistance is the volts needed for each ampere."));

    /** The letters it needs. */
    List<Symbol> needs() {
        List<Symbol> symbols = formula.symbols();
        return symbols.subList(1, symbols.size());
    }
}
