package loomwright.picture;

/** The way a symbol faces: along the current that passes through it. */
public enum Heading {
    EAST(1, 0),
    SOUTH(0, 1),
    WEST(-1, 0),
    NORTH(0, -1);

    final double dx;
    final double dy;

    Heading(double dx, double dy) {
        this.dx = dx;
        this.dy = dy;
    }

    boolean isLevel() {
        return dy == 0;
    }
}
