package loomwright.circuit.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The page for readers has the kinds, words and counts of this run. {@code -Dgolden.rewrite=true} writes them anew. */
class PlantedPageTest {
    private static final Path PAGE = Path.of("..", "content", "pages", "planted-mistakes.md");
    private static final String BEGIN = "## What was planted\n";
    private static final String END = "## What no page can see\n";

    @Test
    void thePageForReadersSaysWhatThisRunPlantedAndCaught() throws IOException {
        String page = Files.readString(PAGE);
        int begin = page.indexOf(BEGIN) + BEGIN.length();
        int end = page.indexOf(END);
        String counted = "\n" + counted() + "\n";
        if (Boolean.getBoolean("golden.rewrite")) {
            Files.writeString(PAGE, page.substring(0, begin) + counted + page.substring(end));
        } else {
            assertEquals(counted, page.substring(begin, end), "run this test with -Dgolden.rewrite=true, and read the difference");
        }
    }

    private static String counted() {
        long planted = Tally.outcomes().size();
        long missed = Tally.outcomes().stream().filter(outcome -> !outcome.caught()).count();
        StringBuilder text = new StringBuilder();
        text.append(RightCircuits.NAMES.size()).append(" right circuits, ").append(Hazards.ALL.size()).append(" kinds of mistake: **")
                .append(planted).append(" mistakes planted, ").append(planted - missed).append(" named, ").append(missed).append(" missed.** ")
                .append("The right circuits themselves draw no stop, and none of them more than ").append(Expected.MOST_CAUTIONS)
                .append(" things to decide.\n");
        for (Hazards.Subject subject : Hazards.SUBJECTS) {
            text.append("\n### ").append(subject.title()).append("\n\n| mistake | verdict | planted | named |\n| --- | --- | ---: | ---: |\n");
            for (Hazard hazard : subject.kinds()) {
                long here = Tally.planted(hazard);
                text.append("| ").append(hazard.words()).append(" | ").append(hazard.least().key())
                        .append(" | ").append(here).append(" | ").append(here - Tally.missed(hazard).size()).append(" |\n");
            }
        }
        return text.toString();
    }
}
