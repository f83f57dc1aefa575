package loomwright.protection;

import static loomwright.protection.FusingFormulas.AMBIENT;
import static loomwright.protection.FusingFormulas.AREA;
import static loomwright.protection.FusingFormulas.CURRENT;
import static loomwright.protection.FusingFormulas.DIAMETER;
import static loomwright.protection.FusingFormulas.MELTING;
import static loomwright.protection.FusingFormulas.TIME;

import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/**
 * The current that melts a copper wire, for teaching only.
 *
 * <p>Preece: I = 10244 d^1.5, d in inches, without a time. Onderdonk: I = A √(log10((θ_m − θ_a)/(234 + θ_a) + 1)/(33 t)), A in
 * circular mils, for short times in which no heat is lost. Neither says what a conductor may carry.
 *
 * @source D. Brooks, Onderdonk's and Preece's equations
 */
public final class FusingCurrent implements Calculator {
    private static final QuantityField WIRE_SIZE = QuantityField.of(
                    "size", "Size of the wire", "One solid copper wire: its area, its gauge number or its diameter.", 0.005, 150,
                    Units.SQUARE_MILLIMETRE, Units.AWG, Units.CIRCULAR_MIL)
            .orElse(0.08, 13.8, Units.MILLIMETRE, Units.INCHES);

    private static final QuantityField DURATION =
            QuantityField.of(
                            "time", "Time until it melts", "For Onderdonk's equation, which holds for short times.", 0.001, 60,
                            Units.SECOND, Units.MILLISECOND)
                    .usually("5 s");

    private static final QuantityField AMBIENT_FIELD = QuantityField.of(
                    "ambient", "Temperature of the wire at the start", "Before the current flows.", -40, 200, Units.CELSIUS,
                    Units.FAHRENHEIT)
            .usually("25 °C");

    private static final QuantityField GIVEN_CURRENT = QuantityField.of(
                    "current", "Current", "If you enter it, the time to melt is found as well.", 0.1, 100_000, Units.AMPERE,
                    Units.KILOAMPERE)
            .optional();

    private static final Description DESCRIPTION = new Description(
            "fusing-current",
            "What melts a copper wire",
            "Why does a wire act as a fuse, and why is that no rule for choosing one?",
            List.of(
                    "For teaching only. Insulation is ruined far below the melting of copper, so nothing here says what a conductor may "
                            + "carry.",
                    "One solid copper wire in free air.",
                    "Preece knows no time; Onderdonk takes it that no heat is lost, so it holds for short times."),
            List.of(WIRE_SIZE, DURATION, AMBIENT_FIELD, GIVEN_CURRENT),
            List.of(
                    new Output("onderdonk-current", "Current that melts it in this time (Onderdonk)", Units.AMPERE),
                    new Output("preece-current", "Current that melts it in the long run (Preece)", Units.AMPERE),
                    new Output("onderdonk-time", "Time in which the current entered melts it (Onderdonk)", Units.SECOND),
                    new Output("diameter", "Diameter", Units.MILLIMETRE),
                    new Output("area", "Area", Units.CIRCULAR_MIL)),
            FusingFormulas.NAMED);

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity size = entries.quantity("size");
        boolean measured = size.dimension().equals(Dimension.LENGTH);
        Quantity diameter = measured ? inches(working, size) : null;
        Quantity area = measured ? areaOf(working, diameter) : circularMils(working, size);
        if (!measured) {
            diameter = working.compute(
                    "Find the diameter", FusingFormulas.DIAMETER_OF_AREA, Values.of(AREA, area), Units.INCHES,
                    "Preece's equation is made for a diameter in inches.");
        }
        Values preece = Values.of(DIAMETER, diameter);
        Quantity slow = working.compute(
                "Put it into Preece's equation", FusingFormulas.PREECE, preece, Units.AMPERE,
                "It comes from trials on wires glowing in free air; there is no time in it.", FusingFormulas.preece());
        Quantity ambient = working.convert("Turn the temperature into °C", entries.quantity("ambient"), Units.CELSIUS,
                "The constant 234 is in °C.");
        Quantity time = working.convert("Turn the time into seconds", entries.quantity("time"), Units.SECOND,
                "The constant 33 is made for seconds.");
        Quantity melting = working.lookUp(
                "Read the melting temperature of copper", MELTING, FusingFormulas.row("copper-melting"), "value", Units.CELSIUS,
                "The equation asks how far the wire has to warm.");
        Values onderdonk = Values.of(AREA, area).with(AMBIENT, ambient).with(TIME, time).with(MELTING, melting);
        Quantity fast = working.compute(
                "Put the area and the time into Onderdonk's equation", FusingFormulas.ONDERDONK, onderdonk, Units.AMPERE,
                "No heat is lost in so short a time: all of it warms the copper. log10 is ln divided by ln 10.",
                FusingFormulas.onderdonk());
        working.result("onderdonk-current", fast);
        working.result("preece-current", slow);
        if (entries.has("current")) {
            Quantity current = working.convert("Turn the current into amperes", entries.quantity("current"), Units.AMPERE,
                    "The constant 33 is made for amperes.");
            onderdonk = onderdonk.with(CURRENT, current);
            working.result("onderdonk-time", working.compute(
                    "Turn the equation to the time", FusingFormulas.ONDERDONK_TIME, onderdonk, Units.SECOND,
                    "Twice the current melts it in a quarter of the time.", FusingFormulas.onderdonk()));
        }
        working.result("diameter", diameter);
        working.result("area", area);
        addFindings(working, fast, time);
        FusingSlips.add(working, entries, preece, onderdonk);
        working.next("short-circuit-heating", "What does the insulation stand?");
    }

    private static Quantity inches(WorkingBuilder working, Quantity diameter) {
        return working.convert("Turn the diameter into inches", diameter, Units.INCHES, "Preece's equation is made for inches.");
    }

    private static Quantity areaOf(WorkingBuilder working, Quantity diameter) {
        return working.compute(
                "Find the area", FusingFormulas.AREA_OF_DIAMETER, Values.of(DIAMETER, diameter), Units.CIRCULAR_MIL,
                "Onderdonk's equation is made for an area in circular mils.");
    }

    private static Quantity circularMils(WorkingBuilder working, Quantity size) {
        return working.convert("Turn the size into circular mils", size, Units.CIRCULAR_MIL,
                "Onderdonk's constant 33 is made for circular mils.");
    }

    private static void addFindings(WorkingBuilder working, Quantity fast, Quantity time) {
        working.finding(new Finding(
                Verdict.CAUTION,
                fast.text(3) + " melts copper; it is not what a conductor may carry, nor what a fuse-link may be rated at.", fast, null,
                FusingFormulas.onderdonk(), "Choose conductors by ampacity, and check a short circuit with the constant of the "
                        + "insulation."));
        warnOfLongTime(working, time);
        if (working.stated("onderdonk-time") != null) {
            warnOfLongTime(working, working.stated("onderdonk-time"));
        }
    }

    private static void warnOfLongTime(WorkingBuilder working, Quantity time) {
        HeatingFindings.warnOfLongTime(
                working, "The time for Onderdonk's equation", time, PublishedTables.kValues().rows().get(0).source(),
                "Do not use this figure: heat leaves the wire meanwhile, and it may not melt at all.");
    }
}
