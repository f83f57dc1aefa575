package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

@ExtendWith(WithBrowser.class)
class SearchIT {
    @Test
    void findsAPageByItsTitle(Browser browser) {
        search(browser, "voltage drop");
        String first = browser.text("#search-found li a");
        assertTrue(first.toLowerCase(java.util.Locale.ROOT).contains("voltage drop"), first);
    }

    @Test
    void findsAWordFromItsBeginningAndWithASlip(Browser browser) {
        search(browser, "ampac");
        assertTrue(hits(browser) > 0);
        search(browser, "ampaciti");
        assertTrue(hits(browser) > 0);
    }

    @Test
    void saysSoIfThereIsNothing(Browser browser) {
        search(browser, "xyzzyq");
        assertEquals("Nothing found for xyzzyq: try one word", browser.text("#search-said"));
        assertEquals(0, hits(browser));
    }

    @Test
    void takesAnyTextForWords(Browser browser) {
        search(browser, "+fuse -title:* ~9 ^ \"<b>");
        assertFalse((boolean) browser.run("return document.querySelector('main b') !== null"));
        assertEquals(List.of(), browser.messages());
    }

    private static void search(Browser browser, String words) {
        browser.open("search.html");
        browser.find("#search-for").sendKeys(words, Keys.ENTER);
    }

    private static int hits(Browser browser) {
        return ((Number) browser.run("return document.querySelectorAll('#search-found li').length")).intValue();
    }
}
