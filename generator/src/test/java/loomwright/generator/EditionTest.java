package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The version stands in the build file, in the program and on the page for readers. */
class EditionTest {
    @Test
    void programBuildFileAndNewsSayTheSameVersionAndDay() throws IOException {
        String build = Files.readString(Path.of("../pom.xml"));
        assertTrue(build.contains("<version>" + Edition.VERSION + "</version>"), "the version of the build file");
        assertTrue(build.contains("<project.build.outputTimestamp>" + Edition.DATE + "T00:00:00Z<"), "the day of the build file");
        String news = Files.readString(Path.of("../content/pages/whats-new.md"));
        assertTrue(news.contains("## " + Edition.VERSION + ", " + Edition.DATE), "the page of what is new");
    }
}
