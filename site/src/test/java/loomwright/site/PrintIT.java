package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What is put on paper is what the reader asked for. */
@ExtendWith(WithBrowser.class)
class PrintIT {
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
            card.select("li").forEach(line -> assertTrue(text.contains(Paper.squeezed(WholeOnPaper.start(line))), () -> text + " lacks " + line.text()));
            assertFalse(text.contains(Paper.squeezed("The laptop that stopped charging")), text);
        }
        browser.run("dispatchEvent(new Event('afterprint'))");
        assertFalse((boolean) browser.run("return document.querySelector('main').classList.contains('sheet-alone')"), "then all of it again");
    }

    @Test
    void aFurtherExampleThatWasOpenedIsPrintedWhole(Browser browser) throws IOException {
        browser.open("lessons/08-voltage-drop.html");
        String step = Paper.squeezed(WholeOnPaper.start(BuiltSite.page("lessons/08-voltage-drop.html").selectFirst("#mast-head-lamp .steps > li > .words")));
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
}
