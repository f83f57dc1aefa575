package loomwright.circuit.hazard;

import java.util.Map;

/**
 * What the examination is known to miss, or to say too much. Each entry is a fault of the program that is to be mended: then the test asks
 * for the entry to be lowered, and at nought to be removed. No entry may grow.
 */
final class Expected {
    /** When every field exists, a kind that cannot be planted fails the test as well. */
    static final boolean ALL_EXPRESSIBLE = true;

    /** The most cautions that a right circuit may draw. */
    static final int MOST_CAUTIONS = 3;

    /** By kind of mistake: how many planted ones no finding names. */
    static final Map<String, Integer> MISSED = Map.of();

    /** By right circuit: cautions, where there are more than {@link #MOST_CAUTIONS}. */
    static final Map<String, Integer> CAUTIONS = Map.of();

    /** By right circuit: stops. */
    static final Map<String, Integer> STOPS = Map.of();

    /** By kind of mistake: how many pieces of advice, followed, leave their finding standing. */
    static final Map<String, Integer> ADVICE_THAT_FAILS = Map.of();

    /** By kind of mistake: how many pieces of advice, followed, make another finding worse. */
    static final Map<String, Integer> ADVICE_THAT_HARMS = Map.of();

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
