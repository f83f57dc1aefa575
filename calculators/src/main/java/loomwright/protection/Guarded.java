package loomwright.protection;

/** What a device guards, with what to do if it is too weak and where its figure is printed. */
public enum Guarded {
    CONDUCTOR("take a thicker conductor", "the table of ampacity for its size and insulation"),
    TRIGGER_WIRE("take a thicker trigger wire", "the table of ampacity for its size and insulation"),
    PANEL("take a panel for more", "the panel, or its data sheet: the total current"),
    OUTLET("take an outlet for more", "the outlet, or its data sheet: the rated current"),
    SWITCH("take a switch or relay for more", "the switch, or its data sheet: the continuous current on direct current"),
    JOINT("take a terminal or joint for more", "the data sheet of the terminal or connector: the rated current"),
    HOLDER("take a holder for more", "the holder, or its data sheet: the rated current");

    private final String stronger;
    private final String where;

    Guarded(String stronger, String where) {
        this.stronger = stronger;
        this.where = where;
    }

    String remedy(String name) {
        return "Take a device of a smaller rating, put one of its own before " + name + ", or " + stronger + ".";
    }

    /** Where what it may carry is printed. */
    public String where() {
        return where;
    }
}
