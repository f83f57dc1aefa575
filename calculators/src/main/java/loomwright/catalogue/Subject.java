package loomwright.catalogue;

import java.util.List;
import loomwright.worked.Calculator;

/**
 * A part of the job, with its calculators in order. Each subject is compiled into a page program of its own, so that a page loads no
 * more than it needs.
 *
 * @param name its name, and that of its page program
 * @param calculators its calculators
 */
public record Subject(String name, List<Calculator> calculators) {
    /** The calculator of that key, or null. */
    public Calculator find(String key) {
        for (Calculator calculator : calculators) {
            if (calculator.description().key().equals(key)) {
                return calculator;
            }
        }
        return null;
    }
}
