package loomwright.handout;

import java.util.List;
import java.util.Map;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/**
 * The story of a question with places for its numbers.
 *
 * <p>Only a story whose every number is one of the entries can be told with other numbers. One that quotes a publication, or says a number
 * in a word, would become untrue; it is left out, and the figures speak for themselves.
 */
public final class Scene {
    private static final List<String> QUOTES = List.of(
            "manual", "handbook", "book", "textbook", "lesson", "army", "navy", "note", "code", "rule", "example", "calculator", "the list", "the same", "compare", "lowest figure", "page", "print", "standard", "published", "guide", "sheet", "table", "says", "regulation", "maker",
            "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fifteen", "twenty", "thirty", "forty",
            "fifty", "hundred", "thousand", "half", "twice", "double",
            "both", "again", "still", "above", "before", "that answer", "this answer");

    private final String text;
    private final Calculator calculator;
    private final Map<String, String> given;
    private final StringBuilder out = new StringBuilder();
    private int at;

    private Scene(String text, Calculator calculator, Map<String, String> given) {
        this.text = text.replace('\u00a0', ' ').strip();
        this.calculator = calculator;
        this.given = given;
    }

    /** The story with a field's key in braces for each of its numbers, or an empty text if not every number is an entry. */
    public static String of(String text, Calculator calculator, Map<String, String> given) {
        Scene scene = new Scene(text, calculator, given);
        return scene.mayChange() && scene.exchange() ? scene.out.toString() : "";
    }

    /** The story with these entries. */
    public static String filled(String scene, Map<String, String> entries) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (int open = scene.indexOf('{'); open >= 0; open = scene.indexOf('{', from)) {
            int close = scene.indexOf('}', open);
            String entry = entries.get(scene.substring(open + 1, close)).strip();
            out.append(article(scene.substring(from, open), entry)).append(entry.replace(' ', '\u00a0'));
            from = close + 1;
        }
        return out.append(scene.substring(from)).toString();
    }

    /** Whether the story still reads well with these entries: "1 days" does not. */
    static boolean reads(String scene, Map<String, String> entries) {
        for (int open = scene.indexOf('{'); open >= 0; open = scene.indexOf('{', open + 1)) {
            int close = scene.indexOf('}', open);
            if (scene.startsWith("} ", close) && "1".equals(entries.get(scene.substring(open + 1, close)))) {
                return false;
            }
        }
        return true;
    }

    /** A 6 AWG cable, but an 8 AWG cable. */
    private static String article(String before, String entry) {
        int end = before.length();
        boolean vowel = entry.startsWith("8") || (entry.startsWith("11") || entry.startsWith("18")) && (entry.length() == 2 || entry.charAt(2) < '0');
        if (vowel && isWord(before, end - 2, "a ")) {
            return before.substring(0, end - 1) + "n ";
        }
        return !vowel && isWord(before, end - 3, "an ") ? before.substring(0, end - 2) + " " : before;
    }

    private static boolean isWord(String text, int at, String word) {
        return at >= 0 && text.substring(at).toLowerCase(java.util.Locale.ROOT).equals(word) && (at == 0 || text.charAt(at - 1) == ' ');
    }

    private boolean mayChange() {
        String small = ' ' + text.toLowerCase(java.util.Locale.ROOT) + ' ';
        for (String word : QUOTES) {
            int found = small.indexOf(word);
            if (found > 0 && !isLetter(small.charAt(found - 1))) {
                return false;
            }
        }
        return !text.isEmpty() && text.indexOf('{') < 0 && !small.startsWith(" and ");
    }

    private boolean exchange() {
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c < '0' || c > '9') {
                out.append(c);
                at++;
            } else if (at > 0 && (isLetter(text.charAt(at - 1)) || isSign(text.charAt(at - 1))) || !number()) {
                return false;
            }
        }
        return true;
    }

    /** Puts the one field whose entry stands here in the place of its number. */
    private boolean number() {
        int end = at;
        while (end < text.length() && isInNumber(text.charAt(end))) {
            end++;
        }
        while (text.charAt(end - 1) == '.' || text.charAt(end - 1) == ',') {
            end--;
        }
        int unitEnd = end < text.length() && text.charAt(end) == ' ' ? end + 1 : end;
        while (unitEnd < text.length() && isInUnit(text.charAt(unitEnd))) {
            unitEnd++;
        }
        Quantity quantity = QuantityText.read(text.substring(at, unitEnd), null).quantity();
        boolean bare = quantity == null;
        if (bare) {
            quantity = QuantityText.read(text.substring(at, end), Units.ONE).quantity();
        }
        String field = quantity == null ? null : fieldOf(quantity);
        if (field == null) {
            return false;
        }
        out.append('{').append(field).append('}');
        at = bare ? end : unitEnd;
        return true;
    }

    private String fieldOf(Quantity quantity) {
        String found = null;
        for (Field field : calculator.description().fields()) {
            String entry = given.get(field.key());
            if (field instanceof QuantityField asked && entry != null && isThe(quantity, entry, asked.units().get(0))) {
                if (found != null) {
                    return null;
                }
                found = field.key();
            }
        }
        return found;
    }

    private static boolean isThe(Quantity quantity, String entry, Unit assumed) {
        Quantity given = QuantityText.read(entry, assumed).quantity();
        return given != null && given.isSame(quantity);
    }

    private static boolean isInNumber(char c) {
        return c >= '0' && c <= '9' || c == '.' || c == ',' || c == '/';
    }

    private static boolean isInUnit(char c) {
        return isLetter(c) || c >= '0' && c <= '9' || c == '/' || c == '%' || c > 127 && c != '\u2013' && c != '\u2014' && c != '\u201d';
    }

    private static boolean isLetter(char c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
    }

    private static boolean isSign(char c) {
        return c == '-' || c == '\u2212' || c == '+' || c == '\u2013';
    }
}
