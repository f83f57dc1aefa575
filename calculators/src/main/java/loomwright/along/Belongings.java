package loomwright.along;

import java.util.HashMap;
import java.util.Map;
import loomwright.markup.Fragment;

/**
 * Everything that the pages keep for a reader, by the name it is kept under: rungs climbed and lessons read, circuits, and whatever else has the
 * prefix of the site. Its file has three lines: the format with its version, a number worked out from the rest that shows damage, and the entries.
 */
public final class Belongings {
    /** What every name that the site keeps begins with. */
    public static final String PREFIX = "loomwright-";
    /** No file of ours is larger: twelve circuits of the largest kind would be less. */
    public static final int MOST_LETTERS = 40_000_000;

    static final String PROGRESS = PREFIX + "progress";
    static final String CIRCUIT = PREFIX + "circuit";
    /** Places for circuits on a device. */
    static final int PLACES = 12;

    private static final String FORMAT = "loomwright work, version ";
    private static final int VERSION = 1;

    private final Map<String, String> kept;

    private Belongings(Map<String, String> kept) {
        this.kept = kept;
    }

    /** What a device keeps. Names without the prefix are somebody else's, and stay where they are. */
    public static Belongings of(Map<String, String> all) {
        Map<String, String> kept = new HashMap<>();
        for (String name : all.keySet()) {
            if (name.startsWith(PREFIX) && !all.get(name).isEmpty()) {
                kept.put(name, all.get(name));
            }
        }
        return new Belongings(kept);
    }

    /** By name. */
    public Map<String, String> kept() {
        return kept;
    }

    /** The file. */
    public String file() {
        String entries = Fragment.write(kept);
        return FORMAT + VERSION + "\n" + sum(entries) + "\n" + entries + "\n";
    }

    /**
     * What came of reading a file.
     *
     * @param belongings what it holds, or null
     * @param fault why it is refused and what to do, or null
     */
    public record Reading(Belongings belongings, String fault) {}

    /** Reads a file. Whatever is not whole is refused. */
    public static Reading read(String file) {
        String text = file.replace("\r", "").strip();
        if (text.isEmpty()) {
            return refused("The file is empty: choose the one that was downloaded on your other device.");
        }
        if (text.length() > MOST_LETTERS) {
            return refused("The file is far larger than one of ours: choose the one that was downloaded on your other device.");
        }
        if (!text.startsWith(FORMAT)) {
            return refused("This is no file of your work: its first line would be \u201c" + FORMAT + VERSION + "\u201d. Circuits by themselves are opened on the page \u201cYour circuit\u201d.");
        }
        int first = text.indexOf('\n');
        int second = text.indexOf('\n', first + 1);
        String version = text.substring(FORMAT.length(), first < 0 ? text.length() : first).strip();
        if (!version.equals(Integer.toString(VERSION))) {
            return refused("The file is of version " + shortened(version) + "; these pages read version " + VERSION + ". Open it with the newer pages it was made with.");
        }
        String entries = second < 0 ? "" : text.substring(second + 1).strip();
        if (second < 0 || !text.substring(first + 1, second).strip().equals(sum(entries))) {
            return refused("The file is damaged or cut short: download it once more on your other device.");
        }
        return new Reading(of(Fragment.read(entries)), null);
    }

    private static Reading refused(String fault) {
        return new Reading(null, fault);
    }

    private static String shortened(String text) {
        return text.length() > 12 ? text.substring(0, 12) + "\u2026" : text;
    }

    /** Two sums, each of which depends on every letter and its place. */
    private static String sum(String text) {
        int one = 7;
        int other = 11;
        for (int i = 0; i < text.length(); i++) {
            one = one * 31 + text.charAt(i);
            other = (other ^ text.charAt(i)) * 16777619;
        }
        return Integer.toString(one & 0x7fffffff) + "-" + Integer.toString(other & 0x7fffffff);
    }
}
