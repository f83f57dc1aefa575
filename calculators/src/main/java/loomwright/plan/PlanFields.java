package loomwright.plan;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.PartKind;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.Option;
import loomwright.worked.QuantityField;

/** What is asked. Every question may be left open; then the careful value is taken, and the plan says so. */
public final class PlanFields {
    static final String NOT_KNOWN = "not-known";
    private static final Option OPEN = new Option(NOT_KNOWN, "I don\u2019t know");

    /** What is asked of each thing that is fitted. */
    public static final List<Field> ITEM = List.of(
            ItemKind.CHOICES.field("kind", "What do you fit?", "Things that are alike and go to one place are one line."),
            QuantityField.of("how-many", "How many?", "Several lights hang on one run. Everything else gets a run and a fuse-link each.", 1, 12, Units.ONE)
                    .usually("1"),
            QuantityField.of(
                            "draws", "What does one of them take?",
                            "From its label: watts or amperes. Of a USB outlet the watts of all its ports together.", 0.1, 2000, Units.WATT)
                    .orElse(0.01, 200, Units.AMPERE, Units.MILLIAMPERE)
                    .optional(),
            QuantityField.of("hours", "How long is it on in a day?", "Three hours and more count as lasting.", 0, 24, Units.HOUR, Units.MINUTE).optional(),
            QuantityField.of(
                            "start", "What does it take at its start?", "Of a motor, from its data sheet: for a moment it takes several times as much.", 0.1, 500,
                            Units.AMPERE)
                    .optional(),
            QuantityField.of(
                            "most-device", "Largest fuse its sheet allows", "\u201cMax. fuse\u201d in its data sheet, or the rated current of an outlet.", 0.5, 200,
                            Units.AMPERE)
                    .optional(),
            QuantityField.of(
                            "route", "How far is it, along the real route?",
                            "From the panel or fuse box that feeds it, up and down and round corners. One way.", 0.1, 60, Units.METRE, Units.FEET)
                    .optional(),
            Situated.CHOICES.field("place", "Where does its cable run?", "The warmest piece counts."),
            Beside.CHOICES.field("beside", "What lies beside the cable?", "Cables that lie together warm each other."),
            ChoiceField.of(
                    "sheath", "What kind of cable?", "Two conductors in one sheath may be a little thinner than conductors by themselves.", OPEN,
                    new Option("sheath", "two conductors in one sheath"), new Option("single", "two single conductors")));

    /** What is asked once for the whole job. */
    public static final List<Field> JOB = job();

    private PlanFields() {}

    /** Whether a thing of that kind may take more at its start. */
    public static boolean mayStart(String kindKey) {
        ItemKind kind = ItemKind.CHOICES.named(kindKey);
        return kind != null && (kind.isMotor() || kind == ItemKind.OTHER);
    }

    private static List<Field> job() {
        List<Field> fields = new ArrayList<>();
        fields.add(ChoiceField.of(
                "craft", "What is it?", "It decides what is taken for a length that you do not know.", OPEN, new Option("trailer", "a trailer or camper"),
                new Option("boat", "a boat"), new Option("shed", "a shed or hut")));
        fields.add(ChoiceField.of(
                "cable", "How is cable sold where you are?", "A size in one world is never the same as in the other.", new Option("mm2", "by mm²"),
                new Option("awg", "by AWG")));
        fields.add(ChoiceField.of(
                "feed", "Where is it fed from?", "A way is a place for one fuse-link.", OPEN,
                new Option("battery", "a circuit of its own from the battery"), new Option("panel", "free ways of a fuse panel that is there")));
        fields.add(QuantityField.of("free-ways", "How many ways are free?", "Empty clips with nothing behind them.", 0, 40, Units.ONE).optional());
        fields.add(amperes("panel-limit", "What may the panel carry in all?", "Printed on it, or in its data sheet."));
        fields.add(QuantityField.of(
                        "present-load", "What is on it already?", "All that may be on at once, added up.", 0, 500, Units.AMPERE)
                .optional());
        fields.add(amperes("feed-rating", "Rating of the fuse-link or breaker of its feed", "The one between battery and panel."));
        fields.add(size("feed-size", "Size of the feed", "Printed on the cable between battery and panel."));
        fields.add(route("feed-route", "How far is the panel from the battery?", "Along the cable, one way."));
        fields.add(route("box-route", "How far is the new fuse box from the battery?", "Only if you fit more than one thing. Along the cable, one way."));
        fields.add(ChoiceField.of(
                "chemistry", "Which battery?", "Printed on it. AGM and gel are lead-acid.", OPEN, new Option("lifepo4", "LiFePO4"),
                new Option("lead-acid", "lead-acid")));
        fields.add(optional("capacity"));
        fields.add(optional("short-circuit-current"));
        fields.add(optional("battery-limit"));
        fields.add(optional("panel-power"));
        fields.add(optional("peak-sun-hours"));
        fields.add(optional("days-wanted"));
        fields.add(ChoiceField.of(
                "switched", "Must it go dead with a switch of its own?", "Besides the isolating switch near the battery, which every plan has.", OPEN,
                new Option("no", "no"), new Option("yes", "yes")));
        fields.add(route("switch-route", "How far is that switch from the fuses?", "Along the wire, one way."));
        return List.copyOf(fields);
    }

    private static QuantityField amperes(String key, String label, String help) {
        return QuantityField.of(key, label, help, 0.5, 500, Units.AMPERE).optional();
    }

    private static QuantityField route(String key, String label, String help) {
        return QuantityField.of(key, label, help, 0.1, 30, Units.METRE, Units.FEET).optional();
    }

    private static QuantityField size(String key, String label, String help) {
        return QuantityField.of(key, label, help, 0.3, 130, Units.SQUARE_MILLIMETRE, Units.AWG).optional();
    }

    /** The same field as of the battery of a circuit, which may be left open here. */
    private static QuantityField optional(String key) {
        return ((QuantityField) PartKind.SUPPLY.fields().get(PartKind.SUPPLY.indexOf(key))).optional();
    }
}
