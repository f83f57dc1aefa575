package loomwright.generator.problem;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Finds what an author most likely meant by a word nobody knows. */
public final class Nearest {
    private static final int MOST_LISTED = 12;
    private static final int SHORTEST_BEGINNING = 4;

    private Nearest() {}

    /** A remedy: the nearest known word, or the list of known words if none is near. */
    public static String remedy(String word, Collection<String> known) {
        String nearest = to(word, known);
        if (nearest != null) {
            return "Did you mean \"" + nearest + "\"?";
        }
        if (known.isEmpty()) {
            return "There is none here yet.";
        }
        List<String> listed = new ArrayList<>(known);
        String end = listed.size() > MOST_LISTED ? " and " + (listed.size() - MOST_LISTED) + " more." : ".";
        return "Use one of: " + String.join(", ", listed.subList(0, Math.min(MOST_LISTED, listed.size()))) + end;
    }

    /** The known word that differs in the fewest letters, or null if every one differs in too many. */
    public static String to(String word, Collection<String> known) {
        String nearest = null;
        int least = Math.max(1, word.length() / 3) + 1;
        for (String each : known) {
            int distance = isBeginning(word, each) ? 1 : distance(word, each, least);
            if (distance < least) {
                least = distance;
                nearest = each;
            }
        }
        return nearest;
    }

    private static boolean isBeginning(String word, String known) {
        return word.length() >= SHORTEST_BEGINNING && known.startsWith(word);
    }

    /** Letters to put in, take out, change or swap; counting stops at {@code limit}. */
    private static int distance(String from, String to, int limit) {
        if (Math.abs(from.length() - to.length()) >= limit) {
            return limit;
        }
        int[][] cost = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : step(cost, from, to, i, j);
            }
        }
        return cost[from.length()][to.length()];
    }

    private static int step(int[][] cost, String from, String to, int i, int j) {
        boolean same = from.charAt(i - 1) == to.charAt(j - 1);
        int least = Math.min(cost[i - 1][j - 1] + (same ? 0 : 1), 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
    }
}
