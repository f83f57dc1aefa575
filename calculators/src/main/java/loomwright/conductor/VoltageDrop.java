package loomwright.conductor;

import java.util.HashMap;
import java.util.Map;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * Voltage drop along the outgoing and return conductors of a two-wire direct-current circuit.
 *
 * <p>drop = current × resistance of one metre × 2 × route length; or one of the handbook formulas, which put the resistivity of copper
 * into a constant. Joints, fuse-links and switches are not counted.
 *
 * @source Ohm's law; table of the kind chosen; constants from the table copper-constants
 */
public final class VoltageDrop implements Calculator {
    @Override
    public Description description() {
        return DropFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Run run = run(entries, working);
        switch (DropMethod.of(entries.option("method"))) {
            case TABLE, GIVEN_RESISTANCE -> byResistance(entries, working, run);
            case CIRCULAR_MIL -> byFormula(
                    entries, working, run, DropFormulas.CIRCULAR_MIL, DropFormulas.MIL_FOOT, Units.CIRCULAR_MIL, Units.FEET);
            case CONDUCTIVITY_56 -> byFormula(
                    entries, working, run, DropFormulas.BY_CONDUCTIVITY_56, DropFormulas.CONDUCTIVITY_56, Units.SQUARE_MILLIMETRE,
                    Units.METRE);
            case RESISTIVITY_0_0164 -> byFormula(
                    entries, working, run, DropFormulas.RESISTIVITY_0_0164, DropFormulas.METRIC, Units.SQUARE_MILLIMETRE, Units.METRE);
        }
    }

    /** The current and the two lengths of a run. */
    private record Run(Quantity current, Quantity oneWay, Quantity outAndBack) {}

    private static Run run(Entries entries, WorkingBuilder working) {
        Quantity current =
                working.convert("Turn the current into amperes", entries.quantity("current"), Units.AMPERE, "Volts are amperes times ohms.");
        Quantity entered = entries.quantity("route-length");
        if (entries.choice("length-counts").equals("out-and-back")) {
            return new Run(current, Quantity.of(entered.value() / 2, entered.unit()), entered);
        }
        Quantity both = working.compute(
                "Count the way out and the way back", DropFormulas.CIRCUIT_LENGTH, Values.of(Symbols.ROUTE_LENGTH, entered),
                entered.unit(), "The current comes back through a second conductor, which loses as much again.");
        return new Run(current, entered, both);
    }

    private static void byResistance(Entries entries, WorkingBuilder working, Run run) {
        Quantity perMetre = perMetre(entries, working);
        Quantity metres =
                working.convert("Turn the length into metres", run.outAndBack, Units.METRE, "The resistance is known for one metre.");
        Quantity resistance = working.compute(
                "Multiply by the length", DropFormulas.CIRCUIT_RESISTANCE,
                Values.of(Symbols.PER_METRE, perMetre).with(Symbols.CIRCUIT_LENGTH, metres), Units.MILLIOHM,
                "Each metre adds the same resistance again.");
        Quantity drop = working.compute(
                "Multiply by the current", DropFormulas.DROP,
                Values.of(Symbols.CURRENT, run.current).with(Symbols.CIRCUIT_RESISTANCE, resistance), Units.VOLT,
                "Ohm's law: the current through the resistance takes this much voltage.");
        finish(entries, working, run, drop, perMetre, resistance);
    }

    private static Quantity perMetre(Entries entries, WorkingBuilder working) {
        if (DropMethod.of(entries.option("method")) == DropMethod.GIVEN_RESISTANCE) {
            Quantity given = entries.required(DropFields.RESISTANCE_PER_LENGTH);
            return working.convert(
                    "Turn the resistance into milliohms per metre", given, Units.MILLIOHM_PER_METRE, "The length will be in metres.");
        }
        ConductorKind kind = ConductorKind.of(entries.option("conductor"));
        return ResistancePerMetre.at(working, kind, size(entries), entries.quantity("temperature"));
    }

