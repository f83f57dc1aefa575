package loomwright.worked;

/** One thing a calculator asks for. */
public sealed interface Field permits QuantityField, ChoiceField {
    /** Its name in content files and in links, such as {@code route-length}. */
    String key();

    /** Its name on the page, such as {@code Route length}. */
    String label();

    /** One or two sentences on what to enter and where to find it. */
    String help();

    /** What is taken if nothing is entered; null if something must be entered, empty if nothing is taken. */
    String usual();
}
