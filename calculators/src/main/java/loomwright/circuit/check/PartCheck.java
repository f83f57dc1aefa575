package loomwright.circuit.check;

import loomwright.circuit.Node;

/** One check. It is asked at every part of a circuit, looks at what concerns it, and adds what it finds. {@link Checks} lists them all. */
interface PartCheck {
    void check(Node node, Context context, Findings findings);
}
