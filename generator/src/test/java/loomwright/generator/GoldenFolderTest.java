package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * One folder for each feature: a tiny content folder laid over the files of {@link TestSite}, and the pages it must give. The file
 * {@code pages.txt} says which. With {@code -Dgolden.rewrite=true} the expected pages are written anew; read the difference then.
 */
class GoldenFolderTest {
    private static final Path GOLDEN = Path.of("src/test/resources/golden");

    @TempDir
    Path folder;

    @TestFactory
    List<DynamicTest> givesTheExpectedPages() throws IOException {
        try (Stream<Path> features = Files.list(GOLDEN)) {
            return features.sorted()
                    .map(feature -> DynamicTest.dynamicTest(feature.getFileName().toString(), () -> compare(feature)))
                    .toList();
        }
    }

    private void compare(Path feature) throws IOException {
        TestSite site = new TestSite(folder.resolve(feature.getFileName()));
        Path content = feature.resolve("content");
        try (Stream<Path> files = Files.walk(content)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                site.write(content.relativize(file).toString(), Files.readString(file));
            }
        }
        assertEquals("0 mistakes\n", site.problems());
        Map<String, String> pages = site.files();
        for (String address : Files.readAllLines(feature.resolve("pages.txt"))) {
            compare(feature.resolve("expected").resolve(address), pages.get(address));
        }
    }

    private static void compare(Path expected, String page) throws IOException {
        if (Boolean.getBoolean("golden.rewrite")) {
            Files.createDirectories(expected.getParent());
            Files.writeString(expected, page);
        }
        assertEquals(Files.readString(expected), page, expected.toString());
    }
}
