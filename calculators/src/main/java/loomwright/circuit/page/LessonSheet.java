package loomwright.circuit.page;

import java.util.List;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Extent;
import loomwright.markup.Links;

/** One sheet of a circuit by itself, as a lesson shows it. */
public final class LessonSheet {
    /** The sheets that can be about one branch, and so stand in a lesson. */
    public static final List<Sheet> ALL =
            List.of(Sheet.DRAWING, Sheet.FINDINGS, Sheet.SCHEDULE, Sheet.PARTS, Sheet.LABELS, Sheet.TEST_SHEET);

    private LessonSheet() {}

    /** The sheet of that key, or null. */
    public static Sheet of(String key) {
        for (Sheet sheet : ALL) {
            if (sheet.key().equals(key)) {
                return sheet;
            }
        }
        return null;
    }

    /**
     * A sheet of a circuit that has been understood.
     *
     * @param sheet one of {@link #ALL}
     */
    public static String markup(Sheet sheet, Links links, Examination examination, Extent extent) {
        return switch (sheet) {
            case DRAWING -> CircuitMarkup.legend() + PlanMarkup.printed(examination, extent);
            case FINDINGS -> FoundMarkup.alone(links, extent.of(examination));
            case SCHEDULE -> ListSheets.schedule(examination, extent);
            case PARTS -> ListSheets.partsAndCuts(links, examination.circuit(), extent);
            case LABELS -> ListSheets.labels(examination.circuit(), extent);
            case TEST_SHEET -> TestSheetMarkup.of(examination, extent, false);
            case RESULTS, DRILLING, CAUTIONS -> throw new IllegalArgumentException(sheet + " is no sheet of a lesson");
        };
    }
}
