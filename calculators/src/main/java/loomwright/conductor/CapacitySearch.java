package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;

/** Finds what one rule set says of a conductor, with harder rows where its own are missing. */
final class CapacitySearch {
    private final Quantity size;
    private final AmpacityRuleSet rules;
    private final Surroundings around;
    private final StringBuilder words = new StringBuilder();
    /** Whether the figure found is above what the conductor carries. */
    private boolean atMost;

    private boolean tooThin;

    private CapacitySearch(Quantity size, AmpacityRuleSet rules, Surroundings around) {
        this.size = size;
        this.rules = rules;
        this.around = around;
    }

    static CarryingCapacity of(Quantity size, AmpacityRuleSet rules, Surroundings around) {
        CapacitySearch search = new CapacitySearch(size, rules, around);
        CarryingCapacity own = search.find();
        return search.tooThin && own.kind() == CarryingCapacity.Kind.AT_MOST ? thin(own, rules, around) : own;
    }

    /** A wire thinner than its rule set lists: by the table of cords or of aircraft bundles, never above what the rule set gives a thicker one. */
    private static CarryingCapacity thin(CarryingCapacity own, AmpacityRuleSet rules, Surroundings around) {
        CarryingCapacity best = own;
        for (AmpacityRuleSet other : new AmpacityRuleSet[] {AmpacityRuleSet.CORD, AmpacityRuleSet.AIRCRAFT}) {
            if (other != rules) {
                CarryingCapacity found = new CapacitySearch(own.size(), other, around).find();
                boolean rated = found.isRated() && found.value().base() <= own.value().base();
                boolean better = rated && (!best.isRated() || found.value().base() > best.value().base());
                // The table of cords is made for cables of our kind; that of aircraft holds so hot and high that it bounds nothing from above.
                boolean closer = !best.isRated() && !found.isRated() && other == AmpacityRuleSet.CORD && found.value().base() < best.value().base();
                best = better || closer ? found : best;
            }
        }
        return best == own ? own : new CarryingCapacity(
                best.size(), best.value(), best.kind(), best.rated(), best.source(), (own.words() + " By another rule set: " + best.words()).strip(), best.assumed());
    }

    private CarryingCapacity find() {
        Insulation column = column();
        Row row = row(rules.column(column));
        Warmth warmth = Warmth.of(rules, column, around);
        say(warmth.words());
        atMost |= warmth.isBeyond();
        Row bundle = bundle(row);
        RatedCurrent rated = new RatedCurrent(row, rules.column(column), warmth.row(), warmth.column(), bundle, bundle != null);
        boolean nothing = around.isAsWarmAsInsulation();
        CarryingCapacity.Kind kind = nothing
                ? CarryingCapacity.Kind.NOTHING : atMost ? CarryingCapacity.Kind.AT_MOST : CarryingCapacity.Kind.RATED;
        Quantity value = nothing ? Quantity.of(0, Units.AMPERE) : rated.value();
        return new CarryingCapacity(size, value, kind, rated, row.source(), words.toString(), around.assumed());
    }

    private void say(String sentence) {
        if (!sentence.isEmpty()) {
            words.append(words.length() == 0 ? "" : " ").append(sentence);
        }
    }

    /** The column of the insulation, of the next lower one, or of the lowest that there is. */
    private Insulation column() {
        Insulation lower = null;
        Insulation lowest = null;
        for (Insulation each : Insulation.values()) {
            if (rules.covers(each)) {
                lowest = lowest == null ? each : lowest;
                lower = each.compareTo(around.insulation()) <= 0 ? each : lower;
            }
        }
        if (lower == null) {
            atMost = true;
            say("The table begins at insulation for " + lowest.rating().text() + ", which may get warmer than this.");
            return lowest;
        }
        if (lower != around.insulation()) {
            say("The table has no column for " + around.insulation().rating().text() + "; that for " + lower.rating().text() + " stands in.");
        }
        return lower;
    }

    /** The row of the size, that of the next thinner one, or the thinnest that there is. */
    private Row row(String column) {
        Row own = rules.row(size);
        if (own != null && own.has(column)) {
            if (own.quantity("size").base() < size.base() * (1 - 1e-6)) {
                say(own.name() + ", which is thinner, stands in for it.");
            }
            return own;
        }
        Row thinner = StandIn.row(rules.table(), column, size);
        if (thinner != null) {
            say("The table does not list " + size.text() + "; " + thinner.name() + ", which is thinner, stands in for it.");
            return thinner;
        }
        Row thinnest = StandIn.thinnest(rules.table(), column);
        atMost = true;
        tooThin = true;
        say(size.text() + " is thinner than any row of " + rules.label() + ", so it carries less than " + thinnest.name() + ".");
        return thinnest;
    }

    /** The row of the factor for conductors together; of the rule sets, only that for boats prints one for cables. */
    private Row bundle(Row row) {
        int together = around.together();
        if (rules == AmpacityRuleSet.BOAT) {
            return together >= 3 ? AmpacityRuleSet.bundleRow(together) : null;
        }
        int most = rules.mostTogether(row);
        if (together > most) {
            atMost = true;
            say("The table holds for at most " + most + " conductors together; the factor of 33 CFR for " + together + " stands in.");
            return AmpacityRuleSet.bundleRow(together);
        }
        return null;
    }
}
