package loomwright.graph;

import loomwright.picture.Picture;

/** What a calculator's answer looks like over a range of one of its entries. */
public interface CalculatorGraph {
    /** The key of the calculator. */
    String calculator();

    /** The graph round the reader's own entries, or null if these entries give nothing to draw. */
    Picture draw(Rerun here);
}
