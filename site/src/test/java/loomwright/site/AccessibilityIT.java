package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;

/** No page breaks a rule of the audit, in light or in dark. */
@ExtendWith(WithBrowser.class)
class AccessibilityIT {
    private static final String CONTRAST = "color-contrast";

    /** Of all rules only that of contrast looks at colours, so it alone is asked again in the dark. */
    @TestFactory
    Stream<DynamicTest> everyPageBreaksNoRule(Browser browser) throws IOException {
        Audit audit = new Audit(browser);
        return BuiltSite.pages().stream().map(page -> DynamicTest.dynamicTest(page, () -> {
            browser.open(page);
            browser.touchAll();
            // Which formulas scroll the page finds out a moment after a change.
            if (!audit.violations("scrollable-region-focusable").isEmpty()) {
                browser.until(() -> audit.violations("scrollable-region-focusable").isEmpty());
            }
            assertEquals("", audit.violations(), page);
            browser.dark();
            assertEquals("", audit.violations(CONTRAST), page + " in the dark");
        })).onClose(audit::close);
    }

    @Test
    void theAuditSeesAPictureWithoutWordsAndPaleText(Browser browser) throws IOException {
        try (Audit audit = new Audit(browser)) {
            browser.open("about.html");
            browser.run("document.querySelector('main').append(new Image())");
            browser.run("const title = document.querySelector('h1'); title.style.color = '#999'; title.style.background = '#aaa'");
            assertTrue(audit.violations().contains("image-alt: "), audit::violations);
            browser.dark();
            assertTrue(audit.violations(CONTRAST).contains("color-contrast: "), audit::violations);
        }
    }

    /** A worked example has more states than the one it opens in. */
    @Test
    void anExampleWithOwnFiguresAMistakeAndAReplyBreaksNoRule(Browser browser) throws IOException {
        try (Audit audit = new Audit(browser)) {
            browser.open("calculators/voltage-drop.html");
            Form form = new Form(browser, "voltage-drop");
            form.enter("current", "5 A");
            form.type("answer", "1");
            browser.find("#voltage-drop form.check button").click();
            browser.run("document.querySelectorAll('details').forEach(each => each.open = true)");
            assertEquals("", audit.violations());
            form.enter("current", "many");
            assertTrue(form.isThere(".error"));
            assertEquals("", audit.violations());
            browser.dark();
            assertEquals("", audit.violations(CONTRAST));
        }
    }
}
