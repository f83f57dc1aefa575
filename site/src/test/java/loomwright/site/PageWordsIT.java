package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** What a page says, read without a browser. */
class PageWordsIT {
    /** Rows, documents and tables have names for those who write lessons, such as {@code lead-acid-100-ah}. A reader gets words. */
    @Test
    void noTableShowsANameThatOnlyAuthorsUse() {
        List<String> names = pages("tables/")
                .flatMap(page -> BuiltSite.page(page).select("main :is(th[scope=row], td, p)").stream().map(element -> page + ": " + element.ownText()))
                .filter(text -> text.matches("\\S+ [a-z0-9]+(-[a-z0-9]+){2,}") && !text.endsWith(" out-and-back"))
                .toList();
        assertEquals(List.of(), names);
        assertTrue(pages("tables/").count() > 40);
    }

    /** A table whose page shows no row of it is not offered to anyone. */
    @Test
    void everyTableOfTheListHasRows() {
        List<String> offered = BuiltSite.page("tables.html").select(".plain > li > a").eachAttr("href");
        assertTrue(offered.size() > 30, offered::toString);
        assertEquals(List.of(), offered.stream().filter(page -> BuiltSite.page(page).selectFirst("table tbody tr") == null).toList());
    }

    /** What a calculator takes for granted, and which mistakes are known, is said once on its page. */
    @Test
    void noCalculatorPageSaysASentenceOfAListTwice() {
        List<String> twice = pages("calculators/").flatMap(page -> {
            Set<String> seen = new HashSet<>();
            return BuiltSite.page(page).select("main details:not(.tried) > ul > li").stream()
                    .map(Element::text).filter(text -> text.length() > 60 && !seen.add(text)).map(text -> page + ": " + text);
        }).toList();
        assertEquals(List.of(), twice);
    }

    private static Stream<String> pages(String folder) {
        return BuiltSite.pages().stream().filter(page -> page.startsWith(folder));
    }
}
