package loomwright.picture;

import java.util.HashMap;
import java.util.Map;

/**
 * Advance widths of DejaVu Sans 2.37 in ems, to two decimals, and its bold face by the widest ratio of the two.
 *
 * <p>Typed from the metrics of the font, so that the estimate the drawings use is checked against something else than itself.
 */
public final class FaceWidths {
    private static final Map<Character, Double> EMS = new HashMap<>();
    private static final double BOLD = 1.13;

    static {
        set(0.20, "\u2009");
        set(0.27, "'");
        set(0.28, "ijl");
        set(0.29, "IJ");
        set(0.32, " \u00a0,.·’");
        set(0.34, "/:;\\|");
        set(0.35, "f");
        set(0.36, "-");
        set(0.39, "()[]t");
        set(0.40, "!²");
        set(0.41, "r");
        set(0.46, "\"");
        set(0.50, "*_°–");
        set(0.52, "sz“”");
        set(0.53, "?");
        set(0.55, "c");
        set(0.56, "L");
        set(0.58, "Fk");
        set(0.59, "vxy");
        set(0.60, "P");
        set(0.61, "TYao");
        set(0.62, "e");
        set(0.63, "ESbdghnpqu");
        set(0.64, "$0123456789{}µ√");
        set(0.66, "K");
        set(0.68, "AV");
        set(0.69, "BRXZ");
        set(0.70, "C");
        set(0.73, "U");
        set(0.75, "HN");
        set(0.76, "Ω");
        set(0.77, "DG");
        set(0.78, "&");
        set(0.79, "OQ");
        set(0.82, "w");
        set(0.84, "#+<=>−×≈≤≥→←÷");
        set(0.86, "M");
        set(0.95, "%");
        set(0.97, "m½");
        set(0.99, "W");
    }

    private FaceWidths() {}

    private static void set(double ems, String letters) {
        for (char letter : letters.toCharArray()) {
            EMS.put(letter, ems);
        }
    }

    static Map<Character, Double> all() {
        return Map.copyOf(EMS);
    }

    /** The width of a text, or a failure if it holds a letter whose width is not listed. */
    public static double width(String text, double size, boolean bold) {
        double sum = 0;
        for (char letter : text.toCharArray()) {
            if (!EMS.containsKey(letter)) {
                throw new AssertionError("no width is listed for \u201c" + letter + "\u201d in \u201c" + text + "\u201d");
            }
            sum += EMS.get(letter);
        }
        return sum * size * (bold ? BOLD : 1);
    }
}
