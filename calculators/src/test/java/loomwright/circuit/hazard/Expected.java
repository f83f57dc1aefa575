package loomwright.circuit.hazard;

import java.util.Map;

/**
 * What the examination is known to miss, or to say too much. Each entry is a fault of the program that is to be mended: then the test asks
 * for the entry to be lowered, and at nought to be removed. No entry may grow.
 */
final class Expected {
    /** When every field exists, a kind that cannot be planted fails the test as well. */
    static final boolean ALL_EXPRESSIBLE = false;

    /** The most cautions that a right circuit may draw. */
    static final int MOST_CAUTIONS = 3;

    /** By kind of mistake: how many planted ones no finding names. */
    static final Map<String, Integer> MISSED = Map.ofEntries(
            Map.entry("too-thin-for-any-table", 22),
            Map.entry("warm-place", 29),
            Map.entry("hotter-than-insulation", 51),
            Map.entry("far-larger-device", 6),
            Map.entry("way-above-feed", 21),
            Map.entry("not-selective", 9),
            Map.entry("breaker-loaded-as-a-fuse", 1),
            Map.entry("fault-opens-late", 6),
            Map.entry("load-on-the-battery", 30),
            Map.entry("panel-on-the-battery", 8),
            Map.entry("no-isolator", 9),
            Map.entry("device-above-panel", 8),
            Map.entry("device-above-switch", 12),
            Map.entry("device-above-isolator", 9),
            Map.entry("bad-joint", 5),
            Map.entry("small-switch-for-motor", 4),
            Map.entry("trigger-wire-thin", 2),
            Map.entry("trigger-fuse-large", 4),
            Map.entry("charging-voltage", 9),
            Map.entry("12-v-load-on-24-v", 4),
            Map.entry("24-v-load-on-12-v", 26),
            Map.entry("start-opens-the-device", 7),
            Map.entry("standing-draw", 7));

    /** By right circuit: cautions, where there are more than {@link #MOST_CAUTIONS}. */
    static final Map<String, Integer> CAUTIONS = Map.ofEntries(
            Map.entry("camper", 8),
            Map.entry("survey-boat", 6),
            Map.entry("trailer-with-relay", 6),
            Map.entry("hide-trailer", 4),
            Map.entry("reed-hut", 6),
            Map.entry("work-boat-24-v", 5),
            Map.entry("launch", 4));

    /** By right circuit: stops. */
    static final Map<String, Integer> STOPS = Map.of();

    /** By kind of mistake: how many pieces of advice, followed, leave their finding standing. */
    static final Map<String, Integer> ADVICE_THAT_FAILS = Map.of();

    /** By kind of mistake: how many pieces of advice, followed, make another finding worse. */
    static final Map<String, Integer> ADVICE_THAT_HARMS = Map.ofEntries(
            Map.entry("bundle-of-24", 5),
            Map.entry("too-thin-for-any-table", 6),
            Map.entry("longer-run", 4),
            Map.entry("fault-cannot-open", 4),
            Map.entry("panel-overloaded", 1),
            Map.entry("thinner-conductor", 4),
            Map.entry("fault-opens-late", 6));

    private Expected() {}

    /** Complaints about counts that differ from their entries; what is worse than known, and what is better and has to leave the table. */
    static void hold(String table, Map<String, Integer> known, Map<String, Integer> counted) {
        StringBuilder complaints = new StringBuilder();
        counted.forEach((key, count) -> {
            int entry = known.getOrDefault(key, 0);
            if (count > entry) {
                complaints.append("\n  ").append(key).append(": ").append(count).append(", known are ").append(entry);
            } else if (count < entry) {
                complaints.append("\n  ").append(key).append(": better than its entry of ").append(entry)
                        .append(count == 0 ? ", remove the entry" : ", write " + count);
            }
        });
        known.keySet().stream().filter(key -> !counted.containsKey(key)).forEach(
                key -> complaints.append("\n  ").append(key).append(": counted no more, remove the entry"));
        if (complaints.length() > 0) {
            throw new AssertionError("Expected." + table + ":" + complaints);
        }
    }
}
