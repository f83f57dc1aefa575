package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;

/** What holds of every page, as it opens. */
@ExtendWith(WithBrowser.class)
class EveryPageIT {
    private static final List<Integer> KEPT_WIDTHS = List.of(360, 1280);

    /** What sticks out to the right, outermost first, for the message. */
    private static final String STICKS_OUT =
            """
            const width = document.documentElement.clientWidth;
            return [...document.body.querySelectorAll('*')].filter(element => element.getBoundingClientRect().right > width + 1
                && !element.closest('.scroll, .line, .unseen')).slice(0, 5).map(element => element.outerHTML.slice(0, 120)).join('\\n');
            """;

    private static final String UNFOLD = "document.querySelectorAll('details').forEach(each => each.open = true)";

    /** The distances that a reader may ask for, of line, letters, words and paragraphs. @source WCAG 2.2, 1.4.12 Text spacing */
    private static final String SPREAD =
            """
            const style = document.createElement('style');
            style.textContent = '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }';
            document.head.append(style);
            """;

    /** Each page is opened once for all looks at it; what changes it comes last. */
    @TestFactory
    Stream<DynamicNode> everyPage(Browser browser) throws IOException {
        Audit audit = new Audit(browser);
        return BuiltSite.pages().stream().<DynamicNode>map(page -> DynamicContainer.dynamicContainer(page, List.of(
                dynamicTest("opens without a word on the console or a request elsewhere: " + page, () -> opensQuietly(browser, page)),
                dynamicTest("breaks no rule of the audit, in light or in dark: " + page, () -> breaksNoRule(browser, audit, page)),
                dynamicTest("is whole on paper: " + page, () -> WholeOnPaper.isWhole(browser, page)),
                dynamicTest("needs no sideways scroll on the smallest phone, at 400 %, with letters twice as large or far apart: " + page,
                        () -> needsNoSidewaysScroll(browser, page))))).onClose(audit::close);
    }

    private static void opensQuietly(Browser browser, String page) {
        browser.open(page);
        browser.touchAll();
        assertEquals(List.of(), browser.messages());
        for (String address : browser.loaded()) {
            assertTrue(address.startsWith("file:") || address.startsWith("data:"), address);
        }
    }

    private static void breaksNoRule(Browser browser, Audit audit, String page) {
        assertEquals("", audit.violationsOnceSettled(), page);
        browser.dark();
        assertEquals("", audit.violations(Audit.CONTRAST), page + " in the dark");
        browser.light();
    }

    private static void needsNoSidewaysScroll(Browser browser, String page) throws IOException {
        if (Boolean.getBoolean("pictures.kept")) {
            keep(browser, page);
        }
        fits(browser, 320, "as it opens");
        browser.run(UNFOLD);
        fits(browser, 320, "with all folds open");
        try {
            browser.letters(2);
            fits(browser, 390, "with letters twice as large");
        } finally {
            browser.letters(1);
        }
        browser.run(SPREAD);
        fits(browser, 320, "with letters, words and lines far apart");
    }

    private static void fits(Browser browser, int width, String how) {
        browser.width(width);
        Number needed = (Number) browser.run("return document.documentElement.scrollWidth");
        assertTrue(needed.intValue() <= width, () -> needed + " of " + width + " px wide " + how + ": " + browser.run(STICKS_OUT));
    }

    /** For people to look at, when they ask for it: a picture takes longer than every check of the page. */
    private static void keep(Browser browser, String page) throws IOException {
        for (int width : KEPT_WIDTHS) {
            browser.width(width);
            browser.keepPicture(page.replace('/', '-').replace(".html", "") + "-" + width);
        }
    }
}
