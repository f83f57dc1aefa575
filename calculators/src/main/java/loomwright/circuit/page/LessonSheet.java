package loomwright.circuit.page;

import java.util.HashMap;
import loomwright.circuit.Installation;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Extent;
import loomwright.markup.Links;

/** One sheet of a circuit by itself, as a lesson shows it. */
public enum LessonSheet {
    DRAWING("drawing", "Drawing"),
    FINDINGS("findings", "What was found"),
    SCHEDULE("schedule", "Schedule of circuits"),
    PARTS("parts", "Parts and cut list"),
    LABELS("labels", "Labels"),
    TEST_SHEET("test-sheet", "Test sheet");

    private final String key;
    private final String title;

    LessonSheet(String key, String title) {
        this.key = key;
        this.title = title;
    }

    /** The sheet of that key, or null. */
    public static LessonSheet of(String key) {
        for (LessonSheet sheet : values()) {
            if (sheet.key.equals(key)) {
                return sheet;
            }
        }
        return null;
    }

    /** Its name in a lesson. */
    public String key() {
        return key;
    }

    public String title() {
        return title;
    }

    /** The sheet of a circuit that has been understood. */
    public String markup(Links links, Examination examination, Extent extent) {
        Installation installation = examination.solution().installation();
        return switch (this) {
            case DRAWING -> CircuitMarkup.legend() + PlanMarkup.printed(examination, extent);
            case FINDINGS -> FoundMarkup.of(links, extent.of(examination), false);
            case SCHEDULE -> ListSheets.schedule(examination, extent);
            case PARTS -> ListSheets.partsAndCuts(links, installation, extent);
            case LABELS -> ListSheets.labels(installation, extent);
            case TEST_SHEET -> TestSheetMarkup.of(examination, extent, new HashMap<>(), false);
        };
    }
}
