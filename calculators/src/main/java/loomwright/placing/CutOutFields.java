package loomwright.placing;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the cut-out layout asks and answers. */
final class CutOutFields {
    static final QuantityField WIDTH = millimetres("panel-width", "Width of the panel", "The flat part you may drill.", 20, 3000);
    static final QuantityField HEIGHT = millimetres("panel-height", "Height of the panel", "The flat part you may drill.", 20, 3000);
    static final ChoiceField COUNT = ChoiceField.of(
            "count", "Number of cut-outs", "All in one row, at equal distances.", new Option("1", "one"), new Option("2", "two"),
            new Option("3", "three"), new Option("4", "four"), new Option("5", "five"), new Option("6", "six"));
    static final QuantityField DIAMETER = millimetres(
                    "hole-diameter",
                    "Diameter of a cut-out",
                    "From the drawing of the part. Round panel outlets commonly take 28 mm to 29 mm: measure yours.",
                    3, 300)
            .usually("29 mm");
    static final QuantityField PITCH = millimetres(
                    "centre-distance", "Distance between centres", "So that the fronts do not touch: front diameter and a little more.", 3, 1000)
            .usually("50 mm");
    static final QuantityField FIRST =
            millimetres("first-centre", "First centre from the left edge", "Where you would like it.", 0, 3000);
    static final QuantityField ROW = millimetres("row-height", "Centres above the lower edge", "Where you would like the row.", 0, 3000);
    static final QuantityField EDGE = millimetres(
                    "edge-distance", "Material wanted at the edges", "From the rim of a cut-out to the edge of the panel.", 0, 500)
            .usually("10 mm");
    static final QuantityField WEB = millimetres(
                    "web", "Material wanted between cut-outs", "From rim to rim, so that the panel stays stiff.", 0, 500)
            .usually("10 mm");
    static final QuantityField BEHIND = millimetres(
                    "room-behind", "Diameter needed behind the panel", "The nut or body at its widest, and a tool to turn it.", 3, 400)
            .usually("40 mm");
    static final QuantityField DEPTH = millimetres(
                    "clear-depth", "Clear depth behind the panel", "Measured through a small pilot hole, with a wire.", 0, 3000);
    static final QuantityField NEEDED = millimetres(
                    "depth-needed", "Depth the part needs", "Body, connectors and the bend of the conductors.", 0, 1000)
            .usually("60 mm");
    static final QuantityField FRAME_1_FROM = frame("frame-1-from", "First frame: left side");
    static final QuantityField FRAME_1_TO = frame("frame-1-to", "First frame: right side");
    static final QuantityField FRAME_2_FROM = frame("frame-2-from", "Second frame: left side");
    static final QuantityField FRAME_2_TO = frame("frame-2-to", "Second frame: right side");

    static final Description DESCRIPTION = new Description(
            "cut-out-layout",
            "Cut-outs in a panel",
            "Do my outlets fit here, or where is the nearest place that fits?",
            List.of(
                    "One row of equal round cut-outs. Frames and brackets behind stand upright from bottom to top.",
                    "It knows only what you enter: look and feel behind the panel before you drill, for cables, pipes and tanks."),
            List.of(
                    WIDTH, HEIGHT, COUNT, DIAMETER, PITCH, FIRST, ROW, EDGE, WEB, BEHIND, FRAME_1_FROM, FRAME_1_TO, FRAME_2_FROM,
                    FRAME_2_TO, DEPTH, NEEDED),
            List.of(
                    new Output("last-centre", "Last centre from the left edge", Units.MILLIMETRE),
                    new Output("left-edge", "Material left at the left edge", Units.MILLIMETRE),
                    new Output("right-edge", "Material left at the right edge", Units.MILLIMETRE),
                    new Output("lower-edge", "Material left at the lower edge", Units.MILLIMETRE),
                    new Output("upper-edge", "Material left at the upper edge", Units.MILLIMETRE),
                    new Output("web-left", "Material left between two cut-outs", Units.MILLIMETRE),
                    new Output("nearest-first-centre", "Nearest first centre that fits", Units.MILLIMETRE)),
            List.of(
                    new NamedFormula("last-centre", CutOutSymbols.LAST_CENTRE),
                    new NamedFormula("web", CutOutSymbols.WEB_LEFT),
                    new NamedFormula("left-edge", CutOutSymbols.AT_LEFT),
                    new NamedFormula("right-edge", CutOutSymbols.AT_RIGHT)));

    private CutOutFields() {}

    private static QuantityField millimetres(String key, String label, String help, double least, double greatest) {
        return QuantityField.of(key, label, help, least, greatest, Units.MILLIMETRE, Units.CENTIMETRE, Units.INCHES);
    }

    private static QuantityField frame(String key, String label) {
        return millimetres(key, label, "From the left edge of the panel. Leave it empty if there is none.", 0, 3000).optional();
    }
}
