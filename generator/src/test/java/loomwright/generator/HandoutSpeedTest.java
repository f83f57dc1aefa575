package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import loomwright.catalogue.Catalogue;
import loomwright.generator.build.Parts;
import loomwright.generator.build.SiteBuild;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How long the sheets of a large workshop take, the reading of all lessons included, without the PDF. */
class HandoutSpeedTest {
    private static final int PEOPLE = 100;
    private static final int QUESTIONS = 20;

    /** The aim is 10 s; a machine that has other work to do gets more. */
    private static final double MOST_SECONDS = 30;

    @TempDir
    Path folder;

    @Test
    void aHundredPeopleWithTwentyQuestionsEach() throws IOException {
        List<String> keys = new SiteBuild(Path.of("../content"), new Parts(Path.of("../site/src/main"), List.of()), Catalogue.all())
                .run((address, bytes) -> { })
                .questions()
                .stream()
                .flatMap(lesson -> lesson.questions().stream())
                .map(question -> question.key())
                .limit(QUESTIONS)
                .toList();
        long start = System.nanoTime();
        int result = Loomwright.run(
                "handout", "--content", "../content", "--parts", "../site/src/main", "--questions", String.join(",", keys),
                "--people", Integer.toString(PEOPLE), "--set", "7", "--out", folder.resolve("sheets").toString());
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf("[handout] %d people, %d questions: %.1f s%n", PEOPLE, QUESTIONS, seconds);
        assertEquals(0, result);
        String sheets = Files.readString(folder.resolve("sheets/sheets.html"));
        assertEquals(PEOPLE, sheets.split("<h2>Question sheet", -1).length - 1);
        assertTrue(seconds < MOST_SECONDS, seconds + " s");
    }
}
