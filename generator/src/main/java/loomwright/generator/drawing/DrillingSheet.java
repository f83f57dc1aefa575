package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.FullSizePanel;
import loomwright.picture.Picture;
import loomwright.picture.RowOfCutOuts;
import loomwright.quantity.Units;

/** A panel with its cut-outs, printed at full size, with a bar to check the print by. */
final class DrillingSheet implements Drawing {
    @Override
    public String name() {
        return "drilling-sheet";
    }

    @Override
    public List<String> takes() {
        return CutOutValues.NAMES;
    }

    @Override
    public Picture draw(Given given) {
        RowOfCutOuts row = CutOutValues.row(given);
        if (row.width() > FullSizePanel.WIDEST) {
            throw given.fault("panel-width", "must be no more than 152 mm to go on one sheet at full size");
        }
        double last = CutOutValues.calculator(given).number("last-centre", Units.MILLIMETRE);
        String size = given.text("panel-width") + " wide and " + given.text("panel-height") + " high";
        return FullSizePanel.of(row, last, size, given.text("hole-diameter"), given.text("row-height"));
    }
}
