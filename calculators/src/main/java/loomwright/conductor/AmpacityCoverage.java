package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.table.Table;
import loomwright.worked.Refusal;

/** Refuses what a rule set does not cover, rather than borrow a factor from another. */
final class AmpacityCoverage {
    private static final String OR_OTHER = ", or choose another rule set";

    private AmpacityCoverage() {}

    static void check(AmpacityRuleSet rules, Surroundings around) {
        if (!rules.covers(around.insulation())) {
            throw new Refusal(
                    "insulation-temperature",
                    "Temperature rating of the insulation " + around.insulation().rating().text() + " has no column here ("
                            + rules.label() + "): take a column below your rating" + OR_OTHER);
        }
        if (around.engineSpace() && rules != AmpacityRuleSet.BOAT) {
            throw new Refusal(
                    "engine-space",
                    "Engine space is a factor of 33 CFR only: choose no and enter the temperature around the conductor" + OR_OTHER);
        }
        checkWarmth(rules, around);
        checkTogether(rules, around.together());
    }

    private static void checkWarmth(AmpacityRuleSet rules, Surroundings around) {
        switch (rules) {
            case BOAT -> {
                if (around.warmerThan(50)) {
                    throw tooWarm(around, "33 CFR knows 30 °C and, in an engine space, 50 °C: keep the conductor out of there");
                }
                if (around.warmerThan(30) && !around.engineSpace()) {
                    throw tooWarm(around, "33 CFR has one factor only, for an engine space of 50 °C: choose yes at Engine space");
                }
            }
            case AIRCRAFT -> {
                if (around.warmerThan(70)) {
                    throw tooWarm(around, "FAA Table 11-9 holds up to 70 °C: keep the conductor out of there");
                }
            }
            case TOWING -> {
                if (around.warmerThan(30)) {
                    throw tooWarm(around, "this page gives no factor for warm surroundings: leave the field empty");
                }
            }
            case FREE_AIR, CORD -> rules.warmthRow(around);
        }
    }

    private static void checkTogether(AmpacityRuleSet rules, int together) {
        if (rules == AmpacityRuleSet.FREE_AIR && together > 3) {
            throw tooMany(together, "the free-air table is for a single conductor, and the NEC factors for many are for raceways");
        }
        if ((rules == AmpacityRuleSet.CORD || rules == AmpacityRuleSet.TOWING) && together > 2) {
            throw tooMany(together, "this table has no factor for more than the two conductors of one circuit");
        }
    }

    /**
     * The first row for surroundings at least as warm.
     *
     * @throws Refusal if the table ends below
     */
    static Row warmer(Table table, String upTo, Surroundings around) {
        double celsius = around.ambient().in(Units.CELSIUS).value();
        Quantity last = null;
        for (Row row : table.rows()) {
            if (row.has(around.insulation().column())) {
                last = row.quantity(upTo);
                if (last.value() >= celsius - 1e-9) {
                    return row;
                }
            }
        }
        throw tooWarm(around, "the factors of this rule set end at " + (last == null ? "30 °C" : last.text()) + ": take better insulation");
    }

    private static Refusal tooWarm(Surroundings around, String why) {
        return new Refusal("ambient", "Temperature around the conductor is " + around.ambient().text() + ", but " + why + OR_OTHER);
    }

    private static Refusal tooMany(int together, String why) {
        return new Refusal("conductors-together", "Conductors together are " + together + ", but " + why + ": enter fewer" + OR_OTHER);
    }
}
