package loomwright.practice;

import loomwright.quantity.NumberText;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.worked.Agreement;
import loomwright.worked.Output;
import loomwright.worked.Result;
import loomwright.worked.Slip;
import loomwright.worked.Working;

/**
 * Compares a reader's own answer with the working.
 *
 * @param kind what came of it
 * @param words the reply, in full sentences
 * @param slip the slip that gives the reader's number, or null
 */
public record AnswerCheck(Kind kind, String words, Slip slip) {
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
        Slip slip = nearestSlip(working, asked, answer);
        if (right != null && !Agreement.isAnother(answer, slip == null ? right : figure(working, asked, slip), right)) {
            return new AnswerCheck(Kind.AGREES, "Your answer agrees. " + ours(right), null);
        }
        if (slip != null) {
            return new AnswerCheck(
                    Kind.SLIP, "This number comes from a known slip: " + slip.name() + ". " + slip.words() + " " + ours(right), slip);
        }
        if (right != null && Agreement.difference(answer, right) <= CLOSE_WITHIN) {
            String away = NumberText.significant(100 * Agreement.difference(answer, right), 2) + " % away from the working.";
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

    /** Of the slips made at the answer itself the nearest, else of those made on the way to it. */
    private static Slip nearestSlip(Working working, Output asked, Quantity answer) {
        Slip nearest = null;
        double least = Double.MAX_VALUE;
        for (Slip slip : working.slips()) {
            Quantity figure = figure(working, asked, slip);
            if (figure != null && Agreement.agrees(answer, figure)) {
                double apart = Agreement.difference(answer, figure) + (slip.output().equals(asked) ? 0 : 1);
                nearest = apart < least ? slip : nearest;
                least = Math.min(apart, least);
            }
        }
        return nearest;
    }

    /** What the answer becomes by a slip made at it or on the way to it; null if it stays as it is. */
    private static Quantity figure(Working working, Output asked, Slip slip) {
        if (slip.output().equals(asked)) {
            return slip.value();
        }
        Result result = working.result(asked.key());
        return result == null ? null : new Spoilt(working, new Chain(working), slip).answer(result);
    }

    private static AnswerCheck unreadable(String words) {
        return new AnswerCheck(Kind.UNREADABLE, words, null);
    }
}
