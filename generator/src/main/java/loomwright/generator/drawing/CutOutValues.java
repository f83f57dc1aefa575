package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.RowOfCutOuts;
import loomwright.quantity.Units;

/** The values of a drawing that shows a row of cut-outs. */
final class CutOutValues {
    static final List<String> NAMES =
            List.of("panel-width", "panel-height", "count", "hole-diameter", "centre-distance", "first-centre", "row-height");

    private CutOutValues() {}

    static RowOfCutOuts row(Given given) {
        String count = given.option("count", "cut-out-layout");
        return new RowOfCutOuts(
                given.number("panel-width", Units.MILLIMETRE),
                given.number("panel-height", Units.MILLIMETRE),
                given.number("hole-diameter", Units.MILLIMETRE),
                given.number("centre-distance", Units.MILLIMETRE),
                given.number("first-centre", Units.MILLIMETRE),
                given.number("row-height", Units.MILLIMETRE),
                Integer.parseInt(count));
    }

    /** The calculator with these values entered; the depth behind is not asked here. */
    static Computed calculator(Given given) {
        Computed computed = Computed.by("cut-out-layout").with("clear-depth", "3000 mm");
        for (String key : NAMES) {
            computed.with(key, given.text(key));
        }
        return computed;
    }
}
