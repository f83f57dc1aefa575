package loomwright.picture;

/** Which part of a text stands at its point. */
public enum Anchor {
    START("start"),
    MIDDLE("middle"),
    END("end");

    private final String attribute;

    Anchor(String attribute) {
        this.attribute = attribute;
    }

    String attribute() {
        return attribute;
    }
}
