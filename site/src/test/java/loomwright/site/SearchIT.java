package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
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

    /** A question as people type it finds the section or the calculator that answers it among the first three. */
    @Test
    void answersWhatPeopleAsk(Browser browser) throws IOException {
        browser.open("search.html");
        List<String> missed = new ArrayList<>();
        List<String> lines = questions();
        for (String line : lines) {
            String question = line.substring(0, line.indexOf('|')).strip();
            List<String> places = List.of(line.substring(line.indexOf('|') + 1).strip().split(" "));
            List<String> first = firstThree(browser, question);
            if (first.stream().noneMatch(each -> places.stream().anyMatch(each::contains))) {
                missed.add(question + ": " + first);
            }
        }
        assertTrue(lines.size() >= 60, "only " + lines.size() + " questions");
        assertEquals(List.of(), missed);
    }

    private static List<String> questions() throws IOException {
        try (InputStream in = SearchIT.class.getResourceAsStream("questions.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> !line.startsWith("#")).toList();
        }
    }

    @SuppressWarnings("unchecked")
    private static List<String> firstThree(Browser browser, String question) {
        return (List<String>) browser.run(
                "const box = document.getElementById('search-for'); box.value = arguments[0]; box.dispatchEvent(new Event('input'));"
                        + "return [...document.querySelectorAll('#search-found li > a')].slice(0, 3).map(each => each.getAttribute('href'))",
                question);
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
        browser.focus("#search-for");
        browser.press(words, Keys.ENTER);
    }

    private static int hits(Browser browser) {
        return ((Number) browser.run("return document.querySelectorAll('#search-found li').length")).intValue();
    }
}
