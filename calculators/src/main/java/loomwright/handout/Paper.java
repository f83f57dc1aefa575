package loomwright.handout;

import loomwright.worked.Choice;

/** The paper that everything is printed on. The room is what the margins of the style sheet leave, less a little for safety. */
public enum Paper implements Choice {
    A4("a4", "A4", 254),
    LETTER("letter", "Letter", 236);

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

    /** The paper of that key; null if there is none. */
    public static Paper named(String key) {
        for (Paper paper : values()) {
            if (paper.key.equals(key)) {
                return paper;
            }
        }
        return null;
    }
}
