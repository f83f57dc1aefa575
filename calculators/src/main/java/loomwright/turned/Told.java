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

    static String the(String label) {
        return "the " + small(label);
    }

    /** A label inside a sentence; a name in capitals stays. */
    static String small(String label) {
        boolean name = label.length() > 1 && Character.isUpperCase(label.charAt(1));
        return name ? label : label.substring(0, 1).toLowerCase() + label.substring(1);
    }

    static String capital(String words) {
        return words.substring(0, 1).toUpperCase() + words.substring(1);
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
