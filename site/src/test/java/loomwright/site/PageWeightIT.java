package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What a reader's first visit carries, compressed. Needs no browser. */
class PageWeightIT {
    private static final int MOST_OF_A_PAGE = 60_000;
    private static final int MOST_OF_SITE_PROGRAM = 258_000;
    private static final int MOST_OF_CIRCUIT_PROGRAM = 218_000;
    private static final int MOST_OF_ALL_SCRIPTS = 500_000;

    /** A page with its style sheet and its pictures, which are all in the page. */
    @TestFactory
    Stream<DynamicTest> everyPageStaysBelowTheLimit() {
        return BuiltSite.pages().stream().map(page -> DynamicTest.dynamicTest(page, () -> {
            Path file = BuiltSite.file(page);
            int weight = compressed(file);
            for (Element style : BuiltSite.page(page).select("link[rel=stylesheet]")) {
                weight += compressed(file.resolveSibling(style.attr("href")).normalize());
            }
            assertTrue(weight <= MOST_OF_A_PAGE, weight + " bytes");
        }));
    }

    /** Printing a double, String.format and regular expressions are the usual causes of a program that has grown. */
    @Test
    void theProgramsStayBelowTheirLimits() throws IOException {
        assertBelow(MOST_OF_SITE_PROGRAM, "site.js");
        assertBelow(MOST_OF_CIRCUIT_PROGRAM, "circuit.js");
    }

    private static void assertBelow(int most, String program) throws IOException {
        int weight = compressed(BuiltSite.file(program));
        System.out.println("[weight] " + program + " " + Files.size(BuiltSite.file(program)) + " bytes, " + weight + " compressed");
        assertTrue(weight <= most, program + " has " + weight + " bytes compressed");
    }

    @Test
    void allScriptsTogetherStayBelowTheirLimit() throws IOException {
        int weight = 0;
        List<Path> scripts;
        try (Stream<Path> files = Files.list(BuiltSite.file(""))) {
            scripts = files.filter(file -> file.toString().endsWith(".js") && !file.endsWith("search-data.js")).sorted().toList();
        }
        for (Path script : scripts) {
            weight += compressed(script);
        }
        assertTrue(weight <= MOST_OF_ALL_SCRIPTS, weight + " bytes: " + scripts);
    }

    /** A page with something to change asks for one program and no more, and only after it has been painted. */
    @Test
    void aPageAsksForOneProgram() {
        for (String page : BuiltSite.pages()) {
            List<String> programs = BuiltSite.page(page).select("script[data-program]").eachAttr("data-program");
            boolean works = page.startsWith("lessons/") || page.startsWith("calculators/") || page.equals("workshop.html");
            assertEquals(page.equals(CircuitOnPage.PAGE) || page.equals("first-job.html") ? List.of("circuit.js") : works ? List.of("site.js") : programs, programs, page);
            assertTrue(BuiltSite.page(page).select("script[src$=site.js], script[src$=circuit.js]").isEmpty(), page);
        }
    }

    private static int compressed(Path file) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out) {
            {
                def.setLevel(Deflater.BEST_COMPRESSION);
            }
        }) {
            gzip.write(Files.readAllBytes(file));
        }
        return out.size();
    }
}
