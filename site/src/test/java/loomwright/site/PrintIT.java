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
    /** A lesson on paper, with its further examples as story, result and pin. */
    private static final int PAGES_OF_A_LESSON = 14;
    /** Its screens with room for notes. */
    private static final int PAGES_OF_A_HANDOUT = 12;

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
    void theCardOfALessonIsPrintedAlone(Browser browser) throws IOException {
        String page = "lessons/08-voltage-drop.html";
        browser.open(page);
        browser.run("window.print = () => document.body.dataset.printed = 'yes'");
        browser.find("#print-card").click();
        assertEquals("yes", browser.run("return document.body.dataset.printed"));
        Element card = BuiltSite.page(page).selectFirst(".card");
        try (PDDocument paper = Paper.A4.print(browser)) {
            String text = Paper.squeezed(new PDFTextStripper().getText(paper));
            assertEquals(1, paper.getNumberOfPages());
            assertTrue(text.contains(Paper.squeezed("Lesson 8 Voltage drop")), text);
            card.select("li").forEach(line -> assertTrue(text.contains(Paper.squeezed(start(line))), () -> text + " lacks " + line.text()));
            assertFalse(text.contains(Paper.squeezed("The laptop that stopped charging")), text);
        }
        browser.run("dispatchEvent(new Event('afterprint'))");
        assertFalse((boolean) browser.run("return document.querySelector('main').classList.contains('sheet-alone')"), "then all of it again");
    }

    @Test
    void aFurtherExampleThatWasOpenedIsPrintedWhole(Browser browser) throws IOException {
        browser.open("lessons/08-voltage-drop.html");
        String step = Paper.squeezed(start(BuiltSite.page("lessons/08-voltage-drop.html").selectFirst("#mast-head-lamp .steps > li > .words")));
        int folded = pages(browser, step, false);
        browser.run("document.querySelector('details.further:has(#mast-head-lamp)').open = true");
        assertTrue(pages(browser, step, true) >= folded);
    }

    private static int pages(Browser browser, String words, boolean stand) throws IOException {
        try (PDDocument paper = Paper.A4.print(browser)) {
            assertEquals(stand, Paper.squeezed(new PDFTextStripper().getText(paper)).contains(words), words);
            return paper.getNumberOfPages();
        }
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
            assertFalse(text.contains("Turnthequestionround"), "a question turned round that nobody asked");
            assertFalse(text.contains("Unitsoneverypage"), "a choice of the screen");
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
            int pages = page.startsWith("lessons/") ? PAGES_OF_A_LESSON : page.startsWith("projector/") ? PAGES_OF_A_HANDOUT : Integer.MAX_VALUE;
            assertTrue(printed.getNumberOfPages() <= pages, () -> printed.getNumberOfPages() + " pages of " + paper);
            for (String words : mustStand(page)) {
                assertTrue(text.contains(Paper.squeezed(words)), () -> "not on " + paper + ": " + words);
            }
        }
    }

    /**
     * The title; of a further example that nobody opened the line that names it, its story, its main results and what they were held against; the words
     * of every other fold, the last result of every example and the last words of the page. Paper needs no links onward, nor words about the device,
     * nor in a lesson the numbers of a picture once more.
     */
    private static List<String> mustStand(String page) {
        List<String> words = new ArrayList<>();
        Element main = BuiltSite.page(page).selectFirst("main");
        words.add(main.selectFirst("h1").text());
        // What is only heard is not on paper. In the place of the first job that stands there without scripts is its first question.
        main.select(".unseen, #first-job > *").remove();
        main.select("details.further").forEach(each -> words.add(each.selectFirst("summary").text()));
        main.select("details.further :is(.story p, .upshot .value, .pins li)").forEach(each -> words.add(start(each)));
        main.select("details.further, .screen[data-further]").remove();
        if (page.startsWith("lessons/")) {
            main.select("details.figures").remove();
        }
        main.select("details > summary").stream().filter(each -> each.closest(".on-screen") == null).forEach(each -> words.add(each.text()));
        main.select("details p, details li").stream().filter(each -> each.closest(".on-screen") == null).forEach(each -> words.add(start(each)));
        main.select(".results tr:last-child td:last-child").forEach(each -> words.add(each.text()));
        main.select("p, li").stream()
                .filter(each -> each.closest("nav, .on-screen, [hidden]") == null && each.select("math, svg").isEmpty())
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
