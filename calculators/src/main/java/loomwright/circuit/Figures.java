package loomwright.circuit;

/**
 * What a part was understood as: its figures, each kind with a record of its own. A new kind of part is one more record here and one more constant of
 * {@link PartKind}; the compiler then names every place that has to know of it.
 */
public sealed interface Figures permits Supply, Panel, Protection, Isolator, Switching, Conductor, Joint, Load, ChargeSource {
    /** The resistance, out and back, as it works, in Ω. */
    double ohms();

    /** The least resistance to be reckoned with in a short circuit, in Ω: joints, contacts and switches perfect, copper cold. */
    double leastOhms();

    /** What it is in a parts list; empty if only its name says that. */
    String inPartsList();

    /** What stands on its label behind its name; empty if nothing does. */
    String onLabel();
}
