package loomwright.protection;

import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The letters used in the formulas on fault current. */
final class FaultSymbols {
    static final Symbol VOLTAGE = Symbol.of("E", "voltage behind the short circuit", Dimension.VOLTAGE);
    static final Symbol AT_REST = Symbol.of("E", "0", "voltage of the battery at rest", Dimension.VOLTAGE);
    static final Symbol PRINTED = Symbol.of("R", "p", "published inside resistance", Dimension.RESISTANCE);
    static final Symbol PRINTED_CAPACITY = Symbol.of("C", "p", "capacity it is printed for", Dimension.CHARGE);
    static final Symbol CAPACITY = Symbol.of("C", "capacity of one battery", Dimension.CHARGE);
    static final Symbol MAKERS_CURRENT = Symbol.of("I", "sc", "short-circuit current by the battery's maker", Dimension.CURRENT);
    static final Symbol ONE_BATTERY = Symbol.of("R", "1", "inside resistance of one battery", Dimension.RESISTANCE);
    static final Symbol IN_PARALLEL = Symbol.of("n", "batteries in parallel", Dimension.NUMBER);
    static final Symbol BATTERY = Symbol.of("R", "b", "inside resistance of the battery", Dimension.RESISTANCE);
    static final Symbol FEED = Symbol.of("R", "f", "resistance of the feed, out and back", Dimension.RESISTANCE);
    static final Symbol BRANCH = Symbol.of("R", "c", "resistance of the branch, out and back", Dimension.RESISTANCE);
    static final Symbol FUSE_LINKS = Symbol.of("R", "s", "resistance of the fuse-links on the way", Dimension.RESISTANCE);
    static final Symbol JOINTS = Symbol.of("R", "j", "resistance of all joints and switches", Dimension.RESISTANCE);
    static final Symbol LOOP = Symbol.of("R", "resistance of the whole loop", Dimension.RESISTANCE);
    static final Symbol CURRENT = Symbol.of("I", "f", "prospective fault current", Dimension.CURRENT);

    private FaultSymbols() {}
}
