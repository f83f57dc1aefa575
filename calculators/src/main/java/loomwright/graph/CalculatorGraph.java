package loomwright.graph;

import loomwright.picture.Picture;
import loomwright.worked.Calculator;

/** What a calculator's answer looks like over a range of one of its entries. */
public interface CalculatorGraph {
    Calculator calculator();

    /** The graph round the reader's own entries, or null if these entries give nothing to draw. */
    Picture draw(Rerun here);
}
