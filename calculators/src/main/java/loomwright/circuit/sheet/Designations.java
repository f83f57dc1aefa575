package loomwright.circuit.sheet;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;

/**
 * Short designations of the parts, such as {@code W3}: a letter for the kind and a number along the way from the battery.
 *
 * <p>A name that begins with a designation of the reader's own keeps it: {@code F1 Fuse-link of the outlet}. A run may begin with the two
 * numbers of its conductors, positive first: {@code 4/6 Run to the outlet}.
 */
public final class Designations {
    private static final int MOST_DIGITS = 3;

    private final Circuit circuit;
    private final Map<String, String> designations = new HashMap<>();
    private final Set<String> own = new HashSet<>();

    private Designations(Circuit circuit) {
        this.circuit = circuit;
        Set<String> taken = new HashSet<>();
        for (Part part : circuit.parts()) {
            String given = given(part);
            if (!given.isEmpty() && taken.add(given)) {
                designations.put(part.id(), given);
                own.add(part.id());
            }
        }
        number(taken);
    }

    public static Designations of(Circuit circuit) {
        return new Designations(circuit);
    }

    private void number(Set<String> taken) {
        int[] counts = new int[PartKind.values().length];
        for (Part part : circuit.parts()) {
            while (!designations.containsKey(part.id())) {
                String next = letter(part.kind()) + ++counts[part.kind().ordinal()];
                if (!taken.contains(next)) {
                    designations.put(part.id(), next);
                }
            }
        }
    }

    /** The designation a name begins with, or an empty text. */
    private static String given(Part part) {
        int space = part.name().indexOf(' ');
        String word = space < 0 ? "" : part.name().substring(0, space);
        int slash = word.indexOf('/');
        if (slash > 0) {
            boolean pair = part.kind() == PartKind.CONDUCTOR && isNumber(word.substring(0, slash)) && isNumber(word.substring(slash + 1));
            return pair ? word : "";
        }
        boolean lettered = word.length() > 1 && word.charAt(0) >= 'A' && word.charAt(0) <= 'Z' && isNumber(word.substring(1));
        return lettered ? word : "";
    }

    private static boolean isNumber(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return !text.isEmpty() && text.length() <= MOST_DIGITS;
    }

    private static String letter(PartKind kind) {
        return switch (kind) {
            case SUPPLY -> "G";
            case PANEL -> "P";
            case PROTECTION -> "F";
            case ISOLATOR -> "Q";
            case SWITCH -> "K";
            case CONDUCTOR -> "W";
            case JOINT -> "J";
            case LOAD -> "E";
            case SOURCE -> "G";
        };
    }

    /** The designation of a part. */
    public String of(String partId) {
        return designations.get(partId);
    }

    /** What a part is called without its designation. */
    public String title(String partId) {
        String title = circuit.part(partId).title();
        return own.contains(partId) ? title.substring(of(partId).length()).strip() : title;
    }

    /** Designation and title, such as {@code W3 Run to the bench}. */
    public String titled(String partId) {
        return of(partId) + " " + title(partId);
    }

    /** What stands on a label for where a conductor ends, short or with its title; null is an open end. */
    String end(Node at, boolean positive, boolean withTitle) {
        if (at == null) {
            return "its open end";
        }
        if (positive) {
            return withTitle ? titled(at.id()) : of(at.id());
        }
        String title = withTitle && at.kind().feeds() ? ", by a negative busbar if there is one" : withTitle ? " " + title(at.id()) : "";
        return switch (at.kind()) {
            case CONDUCTOR -> conductor(at.id(), false) + title;
            case LOAD, SOURCE -> of(at.id()) + title;
            default -> "negative of " + of(at.id()) + title;
        };
    }

    /** One conductor of a run: {@code W3 +}, or {@code 4 +} where the two have numbers of their own. */
    String conductor(String partId, boolean positive) {
        String both = of(partId);
        int slash = both.indexOf('/');
        String one = slash < 0 ? both : positive ? both.substring(0, slash) : both.substring(slash + 1);
        return one + (positive ? " +" : " \u2212");
    }
}
