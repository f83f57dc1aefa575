package loomwright.circuit;

import loomwright.conductor.AmpacityRuleSet;
import loomwright.conductor.CarryingCapacity;
import loomwright.conductor.ConductorFigures;
import loomwright.conductor.ConductorKind;
import loomwright.conductor.Surroundings;
import loomwright.protection.ShortCircuitInsulation;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Entries;

/**
 * A run of two conductors, out and back.
 *
 * @param temperature what the conductors work at
 * @param rules the rule set on ampacity
 * @param around what decides the ampacity besides the size
 * @param insulation what stands the heat of a short circuit
 * @param sheathed whether it lies in a sheath or enclosure all the way
 * @param capacity what it may carry where it lies; always an answer, by a harder row if its own is not in the table
 * @param ohms its resistance out and back at the temperature it works at, in Ω
 * @param leastOhms the same with cold copper of the full area
 */
public record Conductor(
        ConductorKind kind, Quantity size, Quantity routeLength, Quantity temperature, AmpacityRuleSet rules, Surroundings around,
        ShortCircuitInsulation insulation, boolean sheathed, CarryingCapacity capacity, double ohms, double leastOhms)
        implements Figures {
    private static final Quantity NOMINAL = Quantity.of(12, Units.VOLT);

    /**
     * A run, as it was entered.
     *
     * @throws loomwright.worked.Refusal if the table of its kind has no such size
     */
    public static Conductor of(Part part) {
        Entries entries = part.entries();
        ConductorKind kind = ConductorKind.of(entries.option("conductor"));
        Quantity size = entries.quantity("size");
        Quantity route = entries.quantity("route-length");
        AmpacityRuleSet rules = AmpacityRuleSet.of(entries.option("rule-set"));
        Surroundings around = Surroundings.of(entries, NOMINAL);
        Quantity bySheet = entries.quantity("sheet-ampacity");
        Quantity temperature = entries.quantity("temperature");
        return new Conductor(
                kind, size, route, temperature, rules, around,
                ShortCircuitInsulation.of(entries.option("short-circuit-insulation")), entries.choice("sheath").equals("yes"),
                bySheet != null ? CarryingCapacity.bySheet(size, bySheet, part.figuresFrom()) : CarryingCapacity.of(ConductorFigures.copper(kind, size), rules, around),
                ConductorFigures.outAndBack(ConductorFigures.perMetre(kind, size, temperature), route).base(),
                ConductorFigures.outAndBack(ConductorFigures.leastPerMetre(kind, size, temperature), route).base());
    }

    /** Its area of copper. SAE gauge has less copper than the AWG that the tables list. */
    public Quantity copper() {
        return ConductorFigures.copper(kind, size);
    }

    /** What it is called in a list: {@code 2.5 mm², 4.2 m}. */
    public String words() {
        return size.text() + ", " + routeLength.text();
    }

    @Override
    public String inPartsList() {
        return "";
    }

    @Override
    public String onLabel() {
        return "";
    }

    /** Not by its figures: printing a number the library's way costs the page more than all of this. */
    @Override
    public String toString() {
        return words();
    }
}
