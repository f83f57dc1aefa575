package loomwright.picture;

/** The way a symbol faces: along the current that passes through it. */
public enum Heading {
    EAST(1, 0),
    SOUTH(0, 1),
    WEST(-1, 0),
    NORTH(0, -1);

    private final double dx;
    private final double dy;

    Heading(double dx, double dy) {
        this.dx = dx;
        this.dy = dy;
    }

    /** The step to the right. */
    public double dx() {
        return dx;
    }

    /** The step down. */
    public double dy() {
        return dy;
    }

    public boolean isLevel() {
        return dy == 0;
    }
}
