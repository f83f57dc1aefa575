package loomwright.conductor;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;
import loomwright.worked.Refusal;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** What a conductor may carry where it lies, step by step: the same fields, the same rule and the same words in every calculator that asks for it. */
public final class CapacitySteps {
    private CapacitySteps() {}

    /** The fields of what decides it besides the size; the last takes a data sheet's word in place of all of them. */
    public static List<Field> fields() {
        List<Field> fields = new ArrayList<>(List.of(
                Insulation.field(Insulation.values()), AmpacityFields.AMBIENT, AmpacityFields.TOGETHER, AmpacityFields.ENGINE_SPACE,
                AmpacityRuleSet.field(), AmpacityFields.OWN_FACTOR));
        fields.add(sheetField());
        return List.copyOf(fields);
    }

    /** The field that takes the ampacity from a data sheet. */
    public static QuantityField sheetField() {
        return AmpacityFields.SHEET;
    }

    /**
     * The steps from the size entered to what the conductor may carry; or, if it is not rated, to what it is known to be below.
     *
     * @throws Refusal if it may carry nothing where it lies
     */
    public static CarryingCapacity show(Entries entries, WorkingBuilder working) {
        Quantity size = entries.quantity("size");
        if (entries.has(AmpacityFields.SHEET.key())) {
            Quantity sheet = working.convert(
                    "Turn the ampacity into amperes", entries.quantity(AmpacityFields.SHEET.key()), Units.AMPERE, "Ratings are in amperes.");
            return CarryingCapacity.bySheet(size, sheet, Source.of(Document.COMPUTED, "the ampacity entered, from the data sheet of the cable"));
        }
        return showByTable(entries, working);
    }

    static CarryingCapacity showByTable(Entries entries, WorkingBuilder working) {
        Quantity size = entries.quantity("size");
        Surroundings around = Surroundings.of(entries);
        CarryingCapacity capacity = CarryingCapacity.of(size, AmpacityRuleSet.of(entries.option("rule-set")), around).times(entries.quantity("own-factor"));
        if (capacity.kind() == CarryingCapacity.Kind.NOTHING) {
            throw new Refusal(
                    "ambient",
                    "Temperature around the conductor is as high as its insulation may get, " + around.insulation().rating().text()
                            + ", so it can carry nothing there: choose another way for it, or better insulation");
        }
        StandInStep.show(working, size, capacity.rated().row());
        capacity.rated().show(working, capacity.isRated());
        return capacity;
    }

    /**
     * A current through a conductor of which nobody said how it lies, for calculators that ask for something else: silent while a careful person would let it flow, a
     * stop where no cable for vehicles and boats carries it.
     */
    public static void overload(WorkingBuilder working, ConductorKind kind, Quantity size, Quantity current) {
        Quantity copper = ConductorFigures.copper(kind, size);
        CarryingCapacity careful = CarryingCapacity.of(copper, AmpacityRuleSet.BOAT, Surroundings.unsaid(Insulation.T60));
        CarryingCapacity best = CarryingCapacity.of(copper, AmpacityRuleSet.BOAT, new Surroundings(Insulation.T105, false, null, 2, Quantity.of(12, Units.VOLT)));
        Comparison most = held(current, best, " with insulation for 105\u00a0°C, at 30\u00a0°C").otherwise(
                Verdict.STOP, "Take a thicker conductor: drop or not, this one gets too hot.");
        Comparison least = held(current, careful, "").assuming(careful.assumed()).otherwise(
                Verdict.CAUTION, "Work out its ampacity as it lies before anything else, or take a thicker conductor.");
        if (!most.holds() || !least.holds()) {
            working.finding((most.holds() ? least : most).finding());
        }
    }

    private static Comparison held(Quantity current, CarryingCapacity capacity, String how) {
        return Comparison.of("The current", current.in(Units.AMPERE)).atMost(capacity.value(), capacity.name() + how, capacity.source()).exact();
    }

    /** What was said of what decides it, for the question that follows: so the fuse-link is chosen for the conductor as it lies. */
    static Map<String, String> carried(Entries entries) {
        Map<String, String> carried = new HashMap<>();
        for (String key : new String[] {"ambient", "conductors-together", "own-factor"}) {
            if (entries.has(key) && !entries.isAssumed(key)) {
                carried.put(key, entries.quantity(key).text());
            }
        }
        for (String key : new String[] {"rule-set", "insulation-temperature", "engine-space"}) {
            if (!entries.isAssumed(key)) {
                carried.put(key, entries.choice(key));
            }
        }
        return carried;
    }

    /** What the figure takes for granted, or what stood in for a row or a place that no table lists. */
    public static void findings(Entries entries, WorkingBuilder working, CarryingCapacity capacity) {
        if (capacity.isUnbelievable()) {
            working.finding(capacity.believable().finding());
        }
        if (capacity.isByTable()) {
            AmpacityFindings.place(working, AmpacityRuleSet.of(entries.option("rule-set")), Surroundings.of(entries), capacity);
        }
    }

    /** The known mistakes on the way to it, for a calculator that answers {@code ampacity}. */
    public static void slips(WorkingBuilder working, CarryingCapacity capacity) {
        if (capacity.isByTable() && capacity.isRated()) {
            AmpacitySlips.add(working, capacity.rated(), capacity.value());
        }
    }
}
