package loomwright.generator.content;

import java.util.List;
import loomwright.generator.problem.Problems;

/** Reads the card of a lesson: the few short lines at its end, which must fit one screen and half a page. */
final class CardReader {
    private static final int FEWEST_LINES = 5;
    private static final int MOST_LINES = 8;
    private static final int MOST_WORDS = 28;

    private final Problems problems;

    CardReader(Problems problems) {
        this.problems = problems;
    }

    List<Scalar> read(YamlMap front) {
        List<Scalar> lines = front.texts("card");
        if (!front.has("card")) {
            problems.add(front.at().problem(
                    "the front matter has no \"card\", the summary at the end of the lesson",
                    "Add a line card: and below it " + FEWEST_LINES + " to " + MOST_LINES + " lines that begin with a dash."));
        } else if (lines.size() < FEWEST_LINES || lines.size() > MOST_LINES) {
            problems.add(front.keyAt("card").problem(
                    "the card has " + lines.size() + (lines.size() == 1 ? " line" : " lines"),
                    "It fits one screen with " + FEWEST_LINES + " to " + MOST_LINES + "."));
        }
        for (Scalar line : lines) {
            int words = Words.in(line.text());
            if (words == 0 || words > MOST_WORDS) {
                problems.add(line.problem(
                        words == 0 ? "a line of the card is empty" : "a line of the card has " + words + " words",
                        words == 0 ? "Write it or take it out." : "Keep each to " + MOST_WORDS + ": split it, or leave the reason to the text."));
            }
        }
        return lines;
    }
}
