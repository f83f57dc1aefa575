package loomwright.handout;

import loomwright.worked.Choice;
import loomwright.worked.Choices;

/** The paper that everything is printed on. The room is what the margins of the style sheet leave, less a little for safety. */
public enum Paper implements Choice {
    A4("a4", "A4", 254),
    LETTER("letter", "Letter", 236);

    public static final Choices<Paper> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final double room;

    Paper(String key, String label, double room) {
        this.key = key;
        this.label = label;
        this.room = room;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }

    /** Millimetres of height for what stands on a page. */
    double room() {
        return room;
    }
}
