package loomwright.picture;

/** Symbols of circuit drawings, after the conventions of IEC 60617; sizes are our own. */
public enum Symbol {
    /** Two cells; current leaves at the longer plate. */
    BATTERY(12, 14),
    FUSE_LINK(17, 7),
    SWITCH_OPEN(17, 14),
    /** The contact of a relay: drawn as it is with the coil dead. */
    MAKE_CONTACT(17, 14),
    /** A switch that opens by itself: a contact with a cross at its fixed end. */
    BREAKER(20, 14),
    LAMP(14, 14),
    LAMP_LIT(18, 26),
    MOTOR(15, 15),
    RESISTOR(19, 7),
    VOLTMETER(15, 15),
    /** The two contacts of an outlet with nothing plugged in. */
    OUTLET(17, 9),
    CONVERTER(17, 17);

    private final double reach;
    private final double breadth;

    Symbol(double reach, double breadth) {
        this.reach = reach;
        this.breadth = breadth;
    }

    /** Half its size along the conductor. */
    public double reach() {
        return reach;
    }

    /** Half its size across the conductor. */
    public double breadth() {
        return breadth;
    }

    /** Draws the symbol over a conductor that runs through (x, y). */
    public void draw(Canvas canvas, double x, double y, Heading heading) {
        new SymbolPen(canvas, x, y, heading).draw(this);
    }
}
