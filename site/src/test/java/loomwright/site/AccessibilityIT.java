package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The audit sees what it is to see, and finds nothing in the states a page comes to. */
@ExtendWith(WithBrowser.class)
class AccessibilityIT {
    @Test
    void theAuditSeesAPictureWithoutWordsAndPaleText(Browser browser) throws IOException {
        try (Audit audit = new Audit(browser)) {
            browser.open("about.html");
            browser.run("document.querySelector('main').append(new Image())");
            browser.run("const title = document.querySelector('h1'); title.style.color = '#999'; title.style.background = '#aaa'");
            assertTrue(audit.violations().contains("image-alt: "), audit::violations);
            browser.dark();
            assertTrue(audit.violations(Audit.CONTRAST).contains("color-contrast: "), audit::violations);
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
            assertEquals("", audit.violations(Audit.CONTRAST));
        }
    }
}
