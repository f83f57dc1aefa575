package loomwright.plan.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.plan.Chosen;
import loomwright.plan.Plan;

/** What became different in a plan when an answer changed. */
public final class Difference {
    private Difference() {}

    /** In sentences; empty if nothing a reader buys or does became different. */
    public static List<String> between(Plan before, Plan after) {
        if (before.circuit() == null || after.circuit() == null) {
            boolean same = before.circuit() == after.circuit();
            return same ? List.of() : List.of(after.circuit() == null ? "There is no circuit for these answers now." : "Now there is a circuit.");
        }
        List<String> words = new ArrayList<>();
        for (Chosen now : after.chosen()) {
            if (!has(before.chosen(), now.what())) {
                Chosen was = alike(before.chosen(), now, after.chosen());
                words.add(was == null ? "New: " + now.what() + "." : was.what() + " became " + now.what() + ".");
            }
        }
        for (Chosen was : before.chosen()) {
            if (!has(after.chosen(), was.what()) && alike(after.chosen(), was, before.chosen()) == null) {
                words.add("No more: " + was.what() + ".");
            }
        }
        return words;
    }

    private static boolean has(List<Chosen> chosen, String what) {
        for (Chosen each : chosen) {
            if (each.what().equals(what)) {
                return true;
            }
        }
        return false;
    }

    /** The choice of the same subject that the others have lost. */
    private static Chosen alike(List<Chosen> among, Chosen one, List<Chosen> others) {
        for (Chosen each : among) {
            if (subject(each).equals(subject(one)) && !has(others, each.what())) {
                return each;
            }
        }
        return null;
    }

    /** What stands before the colon. */
    private static String subject(Chosen chosen) {
        int colon = chosen.what().indexOf(':');
        return colon < 0 ? chosen.what() : chosen.what().substring(0, colon);
    }
}
