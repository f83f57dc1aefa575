package loomwright.circuit.page;

/** The sheets of a circuit, in the order they are printed. */
public enum Sheet {
    DRAWING("drawing", "Drawing"),
    FINDINGS("findings", "What was found"),
    RESULTS("results", "Results"),
    SCHEDULE("schedule", "Schedule of circuits"),
    PARTS("parts", "Parts and cut list"),
    LABELS("labels", "Labels"),
    TEST_SHEET("test-sheet", "Test sheet"),
    DRILLING("drilling", "Drilling sheet"),
    CAUTIONS("cautions", "Cautions");

    private final String key;
    private final String title;

    Sheet(String key, String title) {
        this.key = key;
        this.title = title;
    }

    /** Its name in a lesson and on the page. */
    public String key() {
        return key;
    }

    public String title() {
        return title;
    }
}
