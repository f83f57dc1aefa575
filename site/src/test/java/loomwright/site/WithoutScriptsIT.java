package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;

/** A page is whole without its program. */
@ExtendWith(WithBrowser.class)
class WithoutScriptsIT {
    @TestFactory
    Stream<DynamicTest> everyExampleShowsWhatIsGivenAndWhatComesOfIt(Browser browser) {
        List<String> pages = BuiltSite.examples().stream().map(BuiltSite.Example::page).distinct().toList();
        return pages.stream().map(page -> DynamicTest.dynamicTest(page, () -> {
            browser.open("about.html");
            browser.scripts(false);
            try {
                browser.visit(page);
                assertEquals(0L, browser.run("return document.querySelectorAll('form.try').length"));
                assertEquals(
                        0L,
                        browser.run("return [...document.querySelectorAll('.example .given, .example .results, .example .working')]"
                                + ".filter(part => part.getBoundingClientRect().height < 20).length"));
            } finally {
                browser.scripts(true);
            }
        }));
    }

    @Test
    void theSearchPageListsEveryPage(Browser browser) {
        browser.open("about.html");
        browser.scripts(false);
        try {
            browser.visit("search.html");
            assertFalse((boolean) browser.run("return document.querySelector('#search').checkVisibility()"));
            Number links = (Number) browser.run("return document.querySelectorAll('main ul.plain a').length");
            assertTrue(links.intValue() > 20, links + " links");
        } finally {
            browser.scripts(true);
        }
    }

    @AfterEach
    void scriptsOn(Browser browser) {
        browser.scripts(true);
    }
}
