package loomwright.worked;

import java.util.Locale;
import loomwright.quantity.Quantity;
import loomwright.source.Source;

/**
 * One figure held against one limit. Verdict, sentence, limit and source are made here together, so that words and numbers cannot part.
 *
 * <pre>{@code
 * Comparison.of("The drop with 2.5 mm²", drop)
 *         .atMost(limit, "the 3 % of 12 V that you allow", source)
 *         .otherwise(Verdict.STOP, "Take a thicker conductor.")
 *         .finding()
 * }</pre>
 *
 * <p>The rule of evidence: a figure from memory or an invented one can stop a design but never pass it; what it would pass is not known.
 * A figure that varies (a current, a drop, a temperature) and comes within 5 % of its limit is a caution. A rating held against a rating
 * is {@link #exact()}: a fuse-link of 15 A on a conductor of 15 A is as intended.
 */
public final class Comparison {
    /** A difference that only rounding makes: what is greater shows in the nine digits that a number is written with. */
    private static final double HAIR = 1e-8;
    private static final int MOST_DIGITS = 9;
    /** Less than this share of the limit left is close. */
    private static final double CLOSE = 0.05;

    private final String subject;
    private final Quantity figure;
    private Quantity limit;
    private String limitName;
    private Source source;
    private Source weakest;
    private boolean least;
    private boolean exact;
    private Verdict otherwise = Verdict.STOP;
    private Sentence remedy = Sentence.NONE;
    private String closeRemedy = "";
    private String assumption = "";
    private MissingFigure missing;

    private Comparison(String subject, Quantity figure) {
        this.subject = subject;
        this.figure = figure;
    }

    /**
     * @param subject what the figure is, as the start of a sentence, such as {@code The drop with 2.5 mm²}
     */
    public static Comparison of(String subject, Quantity figure) {
        return new Comparison(subject, figure);
    }

    /** The figure may be no more than this. */
    public Comparison atMost(Quantity most, String name, Source from) {
        return against(most, name, from, false);
    }

    /** The figure may be no less than this. */
    public Comparison atLeast(Quantity fewest, String name, Source from) {
        return against(fewest, name, from, true);
    }

    private Comparison against(Quantity against, String name, Source from, boolean isLeast) {
        limit = against;
        limitName = name;
        source = from;
        weakest = weakest == null ? from : weaker(weakest, from);
        least = isLeast;
        return this;
    }

    /** Something else that the figure or the limit rests on. */
    public Comparison restingOn(Source other) {
        weakest = weakest == null ? other : weaker(weakest, other);
        return this;
    }

    /** Ratings of parts, or counts: equal is as intended, and close means nothing. */
    public Comparison exact() {
        exact = true;
        return this;
    }

    /** What follows if the limit is passed; without this it is a stop. */
    public Comparison otherwise(Verdict verdict, String whatToDo) {
        return otherwise(verdict, Sentence.of(whatToDo));
    }

    /** The same, with words for when they are read. */
    public Comparison otherwise(Verdict verdict, Sentence whatToDo) {
        otherwise = verdict;
        remedy = whatToDo;
        return this;
    }

    /** What to do if the figure keeps within its limit, but only just; without this, what is done if it does not. */
    public Comparison ifClose(String whatToDo) {
        closeRemedy = whatToDo;
        return this;
    }

    /** What the check takes for granted because nobody said it, such as {@code insulation for 60 °C}. It opens the sentence. */
    public Comparison assuming(String what) {
        assumption = assumption.isEmpty() ? what : assumption + ", " + what;
        return this;
    }

    /** The figure that would settle the check if what it rests on now cannot pass it. */
    public Comparison settledBy(MissingFigure figureThatSettles) {
        missing = figureThatSettles;
        return this;
    }

    /** Whether the figure keeps its limit. */
    public boolean holds() {
        return least ? atLeast(figure, limit) : atMost(figure, limit);
    }

    /** Whether a figure is no more than a limit; a hair of rounding is let through. */
    public static boolean atMost(Quantity figure, Quantity limit) {
        return figure.base() <= limit.base() + HAIR * Math.abs(limit.base());
    }

    /** Whether a figure is no less than a limit; a hair of rounding is let through. */
    public static boolean atLeast(Quantity figure, Quantity limit) {
        return figure.base() >= limit.base() - HAIR * Math.abs(limit.base());
    }

    /** The verdict, with its words, limit and source. */
    public Finding finding() {
        if (!holds()) {
            return new Finding(otherwise, words(least ? "is below" : "is above", "is enough to stop"), figure, limit, weakest, remedy);
        }
        if (!weakest.standing().mayPass()) {
            MissingFigure wanted = missing != null ? missing : new MissingFigure("", limitName, "the data sheet of the part, or its maker");
            MissingFigure settles = new MissingFigure(
                    wanted.key(), wanted.name(), wanted.where(), weakest.standing().words());
            return Finding.notKnown(
                    words(least ? "would be at least" : "would be within", "passes nothing"), figure, limit, weakest, settles);
        }
        if (!exact && isClose()) {
            return new Finding(
                    Verdict.CAUTION, words(least ? "is only just above" : "is only just within", ""), figure, limit, source, Sentence.later(this::closeRemedy));
        }
        return new Finding(Verdict.PASSED, words(least ? "is at least" : "is within", ""), figure, limit, source, Sentence.NONE);
    }

    private String closeRemedy() {
        if (!closeRemedy.isEmpty()) {
            return closeRemedy;
        }
        String whatToDo = remedy.text();
        return whatToDo.isEmpty()
                ? "Leave more room if you can, and measure when it is built."
                : "Leave more room if you can: " + whatToDo.substring(0, 1).toLowerCase(Locale.ROOT) + whatToDo.substring(1);
    }

    private boolean isClose() {
        double room = least ? figure.base() - limit.base() : limit.base() - figure.base();
        return room < CLOSE * Math.abs(limit.base());
    }

    /** What a figure rests on that nobody could look up; nothing if all was seen, typed or worked out. */
    private String basis(String whatItDoes) {
        return whatItDoes.isEmpty() || weakest.standing().mayPass()
                ? ""
                : " It rests on a figure that is " + weakest.standing().words() + ": such a figure " + whatItDoes + ".";
    }

    private Sentence words(String how, String whatABasisDoes) {
        return Sentence.later(() -> said(how, basis(whatABasisDoes)));
    }

    private String said(String how, String after) {
        String start = assumption.isEmpty() ? subject : "Assuming " + assumption + ": " + subject;
        Quantity shown = limit.in(figure.unit());
        int digits = digits(figure, shown);
        return start + ", " + figure.text(digits) + ", " + how + " " + limitName + ", " + shown.text(digits) + "." + after;
    }

    /** As many digits as it takes to tell the figure from its limit; three if they are the same. */
    private static int digits(Quantity figure, Quantity limit) {
        boolean same = Math.abs(figure.base() - limit.base()) <= HAIR * Math.abs(limit.base());
        int digits = 3;
        while (!same && digits < MOST_DIGITS && figure.text(digits).equals(limit.text(digits))) {
            digits++;
        }
        return digits;
    }

    /** The source that may do less: one that cannot pass a check, or else the first. */
    public static Source weaker(Source first, Source second) {
        return first.standing().mayPass() && !second.standing().mayPass() ? second : first;
    }
}
