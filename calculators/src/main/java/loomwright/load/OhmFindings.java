package loomwright.load;

import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Finding;
import loomwright.worked.QuantityField;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** What a fixed resistance does at the top of the supply window, worst for cable and part. */
final class OhmFindings {
    private OhmFindings() {}

    static void add(WorkingBuilder working, List<QuantityField> given, Values values) {
        boolean fixedResistance = given.contains(OhmFields.VOLTAGE) && given.contains(OhmFields.RESISTANCE);
        Quantity voltage = values.of(OhmSymbols.VOLTAGE);
        if (!fixedResistance || !SupplyWindow.holds(voltage)) {
            return;
        }
        boolean atTop = voltage.base() >= SupplyWindow.HIGHEST.base();
        Values top = Values.of(OhmSymbols.VOLTAGE, SupplyWindow.HIGHEST).with(OhmSymbols.RESISTANCE, values.of(OhmSymbols.RESISTANCE));
        Quantity current = OhmFormulas.CURRENT_FROM_VOLTAGE_AND_RESISTANCE.value(top, Units.AMPERE);
        Quantity power = OhmFormulas.POWER_FROM_VOLTAGE_AND_CURRENT.value(top.with(OhmSymbols.CURRENT, current), Units.WATT);
        String window = "A 12 V system moves between " + SupplyWindow.LOWEST.text() + " and " + SupplyWindow.HIGHEST.text() + ". ";
        if (atTop) {
            working.finding(new Finding(
                    Verdict.PASSED, window + "This is its upper end, where a fixed resistance draws most: " + current.text() + ".", current,
                    null, SupplyWindow.source(), ""));
        } else {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    window + "At its upper end the same resistance draws " + current.text() + " and turns " + power.text() + " into heat.",
                    current, null, SupplyWindow.source(), "Choose cable, switch and part for the upper end."));
        }
    }
}
