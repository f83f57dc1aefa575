package loomwright.circuit.file;

import java.util.ArrayList;
import java.util.List;

/**
 * Cells of text as one text of letters, digits and {@code - . _ ~} only, which no link program changes.
 *
 * <p>A space becomes {@code _}; the end of a cell {@code ~.}; anything else that a link cannot carry {@code ~} and two hexadecimal digits,
 * or {@code ~u} and four. Four characters of a sum over the rest come first, so that a cut or changed link is noticed.
 */
final class LinkText {
    private static final int SUM_DIGITS = 4;
    private static final int SUM_MODULUS = 65_521;

    private LinkText() {}

    static String of(List<String> cells) {
        StringBuilder text = new StringBuilder();
        for (String cell : cells) {
            append(text, cell);
            text.append("~.");
        }
        return sum(text) + text;
    }

    private static void append(StringBuilder text, String cell) {
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '-' || c == '.') {
                text.append(c);
            } else if (c == ' ') {
                text.append('_');
            } else {
                text.append(c < 0x100 ? "~" + Utf8.hex(c, 2) : "~u" + Utf8.hex(c, 4));
            }
        }
    }

    /** The cells in a link; null if it was cut or changed. */
    static List<String> cells(String link) {
        if (link.length() < SUM_DIGITS || !sum(link.substring(SUM_DIGITS)).equals(link.substring(0, SUM_DIGITS))) {
            return null;
        }
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        int at = SUM_DIGITS;
        while (at < link.length()) {
            char c = link.charAt(at++);
            if (c != '~') {
                cell.append(c == '_' ? ' ' : c);
            } else if (at < link.length() && link.charAt(at) == '.') {
                cells.add(cell.toString());
                cell.setLength(0);
                at++;
            } else {
                int digits = at < link.length() && link.charAt(at) == 'u' ? 4 : 2;
                at += digits == 4 ? 1 : 0;
                int unit = unit(link, at, digits);
                if (unit < 0) {
                    return null;
                }
                cell.append((char) unit);
                at += digits;
            }
        }
        return cell.length() == 0 ? cells : null;
    }

    private static int unit(String link, int from, int digits) {
        int unit = 0;
        for (int i = from; i < from + digits; i++) {
            int digit = i < link.length() ? Utf8.hexDigit(link.charAt(i)) : -1;
            if (digit < 0) {
                return -1;
            }
            unit = unit * 16 + digit;
        }
        return unit;
    }

    /** A running double sum, so that a change of order is noticed too. source: Adler-32 of RFC 1950, folded to 16 bits. */
    static String sum(CharSequence text) {
        int one = 1;
        int other = 0;
        for (int i = 0; i < text.length(); i++) {
            one = (one + text.charAt(i)) % SUM_MODULUS;
            other = (other + one) % SUM_MODULUS;
        }
        return Utf8.hex((one * 31 + other) & 0xffff, SUM_DIGITS);
    }
}
