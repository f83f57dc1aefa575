package loomwright.worked;

import loomwright.quantity.NumberText;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;

/**
 * Compares a reader's own answer with the working.
 *
 * @param kind what came of it
 * @param words the reply, in full sentences
 * @param slip the slip that gives the reader's number, or null
 */
public record AnswerCheck(Kind kind, String words, Slip slip) {
    private static final double AGREES_WITHIN = 0.01;
    private static final double CLOSE_WITHIN = 0.05;

    /** What came of a comparison. */
    public enum Kind {
        AGREES,
        CLOSE,
        SLIP,
        DIFFERS,
        UNREADABLE
    }

    /** Compares the answer {@code typed} with the result {@code outputKey} of {@code working}, which may have none. */
    public static AnswerCheck of(Working working, String outputKey, String typed) {
        Output asked = working.description().output(outputKey);
        QuantityText.Reading reading = QuantityText.read(typed, asked.unit());
        if (typed.isBlank()) {
            return unreadable("Your answer is empty: enter " + wanted(asked) + ".");
        }
        if (reading.quantity() == null) {
            return unreadable("Your answer " + reading.fault() + ". Enter " + wanted(asked) + ".");
        }
        Quantity answer = reading.quantity();
        if (!answer.dimension().equals(asked.unit().dimension())) {
            return unreadable("Your answer is in " + answer.unit().spoken() + ", but " + asked.label() + " is in "
                    + asked.unit().spoken() + ".");
        }
        return compare(working, asked, answer);
    }

    private static String wanted(Output asked) {
        String unit = asked.unit().symbol();
        return unit.isEmpty() ? "a number" : "a number in " + unit;
    }

    private static AnswerCheck compare(Working working, Output asked, Quantity answer) {
        Result result = working.answer(asked.key());
        Quantity right = result == null ? null : result.quantity();
        if (right != null && agrees(answer, right)) {
            return new AnswerCheck(Kind.AGREES, "Your answer agrees. " + ours(right), null);
        }
        Slip slip = nearestSlip(working, asked, answer);
        if (slip != null) {
            return new AnswerCheck(
                    Kind.SLIP, "This number comes from a known slip: " + slip.name() + ". " + slip.words() + " " + ours(right), slip);
        }
        if (right != null && difference(answer, right) <= CLOSE_WITHIN) {
            String away = NumberText.significant(100 * difference(answer, right), 2) + " % away from the working.";
            return new AnswerCheck(
                    Kind.CLOSE, "Close: your answer is " + away + " Rounding in the middle of a working does this. " + ours(right), null);
        }
        String stray = right == null ? "" : Stray.words(working, right, answer);
        if (!stray.isEmpty()) {
            return new AnswerCheck(Kind.DIFFERS, "Your answer does not agree. " + stray + " " + ours(right), null);
        }
        return new AnswerCheck(
                Kind.DIFFERS,
                "Your answer does not agree, and it is none of the slips we know: go through the steps one by one. " + ours(right),
                null);
    }

    private static String ours(Quantity right) {
        return right == null ? "The working ends without this figure: read its checks." : "The working gives " + right.text() + ".";
    }

    private static Slip nearestSlip(Working working, Output asked, Quantity answer) {
        Slip nearest = null;
        for (Slip slip : working.slips()) {
            boolean sameOutput = slip.output().equals(asked);
            if (sameOutput && agrees(answer, slip.value())) {
                boolean nearer = nearest == null || difference(answer, slip.value()) < difference(answer, nearest.value());
                nearest = nearer ? slip : nearest;
            }
        }
        return nearest;
    }

    /** Whether a number is the right one, but for rounding. */
    public static boolean agrees(Quantity answer, Quantity right) {
        return difference(answer, right) <= AGREES_WITHIN;
    }

    /** The difference as a share of what it is held against. */
    private static double difference(Quantity answer, Quantity against) {
        double base = against.base();
        double apart = Math.abs(answer.base() - base);
        return apart == 0 ? 0 : apart / Math.max(Math.abs(base), 1e-300);
    }

    private static AnswerCheck unreadable(String words) {
        return new AnswerCheck(Kind.UNREADABLE, words, null);
    }
}
