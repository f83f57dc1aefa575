package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * What a reader's first visit to a page carries: the page, its style sheet and its scripts, compressed. Needs no browser.
 *
 * <p>A lesson with examples of two subjects carries two programs, and each brings the machinery along; such a page may weigh more by the
 * budget of a program.
 */
class PageWeightIT {
    private static final int MOST_BYTES = 100_000;
    private static final int ONE_MORE_PROGRAM = 60_000;

    @TestFactory
    Stream<DynamicTest> staysBelowTheLimit() {
        return BuiltSite.pages().stream()
                .filter(page -> page.startsWith("lessons/") || page.startsWith("calculators/"))
                .map(page -> DynamicTest.dynamicTest(page, () -> {
                    int weight = 0;
                    StringBuilder parts = new StringBuilder();
                    for (Path part : parts(page)) {
                        int compressed = compressed(part);
                        weight += compressed;
                        parts.append(' ').append(part.getFileName()).append(' ').append(compressed);
                    }
                    int programs = BuiltSite.page(page).select("script[src]:not([src$=progress.js]):not([src$=offline.js])").size();
                    assertTrue(weight <= MOST_BYTES + ONE_MORE_PROGRAM * Math.max(0, programs - 1), weight + " bytes:" + parts);
                }));
    }

    private static List<Path> parts(String page) {
        Path file = BuiltSite.file(page);
        Document document = BuiltSite.page(page);
        List<Path> parts = new ArrayList<>(List.of(file));
        for (Element part : document.select("script[src], link[rel=stylesheet]")) {
            parts.add(file.resolveSibling(part.attr(part.is("script") ? "src" : "href")).normalize());
        }
        return parts;
    }

    private static int compressed(Path file) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(Files.readAllBytes(file));
        }
        return out.size();
    }
}
