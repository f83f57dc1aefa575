package loomwright.along;

import java.util.HashMap;
import java.util.Map;
import loomwright.worked.Pairs;

/**
 * How what was brought joins what a device keeps already. Nothing that is kept is lost: rungs climbed and lessons read are those of both; a circuit that
 * is not here yet gets a place of its own; of everything else what this device has stays, and what it has not is taken.
 *
 * @param changes what is to be kept anew, by name
 * @param fault why nothing can be joined and what to do, or null
 * @param words what was done, in a sentence
 */
public record Joining(Map<String, String> changes, String fault, String words) {
    /** Joins. */
    public static Joining of(Belongings here, Belongings brought) {
        Map<String, String> all = new HashMap<>(here.kept());
        Map<String, String> changes = new HashMap<>();
        int circuits = 0;
        int marks = 0;
        int others = 0;
        for (String name : brought.kept().keySet()) {
            String text = brought.kept().get(name);
            if (name.equals(Belongings.PROGRESS)) {
                String mine = all.containsKey(name) ? all.get(name) : "";
                String joined = joined(mine, text);
                marks = count(joined) - count(mine);
                put(name, marks > 0 ? joined : null, all, changes);
            } else if (isCircuit(name)) {
                if (!holds(all, text)) {
                    String place = place(name, all);
                    if (place == null) {
                        return new Joining(
                                Pairs.of(), "All " + Belongings.PLACES + " places for circuits are taken on this device: remove one on the page \u201cYour circuit\u201d, then open the file again. Nothing was changed.", "");
                    }
                    put(place, text, all, changes);
                    circuits++;
                }
            } else if (!all.containsKey(name)) {
                put(name, text, all, changes);
                others++;
            }
        }
        String words = changes.isEmpty()
                ? "Everything in the file is here already."
                : "Taken: " + counted(marks, "rung or lesson", "rungs and lessons") + ", " + counted(circuits, "circuit", "circuits") + ", "
                        + counted(others, "other thing", "other things") + ". What was here stays.";
        return new Joining(changes, null, words);
    }

    private static String counted(int number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    private static void put(String name, String text, Map<String, String> all, Map<String, String> changes) {
        if (text != null) {
            all.put(name, text);
            changes.put(name, text);
        }
    }

    private static boolean isCircuit(String name) {
        for (int place = 1; place <= Belongings.PLACES; place++) {
            if (name.equals(named(place))) {
                return true;
            }
        }
        return false;
    }

    private static boolean holds(Map<String, String> all, String text) {
        for (int place = 1; place <= Belongings.PLACES; place++) {
            if (text.equals(all.get(named(place)))) {
                return true;
            }
        }
        return false;
    }

    /** The place it had, if that is free here, else the first that is; null if none is. */
    private static String place(String name, Map<String, String> all) {
        if (!all.containsKey(name)) {
            return name;
        }
        for (int place = 1; place <= Belongings.PLACES; place++) {
            if (!all.containsKey(named(place))) {
                return named(place);
            }
        }
        return null;
    }

    private static String named(int place) {
        return place == 1 ? Belongings.CIRCUIT : Belongings.CIRCUIT + "-" + place;
    }

    /** The words of both, each once. */
    private static String joined(String mine, String other) {
        StringBuilder all = new StringBuilder(mine.strip());
        int from = 0;
        while (from < other.length()) {
            int end = other.indexOf(' ', from);
            end = end < 0 ? other.length() : end;
            String word = other.substring(from, end);
            if (!word.isEmpty() && (" " + all + " ").indexOf(" " + word + " ") < 0) {
                all.append(all.length() == 0 ? "" : " ").append(word);
            }
            from = end + 1;
        }
        return all.toString();
    }

    private static int count(String words) {
        int count = 0;
        for (int i = 0; i < words.length(); i++) {
            count += words.charAt(i) != ' ' && (i == 0 || words.charAt(i - 1) == ' ') ? 1 : 0;
        }
        return count;
    }
}
