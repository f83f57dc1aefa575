package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Sentence;
import loomwright.worked.Verdict;

/**
 * What a conductor may carry where it lies. There is always an answer: by the row of its size and the factors of its surroundings, or else
 * by the nearest row that is harder. Where even that is missing, the least current that it is known to be below stands in
 * ({@link Kind#AT_MOST}); such a figure can stop a design and never pass it.
 *
 * <p>Harder is: less copper, insulation of a lower rating, a warmer place, more conductors together. A wire thinner than the table of its
 * rule set is looked up in the table of flexible cords and in that of aircraft bundles, which go further down.
 *
 * @param size the conductor, by its copper
 * @param value what it may carry, or what it is below
 * @param rated the row and the factors that the value comes of; null if it is from a data sheet
 * @param source where the value comes from
 * @param words how it was found, in sentences; empty if its own row was read at the conditions of the table
 * @param assumed what was taken for granted about its surroundings, such as {@code insulation for 60 °C}; empty if nothing was
 * @source the table of the rule set; ambient factors of the NEC for Table 5 of 33 CFR, which print the same figures at 50 °C
 */
public record CarryingCapacity(Quantity size, Quantity value, Kind kind, RatedCurrent rated, Source source, String words, String assumed) {
    static final String FUSE_QUESTION = "Now choose the fuse-link";

    /** How much the value says. */
    public enum Kind {
        /** A published figure, for it or for one that is harder. */
        RATED,
        /** A figure of its data sheet. */
        SHEET,
        /** It carries less than this; no published figure says how much. */
        AT_MOST,
        /** The place is as warm as its insulation may get. */
        NOTHING
    }

    /**
     * What a conductor may carry.
     *
     * @param size its cross-section; SAE gauge by its area
     * @param rules the rule set on ampacity
     * @param around what decides besides the size
     */
    public static CarryingCapacity of(Quantity size, AmpacityRuleSet rules, Surroundings around) {
        return CapacitySearch.of(size, rules, around);
    }

    /** The same with a factor of the reader's own, which takes current away; as it is if there is none. */
    CarryingCapacity times(Quantity ownFactor) {
        if (ownFactor == null || kind == Kind.NOTHING || rated == null) {
            return this;
        }
        RatedCurrent reduced = rated.times(ownFactor);
        return new CarryingCapacity(size, reduced.value(), kind, reduced, source, words, assumed);
    }

    /**
     * What the data sheet of a cable says.
     *
     * @param value what it may carry where it lies
     */
    public static CarryingCapacity bySheet(Quantity size, Quantity value, Source source) {
        return new CarryingCapacity(size, value.in(Units.AMPERE), Kind.SHEET, null, source, "", "");
    }

    /** Whether the value is one for the conductor itself, and not only above it. */
    public boolean isRated() {
        return kind == Kind.RATED || kind == Kind.SHEET;
    }

    /** Whether it was read in the table of the rule set, and not in a data sheet. */
    public boolean isByTable() {
        return rated != null;
    }

    /** Whether it is an ampacity of Table 5 of 33 CFR, the only one of which a rule lets a device be rated at more than the whole. */
    public boolean isByTableFive() {
        return isRated() && rated != null && rated.row().table() == AmpacityRuleSet.BOAT.table();
    }

    /** The current of its table before any factor; null if it is from a data sheet. */
    public Quantity tableCurrent() {
        return rated == null ? null : rated.tableCurrent();
    }

    /** What its value is, to stand behind "within" or "above". */
    public String name() {
        return switch (kind) {
            case SHEET -> "the ampacity of " + size.text() + " by its data sheet";
            case RATED -> "the ampacity of " + size.text() + workedOut();
            case AT_MOST -> "what " + size.text() + " carries at most" + workedOut();
            case NOTHING -> "what " + size.text() + " may carry where it is as warm as its insulation may get";
        };
    }

    /** The table's current with its factors, such as {@code (25 A × 0.82)}; empty if there are none. */
    private String workedOut() {
        String factors = rated.factorsText();
        return factors.isEmpty() ? "" : " (" + rated.tableCurrent().text() + factors + ")";
    }

    /**
     * A current through it held against what it may carry.
     *
     * @param subject what the current is, as the start of a sentence, such as {@code The design current}
     */
    public Finding judge(String subject, Quantity current, String remedy) {
        return judge(Comparison.of(subject, current), subject, current, Sentence.of(remedy));
    }

    /** The rating of a device held against what it may carry: equal is as intended. */
    public Finding judgeRating(String subject, Quantity rating, Sentence remedy) {
        return judge(Comparison.of(subject, rating).exact(), subject, rating, remedy);
    }

    private Finding judge(Comparison comparison, String subject, Quantity figure, Sentence remedy) {
        Quantity limit = kind == Kind.NOTHING ? Quantity.of(0, Units.AMPERE) : value;
        Comparison against = comparison.atMost(limit, name(), source()).otherwise(Verdict.STOP, Sentence.later(() -> whatToDo(remedy.text()))).settledBy(missing());
        if (!assumed.isEmpty()) {
            against.assuming(assumed);
        }
        if (isRated() || !against.holds()) {
            return against.finding();
        }
        if (Comparison.atLeast(figure, value)) {
            return new Finding(
                    Verdict.STOP,
                    Sentence.of(subject + ", " + figure.text(3) + ", is not below " + value.text(3) + ", and " + size.text() + " carries less than that. " + words),
                    figure, value, source(), Sentence.of(whatToDo(remedy.text())));
        }
        return Finding.notKnown(
                subject + ", " + figure.text(3) + ", is below " + value.text(3) + ", but " + size.text() + " carries less than that. " + words, figure,
                source(), missing());
    }

    /**
     * The figure of a data sheet held against the most that is printed for no less copper: Table 5 of 33 CFR, the row at or above the size, insulation for 200 °C,
     * 30 °C around it. What is above that was read wrongly. Null if it is not from a data sheet, or thicker than the table goes.
     */
    public Comparison believable() {
        Row row = kind == Kind.SHEET ? StandIn.thickEnough(AmpacityRuleSet.BOAT.table(), size) : null;
        return row == null ? null : Comparison.of("The ampacity of " + size.text() + " by its data sheet", value)
                .atMost(row.quantity(Insulation.T200.column()), "the most that is printed for " + row.name() + ", with insulation for 200\u00a0°C", row.source())
                .exact()
                .otherwise(Verdict.STOP, "Read the data sheet again, for this size and for a current carried without pause; or leave the field empty.");
    }

    /** Whether its figure is from a data sheet and more than copper of that size carries. */
    public boolean isUnbelievable() {
        Comparison comparison = believable();
        return comparison != null && !comparison.holds();
    }

    /** No size helps where the place is as warm as the insulation; where factors apply, the place may be changed as well. */
    private String whatToDo(String remedy) {
        if (kind == Kind.NOTHING) {
            return "Lay it in a cooler place, or take insulation of a higher rating: no size carries more there.";
        }
        if (rated == null) {
            return remedy;
        }
        String place = rated.warmth() != null ? " In a cooler place it carries more." : "";
        return remedy + place + (rated.bundleBinds() ? " Apart from other conductors it carries more." : "");
    }

    /** The figure that would settle it. */
    public MissingFigure missing() {
        return new MissingFigure(
                "sheet-ampacity", "ampacity of " + size.text() + " in its surroundings", "the data sheet of the cable, \u201ccurrent rating\u201d, with the temperature it holds at");
    }
}