    private static void byFormula(
            Entries entries, WorkingBuilder working, Run run, Formula formula, Row constant, Unit areaUnit, Unit lengthUnit) {
        Quantity area = working.convert(
                "Turn the size into " + areaUnit.spoken(), trueArea(entries, working), areaUnit, "The constant is made for this unit.");
        Symbol lengthSymbol = formula.symbols().contains(Symbols.ROUTE_LENGTH) ? Symbols.ROUTE_LENGTH : Symbols.CIRCUIT_LENGTH;
        Quantity length = working.convert(
                "Turn the length into " + lengthUnit.spoken(), lengthSymbol == Symbols.ROUTE_LENGTH ? run.oneWay : run.outAndBack,
                lengthUnit, "The constant is made for this unit.");
        Values values = Values.of(Symbols.CURRENT, run.current).with(lengthSymbol, length).with(Symbols.AREA, area);
        Quantity drop = working.compute(
                "Put the numbers into the handbook formula", formula, values, Units.VOLT,
                "The constant holds the resistivity of copper at about " + constant.quantity("implied-temperature").text() + ".",
                constant.source());
        Quantity resistance = working.compute(
                "Find the resistance behind it", DropFormulas.RESISTANCE_FROM_DROP,
                Values.of(Symbols.DROP, drop).with(Symbols.CURRENT, run.current), Units.MILLIOHM,
                "Ohm's law the other way round.");
        Quantity perMetre = Quantity.ofBase(resistance.base() / run.outAndBack.base(), Units.MILLIOHM_PER_METRE);
        finish(entries, working, run, drop, perMetre, resistance);
    }

    /** The copper area of the size; SAE gauge numbers stand for less copper than AWG. */
    private static Quantity trueArea(Entries entries, WorkingBuilder working) {
        ConductorKind kind = ConductorKind.of(entries.option("conductor"));
        Quantity size = size(entries);
        if (kind != ConductorKind.SAE_BY_AREA) {
            return size;
        }
        return working.lookUp(
                "Read the copper area of the SAE gauge from the table", Symbols.AREA, SizeRow.of(kind.table(), size, kind.sizesIn()),
                "sae-area", "An SAE gauge number stands for less copper than the same AWG number.");
    }

    private static Quantity size(Entries entries) {
        Quantity size = entries.quantity("size");
        if (size == null) {
            throw new Refusal("size", "Size of conductor is empty: enter a size such as 2.5 mm² or 14 AWG");
        }
        return size;
    }

    private static void finish(
            Entries entries, WorkingBuilder working, Run run, Quantity drop, Quantity perMetre, Quantity resistance) {
        Quantity supply = entries.quantity("supply-voltage");
        Values values = Values.of(Symbols.DROP, drop).with(Symbols.SUPPLY_VOLTAGE, supply).with(Symbols.CURRENT, run.current);
        Quantity share = working.compute(
                "See what share of the supply that is", DropFormulas.SHARE, values, Units.PERCENT,
                "The limits of the rule sets are shares of the supply voltage.");
        if (drop.base() >= supply.base()) {
            throw new Refusal(
                    "current",
                    "Design current cannot flow here: the conductors alone would take " + drop.text() + " of " + supply.text()
                            + ". Take a thicker conductor, a shorter route or a smaller current");
        }
        Quantity atLoad = working.compute(
                "Take the drop from the supply voltage", DropFormulas.LOAD_VOLTAGE, values, Units.VOLT,
                "What is lost on the way is missing at the load.");
        Quantity lost = working.compute(
                "Find the heat in the conductors", DropFormulas.POWER_LOST, values, Units.WATT,
                "Volts lost times amperes are watts, and they warm the cable.");
        working.result("drop", drop);
        working.result("drop-percent", share);
        working.result("voltage-at-load", atLoad);
        working.result("power-lost", lost);
        working.result("circuit-length", run.outAndBack);
        working.result("resistance-per-metre", perMetre);
        working.result("circuit-resistance", resistance);
        DropFindings.add(working, entries, drop, supply);
        DropSlips.add(working, entries, run.current, run.outAndBack, perMetre, values);
        working.next("fuse-choice", CarryingCapacity.FUSE_QUESTION, carried(entries));
    }

    /** SAE gauge is carried on by its area, so that no one reads its number as AWG. */
    private static Map<String, String> carried(Entries entries) {
        Map<String, String> carried = new HashMap<>();
        carried.put("design-current", entries.quantity("current").text());
        if (entries.has("size")) {
            Quantity size = entries.quantity("size");
            ConductorKind kind = ConductorKind.of(entries.option("conductor"));
            Row row = kind == ConductorKind.SAE_BY_AREA ? kind.table().find("size", size) : null;
            carried.put("size", row == null ? size.text() : row.quantity("sae-area").text());
        }
        return carried;
    }
}
