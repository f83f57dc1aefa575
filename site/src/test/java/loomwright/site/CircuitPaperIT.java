package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sheets of a circuit on paper: whole, each alone if wished, and the drilling sheet at its true size. */
@ExtendWith(WithBrowser.class)
class CircuitPaperIT {
    private static final int MOST_PAGES = 18;

    /** Each sheet: its key, words that stand on it, and last words that stand on no other. */
    private static final List<List<String>> SHEETS = List.of(
            List.of("drawing", "G1 Battery", "6 mm², route 4.35 m", "X1 Accessory outlet, laptop charger", "Current flows downward"),
            List.of("findings", "What was found", "Source:", "checks passed", "does not say that the circuit is free of danger"),
            List.of("results", "Voltage and current at each point", "Run time with nothing charging it", "Drop to each load"),
            List.of("schedule", "Schedule of circuits", "Q1 Breaker of the bench circuit", "Ampacity is the least of the conductors"),
            List.of("parts", "4.35 m", "Cut two of", "Conductors to cut"),
            List.of("labels", "Q1 Breaker of the bench circuit, 30 A", "Print, cut out, and fix one"),
            List.of("test-sheet", "Dead tests", "Expected", "Signature", "Date", "Meter used"),
            List.of("drilling", "From the left edge", "110 mm", "on paper this bar is 100 mm"),
            List.of("cautions", "Cautions for the day of the work", "Take off rings"));

    static Stream<List<String>> sheets() {
        return SHEETS.stream();
    }

    /** A sheet stands alone on paper: its own words are there, the heads of the others are not. */
    @ParameterizedTest
    @MethodSource("sheets")
    void aSheetIsPrintedAlone(List<String> sheet, Browser browser) throws IOException {
        CircuitOnPage page = changed(browser);
        for (Paper paper : Paper.values()) {
            page.tick(sheet.get(0));
            page.press("print");
            String text = printed(browser, paper, sheet.get(0));
            for (String words : sheet.subList(1, sheet.size())) {
                assertTrue(text.contains(Paper.squeezed(words)), () -> words + " not on the sheet: " + text);
            }
            for (List<String> other : SHEETS) {
                assertTrue(other == sheet || !text.contains(Paper.squeezed(other.get(other.size() - 1))), () -> "also " + other + " in " + text);
            }
            if (!sheet.get(0).equals("cautions")) {
                assertTrue(text.contains("Reedmerefieldtrailer"), "the name of the circuit stands on it");
            }
        }
    }

    @Test
    void allSheetsTogetherHoldEverythingButTheTools(Browser browser) throws IOException {
        CircuitOnPage page = changed(browser);
        for (Paper paper : Paper.values()) {
            page.press("print");
            String text = printed(browser, paper, "all");
            for (List<String> sheet : SHEETS) {
                for (String words : sheet.subList(1, sheet.size())) {
                    assertTrue(text.contains(Paper.squeezed(words)), () -> words + " is missing");
                }
            }
            assertFalse(text.contains("For,") || text.contains("For."), "the parts that wait for a figure are named");
            assertFalse(text.contains("Smallestsizethatpasses") || text.contains("Yourwork"), "tools are not printed");
        }
    }

    @Test
    void theDrillingSheetIsTrueToHalfAMillimetre(Browser browser) throws IOException {
        CircuitOnPage page = changed(browser);
        for (Paper paper : Paper.values()) {
            page.tick("drilling");
            page.press("print");
            try (PDDocument print = paper.print(browser)) {
                List<Rectangle2D> shapes = PrintedShapes.of(print);
                assertTrue(shapes.stream().anyMatch(box -> near(box.getWidth(), 100) && box.getHeight() < 0.1), "the bar of 100 mm");
                List<Rectangle2D> holes =
                        shapes.stream().filter(box -> near(box.getWidth(), 29) && near(box.getHeight(), 29)).toList();
                assertEquals(2, holes.size(), "two cut-outs of 29 mm");
                assertEquals(50, holes.get(1).getCenterX() - holes.get(0).getCenterX(), 0.5);
                assertEquals(0, holes.get(1).getCenterY() - holes.get(0).getCenterY(), 0.1);
                // The panel: its left edge 60 mm from the first centre, its lower edge 45 mm below it.
                Rectangle2D first = holes.get(0);
                Rectangle2D panel =
                        shapes.stream().filter(box -> near(box.getWidth(), 150) && near(box.getHeight(), 90)).findFirst().orElseThrow();
                assertEquals(60, first.getCenterX() - panel.getMinX(), 0.5);
                assertEquals(45, first.getCenterY() - panel.getMinY(), 0.5);
            }
        }
    }

    private static boolean near(double millimetres, double wanted) {
        return Math.abs(millimetres - wanted) <= 0.5;
    }

    /** The trailer with a run of another length. The print command is only noted: the paper is taken by the test. */
    private static CircuitOnPage changed(Browser browser) {
        CircuitOnPage page = CircuitOnPage.fresh(browser);
        browser.run("window.print = () => {}");
        page.choose("bench-run");
        page.enter("route-length", "4.35 m");
        browser.until(() -> page.row("bench-run").contains("4.35"));
        return page;
    }

    /** The text of a print of which nothing is cut; the paper is kept for people to look at. */
    private static String printed(Browser browser, Paper paper, String name) throws IOException {
        try (PDDocument print = paper.print(browser)) {
            Path folder = Files.createDirectories(Path.of(System.getProperty("screenshots.folder")));
            print.save(folder.resolve("circuit-" + name + "-" + paper.name().toLowerCase(java.util.Locale.ROOT) + ".pdf").toFile());
            Paper.Edges edges = new Paper.Edges();
            String text = Paper.squeezed(edges.getText(print));
            System.out.println("[paper] circuit, " + name + ", " + paper + ": " + print.getNumberOfPages() + " pages");
            assertTrue(print.getNumberOfPages() <= MOST_PAGES, () -> print.getNumberOfPages() + " pages of " + paper);
            assertEquals(List.of(), edges.cut(), () -> "words that run over the edge of " + paper);
            return text;
        }
    }
}
