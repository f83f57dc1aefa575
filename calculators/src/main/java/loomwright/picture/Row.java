package loomwright.picture;

import java.util.List;

/** Components evenly spread along a level conductor, each with its label in the room it has. */
record Row(List<Component> components, double from, double to) {
    private static final double AIR = 8;

    /** The room of one component along the conductor. */
    private double pitch() {
        return (to - from) / Math.max(1, components.size());
    }

    private double labelWidth() {
        return Math.abs(pitch()) - AIR;
    }

    /** The height of the labels, all lines counted. */
    double labelHeight() {
        int most = 0;
        for (Component component : components) {
            most = Math.max(most, Wrap.lines(component.label(), Schematic.LETTERING, labelWidth()).size());
        }
        return most * Schematic.LETTERING.lineHeight();
    }

    /** Draws the components from {@code from} to {@code to}, and an arrow of current after the first. */
    void draw(Schematic drawn, double y, Side side) {
        Heading heading = to > from ? Heading.EAST : Heading.WEST;
        for (int i = 0; i < components.size(); i++) {
            Component component = components.get(i);
            drawn.symbol(component.symbol(), from + (i + 0.5) * pitch(), y, heading, side, component.label(), labelWidth());
        }
        double arrow = components.isEmpty() ? (from + to) / 2 : components.size() == 1 ? to - pitch() / 5 : from + pitch();
        drawn.current(arrow, y, heading);
    }
}
