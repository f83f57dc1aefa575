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

    /** Compares the answer {@code typed} with the result {@code outputKey} of {@code working}. */
    public static AnswerCheck of(Working working, String outputKey, String typed) {
        Result result = working.result(outputKey);
        String label = result.output().label();
        QuantityText.Reading reading = QuantityText.read(typed, result.output().unit());
        if (typed.isBlank()) {
            return unreadable("Your answer is empty: enter a number in " + result.output().unit().symbol() + ".");
        }
        if (reading.quantity() == null) {
            return unreadable("Your answer " + reading.fault() + ".");
        }
        Quantity answer = reading.quantity();
        if (!answer.dimension().equals(result.quantity().dimension())) {
            return unreadable("Your answer is in " + answer.unit().spoken() + ", but " + label + " is in "
                    + result.output().unit().spoken() + ".");
        }
        return compare(working, result, answer);
    }

    private static AnswerCheck compare(Working working, Result result, Quantity answer) {
        double difference = difference(answer, result.quantity());
        String ours = "The working gives " + result.quantity().text() + ".";
        if (difference <= AGREES_WITHIN) {
            return new AnswerCheck(Kind.AGREES, "Your answer agrees. " + ours, null);
        }
        Slip slip = nearestSlip(working, result, answer);
        if (slip != null) {
            return new AnswerCheck(
                    Kind.SLIP, "This number comes from a known slip: " + slip.name() + ". " + slip.words() + " " + ours, slip);
        }
        String away = NumberText.significant(100 * difference, 2) + " % away from the working.";
        if (difference <= CLOSE_WITHIN) {
            return new AnswerCheck(
                    Kind.CLOSE, "Close: your answer is " + away + " Rounding in the middle of a working does this. " + ours, null);
        }
        return new AnswerCheck(
                Kind.DIFFERS,
                "Your answer does not agree, and it is none of the slips we know: go through the steps one by one. " + ours,
                null);
    }

    private static Slip nearestSlip(Working working, Result result, Quantity answer) {
        Slip nearest = null;
        for (Slip slip : working.slips()) {
            boolean sameOutput = slip.output().equals(result.output());
            boolean tellsApart = difference(slip.value(), result.quantity()) > AGREES_WITHIN;
            if (sameOutput && tellsApart && difference(answer, slip.value()) <= AGREES_WITHIN) {
                boolean nearer = nearest == null || difference(answer, slip.value()) < difference(answer, nearest.value());
                nearest = nearer ? slip : nearest;
            }
        }
        return nearest;
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
