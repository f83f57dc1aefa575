package loomwright.supply;

import java.util.ArrayList;
import java.util.List;
import loomwright.protection.DeviceKind;
import loomwright.protection.RuleSet;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Field;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the calculator of a panel's headroom asks and answers. */
final class HeadroomFields {
    static final int WAYS = 6;
    private static final String[] NUMBERS = {"0", "1", "2", "3", "4", "5", "6"};

    private static final ChoiceField DEVICE = ChoiceField.of(
            "feed-device", "The feed is protected by", "For hours a breaker holds a smaller share of its rating than a fuse-link.",
            new Option("fuse-link", "a fuse-link"), new Option("breaker", "a breaker"));

    static final Description DESCRIPTION = new Description(
            "panel-headroom",
            "Headroom of the fuse panel",
            "Can the fuse panel and its feed take the new load as well?",
            List.of(
                    "Steady currents, each at the lowest voltage the load may see.",
                    "The new load counts in full: only the present loads share.",
                    "One way, its own fuse-link and its own cable are checked elsewhere; this is about the panel and its feed."),
            fields(),
            List.of(
                    new Output("current-after", "Current through the feed afterwards", Units.AMPERE),
                    new Output("headroom-after", "Headroom afterwards", Units.AMPERE),
                    new Output("current-now", "Current through the feed now", Units.AMPERE),
                    new Output("headroom-now", "Headroom now", Units.AMPERE),
                    new Output("tightest-limit", "Tightest limit", Units.AMPERE),
                    new Output("share-of-limit", "Share of the limit in use afterwards", Units.PERCENT),
                    new Output("current-at-start", "Current at the moment of the start", Units.AMPERE)),
            List.of(
                    new NamedFormula("now", HeadroomFormulas.NOW_TOGETHER),
                    new NamedFormula("after", HeadroomFormulas.AFTERWARDS),
                    new NamedFormula("headroom", HeadroomFormulas.ROOM_AFTERWARDS),
                    new NamedFormula("fuse-for-hours", HeadroomFormulas.FUSE_FOR_HOURS)));

    private HeadroomFields() {}

    /** The kind of device that protects the feed. */
    static DeviceKind device(Entries entries) {
        return entries.choice(DEVICE.key()).equals("breaker") ? DeviceKind.BREAKER : DeviceKind.BLADE;
    }

    static String way(int number) {
        return "way-" + NUMBERS[number] + "-current";
    }

    static String number(int number) {
        return NUMBERS[number];
    }

    private static List<Field> fields() {
        List<Field> fields = new ArrayList<>();
        for (int number = 1; number <= WAYS; number++) {
            String help = number == 1 ? "The steady current of what hangs on it. Leave spare ways empty." : "";
            fields.add(current(way(number), "Way " + NUMBERS[number] + ": current", help).optional());
        }
        fields.add(QuantityField.of(
                        "diversity", "Share of the present loads that draw together",
                        "100 % if everything may be on at once. A smaller share is your own judgement: write down why.", 1, 100, Units.PERCENT)
                .usually("100 %"));
        fields.add(current("new-current", "Current of the new load", "At the lowest voltage it may see."));
        fields.add(current("starting-extra", "Extra current at a start", "What the largest motor takes at its start above its running current.")
                .optional());
        fields.add(QuantityField.of(
                "panel-limit", "Limit of the panel", "Marked on the panel: for all ways together.", 0.5, 1000, Units.AMPERE));
        fields.add(QuantityField.of(
                        "feed-fuse", "Rating of the feed's device", "The fuse-link or breaker that protects the feed. Empty leaves it out.", 0.5, 1000, Units.AMPERE)
                .optional());
        fields.add(QuantityField.of(
                        "feed-ampacity", "Ampacity of the feed", "What the feed conductor may carry in its place. Empty leaves it out.", 0.5, 1000,
                        Units.AMPERE)
                .optional());
        fields.add(DEVICE);
        fields.add(RuleSet.field());
        fields.add(ChoiceField.of(
                "continuous", "It may all be on for 3 h or more", "A device carries less for hours than for minutes.", new Option("yes", "yes"),
                new Option("no", "no")));
        return List.copyOf(fields);
    }

    private static QuantityField current(String key, String label, String help) {
        return QuantityField.of(key, label, help, 0.001, 500, Units.AMPERE, Units.MILLIAMPERE);
    }
}
