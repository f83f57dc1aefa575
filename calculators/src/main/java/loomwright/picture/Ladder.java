package loomwright.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * A whole installation: the battery and its main protection in the top row, a positive rail on the left, the negative busbar on the right,
 * and a rung for every branch between them.
 */
public final class Ladder {
    private static final double PLUS_RAIL = 14;
    private static final double MINUS_RAIL = Picture.WIDTH - 14;
    private static final double FIRST = 24;
    private static final double BREADTH = 26;
    private static final double BELOW = 28;

    private record Rung(List<Component> components, List<String> note) {}

    private final List<Component> supply;
    private final List<Rung> rungs = new ArrayList<>();

    /** The supply row, from the negative busbar on: the battery first, then what its current passes on the way to the positive rail. */
    public Ladder(List<Component> supply) {
        this.supply = List.copyOf(supply);
    }

    /**
     * Adds a branch below the others.
     *
     * @param components what the current passes from the positive rail to the negative busbar
     * @param note a line below it, such as its conductor; may be empty
     */
    public Ladder rung(List<Component> components, String note) {
        List<String> lines = note.isEmpty() ? List.of() : Wrap.lines(note, Schematic.LETTERING, MINUS_RAIL - PLUS_RAIL - 20);
        rungs.add(new Rung(List.copyOf(components), lines));
        return this;
    }

    public Picture picture(String title, String description) {
        Row supplyRow = new Row(supply, MINUS_RAIL, PLUS_RAIL);
        double supplyAt = FIRST + supplyRow.labelHeight() + BREADTH;
        double[] places = new double[rungs.size()];
        double y = supplyAt + BELOW;
        for (int i = 0; i < places.length; i++) {
            places[i] = y + row(rungs.get(i)).labelHeight() + BREADTH;
            y = places[i] + BELOW + rungs.get(i).note().size() * Schematic.LETTERING.lineHeight();
        }
        double last = places.length == 0 ? supplyAt : places[places.length - 1];
        Canvas canvas = new Canvas();
        Schematic drawn = new Schematic(canvas);
        double join = MINUS_RAIL - (MINUS_RAIL - PLUS_RAIL) / Math.max(1, supply.size()) / 2;
        drawn.conductor(Style.PLUS, join, supplyAt, PLUS_RAIL, supplyAt, PLUS_RAIL, last);
        drawn.conductor(Style.MINUS, join, supplyAt, MINUS_RAIL, supplyAt, MINUS_RAIL, last);
        drawn.sign(true, PLUS_RAIL + 13, supplyAt + 21).sign(false, MINUS_RAIL - 13, supplyAt + 21);
        supplyRow.draw(drawn, supplyAt, Side.ABOVE);
        for (int i = 0; i < places.length; i++) {
            rung(canvas, drawn, rungs.get(i), places[i]);
        }
        return new Picture(title, description, canvas, Picture.WIDTH, y);
    }

    private static Row row(Rung rung) {
        return new Row(rung.components(), PLUS_RAIL, MINUS_RAIL);
    }

    /** The load is the last component: the conductor is positive up to it. */
    private static void rung(Canvas canvas, Schematic drawn, Rung rung, double y) {
        double load = MINUS_RAIL - (MINUS_RAIL - PLUS_RAIL) / Math.max(1, rung.components().size()) / 2;
        drawn.conductor(Style.PLUS, PLUS_RAIL, y, load, y).conductor(Style.MINUS, load, y, MINUS_RAIL, y);
        drawn.junction(PLUS_RAIL, y).junction(MINUS_RAIL, y);
        row(rung).draw(drawn, y, Side.ABOVE);
        canvas.text((PLUS_RAIL + MINUS_RAIL) / 2, y + BELOW + 10, Anchor.MIDDLE, Schematic.LETTERING, rung.note());
    }
}
