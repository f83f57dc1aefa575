package loomwright.protection;

import loomwright.worked.MissingFigure;

/** What a device guards, with what to do if it is too weak and where its figure is printed. */
public enum Guarded {
    CONDUCTOR("sheet-ampacity", "take a thicker conductor", "ampacity of the conductor", "the table of ampacity for its size and insulation"),
    TRIGGER_WIRE("trigger-ampacity", "take a thicker trigger wire", "ampacity of the trigger wire", "the table of ampacity for its size and insulation"),
    PANEL("panel-limit", "take a panel for more", "total current of the panel", "the panel, or its data sheet: the total current"),
    OUTLET(
            "outlet-rating", "take an outlet for more", "rated current of the outlet, or largest fuse-link for the device",
            "the outlet, or the data sheet of the device: rated current, or \u201cmaximum fuse\u201d"),
    SWITCH("continuous-current", "take a switch or relay for more", "continuous current of the switch", "the switch, or its data sheet: the continuous current on direct current"),
    JOINT("terminal-rating", "take a terminal or joint for more", "rated current of terminals and connectors", "the data sheet of the terminal or connector: the rated current"),
    HOLDER("holder-rating", "take a holder for more", "rated current of the fuse holders", "the holder, or its data sheet: the rated current");

    private final String key;
    private final String stronger;
    private final String figure;
    private final String where;

    Guarded(String key, String stronger, String figure, String where) {
        this.key = key;
        this.stronger = stronger;
        this.figure = figure;
        this.where = where;
    }

    String remedy(String name) {
        return "Take a device of a smaller rating, put one of its own before " + name + ", or " + stronger + ".";
    }

    /** The figure that says what it may carry, for who has to get it. */
    public MissingFigure missing() {
        return new MissingFigure(key, figure, where);
    }

    /** What the figure is called that says what it may carry; the same for all of a kind. */
    String figure() {
        return figure;
    }

    /** Where what it may carry is printed. */
    public String where() {
        return where;
    }
}
