package loomwright.handout;

import java.util.ArrayList;
import java.util.List;

/**
 * The code on a sheet: which questions, which seed, which person. It can be read aloud and typed: groups of four, no letter that looks like a
 * digit, and a last character that catches one wrong character or two that changed places.
 */
public final class SheetCode {
    /** The largest seed a code can carry. */
    public static final int LARGEST_SEED = 9999;
    /** The most people a code can tell apart. */
    public static final int MOST_PEOPLE = 500;

    /** A prime number of signs, so that the weighted sum finds every exchange. */
    private static final String SIGNS = "0123456789ABCDEFGHJKMPQRSTUWXYZ";

    private static final int BASE = SIGNS.length();
    private static final int HEAD = 4;
    private static final int PERSON = 2;
    private static final int SHORTEST = HEAD + PERSON + 3;
    private static final int LONGEST = 150;

    private SheetCode() {}

    /**
     * What a code says.
     *
     * @param selection the questions, or null if the code cannot be read
     * @param fault what is wrong and what to do, or null
     */
    public record Reading(Selection selection, int seed, int person, String fault) {
        static Reading fault(String fault) {
            return new Reading(null, 0, 0, fault);
        }
    }

    /** The code of a person's sheet. */
    public static String of(Selection selection, int seed, int person) {
        StringBuilder out = new StringBuilder();
        int asked = selection.each() == Selection.SINGLE || !selection.alike() ? selection.each() : selection.each() + Selection.ALL;
        append(out, seed + (LARGEST_SEED + 1) * asked, HEAD);
        append(out, person, PERSON);
        out.append(SIGNS.charAt(selection.fingerprint() % BASE));
        if (selection.each() == Selection.SINGLE) {
            for (int place : selection.places()) {
                append(out, place, 2);
            }
        } else {
            long lessons = 0;
            for (int place : selection.places()) {
                lessons |= 1L << place;
            }
            int length = 1;
            for (long rest = lessons / BASE; rest > 0; rest /= BASE) {
                length++;
            }
            append(out, lessons, length);
        }
        return grouped(out.append(check(out)).toString());
    }

    /** Reads a code that someone typed: small letters, blanks and dashes do not matter. */
    public static Reading read(String typed, List<LessonQuestions> lessons) {
        String code = squeezed(typed);
        if (code.isEmpty()) {
            return Reading.fault("The code is empty: it stands at the top of the sheet, right of the name.");
        }
        for (int i = 0; i < code.length(); i++) {
            if (SIGNS.indexOf(code.charAt(i)) < 0) {
                return Reading.fault("A code has no \u201c" + code.charAt(i) + "\u201d in it: compare it with the sheet.");
            }
        }
        if (code.length() < SHORTEST || code.length() > LONGEST) {
            return Reading.fault("The code has " + code.length() + " characters, which is too " + (code.length() < SHORTEST ? "few" : "many")
                    + ": compare it with the sheet.");
        }
        String body = code.substring(0, code.length() - 1);
        if (check(body) != code.charAt(code.length() - 1)) {
            return Reading.fault("One character of the code is wrong, or two changed places: compare it with the sheet, group by group.");
        }
        return read(body, lessons, (int) number(body, 0, HEAD), (int) number(body, HEAD, HEAD + PERSON));
    }

    private static Reading read(String body, List<LessonQuestions> lessons, int head, int person) {
        int asked = head / (LARGEST_SEED + 1);
        boolean alike = asked > Selection.ALL;
        int each = alike ? asked - Selection.ALL : asked;
        String chosen = body.substring(HEAD + PERSON + 1);
        List<Integer> places = each == Selection.SINGLE ? pairs(chosen) : bits(chosen);
        int most = each == Selection.SINGLE ? Selection.all(lessons).size() : lessons.size();
        boolean known = each <= Selection.ALL && person >= 1 && person <= MOST_PEOPLE && !places.isEmpty();
        for (int place : places) {
            known &= place < most;
        }
        if (known) {
            Selection selection = each == Selection.SINGLE ? Selection.ofQuestions(lessons, places) : Selection.ofLessons(lessons, places, each, alike);
            if (SIGNS.charAt(selection.fingerprint() % BASE) == body.charAt(HEAD + PERSON)) {
                return new Reading(selection, head % (LARGEST_SEED + 1), person, null);
            }
        }
        return Reading.fault("This sheet was made with another edition of the lessons: open the edition it was made with, or ask for the answer key.");
    }

    private static List<Integer> pairs(String text) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i + 1 < text.length(); i += 2) {
            places.add((int) number(text, i, i + 2));
        }
        return places;
    }

    private static List<Integer> bits(String text) {
        long bits = text.length() > 12 ? 0 : number(text, 0, text.length());
        List<Integer> places = new ArrayList<>();
        for (int place = 0; place < 60; place++) {
            if ((bits >>> place & 1) == 1) {
                places.add(place);
            }
        }
        return places;
    }

    private static long number(String text, int from, int to) {
        long number = 0;
        for (int i = from; i < to; i++) {
            number = number * BASE + SIGNS.indexOf(text.charAt(i));
        }
        return number;
    }

    private static void append(StringBuilder out, long number, int length) {
        int at = out.length();
        long rest = number;
        for (int i = 0; i < length; i++) {
            out.insert(at, SIGNS.charAt((int) (rest % BASE)));
            rest /= BASE;
        }
    }

    private static char check(CharSequence body) {
        int sum = 0;
        for (int i = 0; i < body.length(); i++) {
            // Weights 1 to 30 over and over: none is a multiple of the number of signs, and neighbours differ.
            sum += (i % (BASE - 1) + 1) * SIGNS.indexOf(body.charAt(i));
        }
        return SIGNS.charAt(sum % BASE);
    }

    private static String grouped(String code) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < code.length(); i++) {
            out.append(i > 0 && i % 4 == 0 ? "-" : "").append(code.charAt(i));
        }
        return out.toString();
    }

    private static String squeezed(String typed) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < typed.length(); i++) {
            char c = typed.charAt(i);
            if (c >= 'a' && c <= 'z') {
                c = (char) (c - 'a' + 'A');
            }
            c = c == 'O' ? '0' : c == 'I' || c == 'L' ? '1' : c;
            if (c > ' ' && c != '-' && c != '\u00a0' && c != '\u2013' && c != '.') {
                out.append(c);
            }
        }
        return out.toString();
    }
}
