package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;

/** On paper nothing is cut and nothing is folded away. */
@ExtendWith(WithBrowser.class)
class PrintIT {
    @TestFactory
    Stream<DynamicTest> everyPageIsWholeOnPaper(Browser browser) {
        return BuiltSite.pages().stream().map(page -> DynamicTest.dynamicTest(page, () -> {
            browser.open(page);
            browser.touchAll();
            for (Paper paper : Paper.values()) {
                isWhole(browser, page, paper);
            }
        }));
    }

    @Test
    void ownFiguresStandInThePlaceOfTheForm(Browser browser) throws IOException {
        browser.open("calculators/voltage-drop.html");
        Form form = new Form(browser, "voltage-drop");
        form.enter("current", "3.217 A");
        try (PDDocument paper = Paper.A4.print(browser)) {
            String text = Paper.squeezed(new PDFTextStripper().getText(paper));
            assertTrue(text.contains("Given,withyourownfigures"), text);
            assertTrue(text.contains("3.217A"), text);
            assertTrue(text.contains(Paper.squeezed(form.own("drop"))), text);
            assertFalse(text.contains("Backtotheprintedexample"), text);
        }
        assertFalse(form.isHidden("form.try"), "after printing the form is back");
        assertTrue(form.isHidden(".given"));
        assertFalse(form.isThere("details[open]"), "what was folded is folded again");
    }

    private static void isWhole(Browser browser, String page, Paper paper) throws IOException {
        try (PDDocument printed = paper.print(browser)) {
            assertTrue(printed.getDocumentCatalog().getMarkInfo().isMarked(), "tagged for a screen reader");
            Paper.Edges edges = new Paper.Edges();
            String text = Paper.squeezed(edges.getText(printed));
            assertEquals(List.of(), edges.cut(), () -> "words that run over the edge of " + paper);
            for (String words : mustStand(page)) {
                assertTrue(text.contains(Paper.squeezed(words)), () -> "not on " + paper + ": " + words);
            }
        }
    }

    /** The title, of a further example that nobody opened the line that names it, the words of every other fold, the last result of every example and the last words of the page. Paper needs no links onward, nor words about the device. */
    private static List<String> mustStand(String page) {
        List<String> words = new ArrayList<>();
        Element main = BuiltSite.page(page).selectFirst("main");
        words.add(main.selectFirst("h1").text());
        main.select("details.further").forEach(each -> words.add(each.selectFirst("summary").text()));
        main.select("details.further").remove();
        main.select("details > summary").forEach(each -> words.add(each.text()));
        main.select("details p, details li").stream().filter(each -> each.closest(".on-screen") == null).forEach(each -> words.add(start(each)));
        main.select(".results tr:last-child td:last-child").forEach(each -> words.add(each.text()));
        main.select("p, li").stream()
                .filter(each -> each.closest("nav, .on-screen") == null && each.select("math, svg").isEmpty())
                .reduce((first, last) -> last)
                .ifPresent(each -> words.add(start(each)));
        return words;
    }

    /** The first words, up to a formula. */
    private static String start(Element element) {
        String text = element.select("math").isEmpty() ? element.text() : element.ownText();
        return text.length() > 40 ? text.substring(0, 40) : text;
    }
}
