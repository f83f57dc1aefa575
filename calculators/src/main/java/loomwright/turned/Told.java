package loomwright.turned;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.worked.Step;

/** The sentences of an answer. */
final class Told {
    private Told() {}

    static Turned none(Asking asking, String words) {
        return new Turned(Turned.Kind.NONE, asking.unknown(), asking.wish(), null, List.of(), List.of(), words);
    }

    /** What is asked about, as part of a sentence: {@code the voltage drop}. */
    static String subject(Wish wish) {
        return wish.output() == null ? "the verdict" : the(wish.output().label());
    }

    /** What is wanted, as the object of {@code gives}. */
    static String wanted(Wish wish) {
        return wish.output() == null ? "a working without a stop" : the(wish.output().label());
    }

    static String target(Wish wish) {
        return wish.output() == null ? "no check stops" : subject(wish) + " is " + (wish.atMost() ? "at most " : "at least ") + wish.limit().text();
    }

    /** A label of two parts is named as it stands on the page. */
    static String the(String label) {
        return label.indexOf(':') >= 0 ? "\u201c" + label + "\u201d" : label.startsWith("What ") ? small(label) : "the " + small(label);
    }

    /** A label inside a sentence; a name in capitals stays. */
    static String small(String label) {
        boolean name = label.length() > 1 && isCapital(label.charAt(1)) || !isCapital(label.charAt(0));
        return name ? label : (char) (label.charAt(0) - 'A' + 'a') + label.substring(1);
    }

    /** Words that begin with a small letter, as the start of a sentence. */
    static String capital(String words) {
        return words.charAt(0) < 'a' || words.charAt(0) > 'z' ? words : (char) (words.charAt(0) - 'a' + 'A') + words.substring(1);
    }

    private static boolean isCapital(char c) {
        return c >= 'A' && c <= 'Z';
    }

    static Turned figure(Asking asking, Turned.Kind kind, Quantity answer, List<Step> steps, boolean upTo) {
        double gives = asking.given(answer.value());
        String words = asking.unknown().label() + ": " + (upTo ? "at most " : "at least ") + answer.text() + ". Then " + subject(asking.wish())
                + " is " + asking.wish().said(gives) + "; anything " + (upTo ? "above" : "below") + " goes past " + asking.wish().limit().text() + ".";
        return new Turned(kind, asking.unknown(), asking.wish(), answer, steps, List.of(), words);
    }

    static Attempt attempt(Asking asking, double figure) {
        double gives = asking.given(figure);
        return new Attempt(Quantity.of(figure, asking.unit()), asking.wish().said(gives), asking.wish().isMet(gives));
    }

    static Turned pair(Asking asking, double passes, double fails) {
        Attempt last = attempt(asking, passes);
        Attempt first = attempt(asking, fails);
        String words = asking.unknown().label() + ": " + last.figure().text() + " is the last that passes, with "
                + last.gives() + "; " + first.figure().text() + " is the first that does not, with " + first.gives() + ".";
        return new Turned(Turned.Kind.SIZES, asking.unknown(), asking.wish(), last.figure(), List.of(), List.of(last, first), words);
    }

    static Turned allPass(Asking asking, double from, double to) {
        Attempt least = attempt(asking, from);
        Attempt most = attempt(asking, to);
        String words = "Every figure passes, from " + least.figure().text() + ", with " + least.gives() + ", to " + most.figure().text()
                + ", with " + most.gives() + ".";
        return new Turned(Turned.Kind.ALL_PASS, asking.unknown(), asking.wish(), null, List.of(), List.of(least, most), words);
    }

    static Turned nonePasses(Asking asking, double from, double to) {
        Attempt least = attempt(asking, from);
        Attempt most = attempt(asking, to);
        return none(asking, "No figure passes: " + least.figure().text() + " gives " + least.gives() + ", " + most.figure().text() + " gives "
                + most.gives() + ". Change another entry.");
    }
}
