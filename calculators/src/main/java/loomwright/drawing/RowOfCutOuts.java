package loomwright.drawing;

import java.util.List;
import loomwright.quantity.Units;

/** The lengths of a row of cut-outs that a lesson or a reader gives, in millimetres. */
public record RowOfCutOuts(double width, double height, double diameter, double pitch, double first, double up, int count) {
    static final List<String> VALUES =
            List.of("panel-width", "panel-height", "count", "hole-diameter", "centre-distance", "first-centre", "row-height");

    static RowOfCutOuts of(Given given) {
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
        for (String key : VALUES) {
            computed.with(key, given.text(key));
        }
        return computed;
    }

    /** Where the centres lie if the row begins at {@code from} and ends at {@code last}. */
    public double[] centres(double from, double last) {
        double[] centres = new double[count];
        for (int i = 0; i < count; i++) {
            centres[i] = count == 1 ? from : from + (last - from) * i / (count - 1);
        }
        return centres;
    }

    /** Without the lengths: the library's printing of numbers would come into the page with them. */
    @Override
    public String toString() {
        return count + " cut-outs in a row";
    }
}
