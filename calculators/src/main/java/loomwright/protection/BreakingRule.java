package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** The breaking capacity a boat rule asks for: the rows of ABYC E-11 Table V.A, and the text on large banks. */
final class BreakingRule {
    private static final double UP_TO_FIRST = 650;
    private static final double UP_TO_SECOND = 1100;

    private BreakingRule() {}

    static Row row(Quantity cranking, Quantity prospective, boolean main) {
        double amperes = cranking.in(Units.AMPERE).value();
        if (main && BreakingFindings.isLargeBank(cranking) && BreakingFindings.isAboveTenKiloamperes(prospective)) {
            return named("large-bank");
        }
        if (amperes <= UP_TO_FIRST) {
            return named("to-650-a");
        }
        return named(amperes <= UP_TO_SECOND ? "651-to-1100-a" : "above-1100-a");
    }

    static String column(boolean main) {
        return main ? "main-device" : "branch-device";
    }

    private static Row named(String key) {
        return PublishedTables.mainProtectionInterrupting().row(key);
    }
}
