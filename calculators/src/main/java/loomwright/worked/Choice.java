package loomwright.worked;

/** One of a closed list of things to choose from: a constant of an enum that a {@link ChoiceField} offers. */
public interface Choice {
    /** Its name in content files, links and tables. */
    String key();

    /** Its name on the page. */
    String label();

    /** As the field offers it. */
    default Option option() {
        return new Option(key(), label());
    }
}
