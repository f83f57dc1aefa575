package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
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

    @TestFactory
    Stream<DynamicTest> opensWithoutAWordOnTheConsoleOrARequestElsewhere(Browser browser) {
        return each(page -> {
            browser.open(page);
            assertEquals(List.of(), browser.messages());
            for (String address : browser.loaded()) {
                assertTrue(address.startsWith("file:") || address.startsWith("data:"), address);
            }
        });
    }

    @TestFactory
    Stream<DynamicTest> needsNoSidewaysScrollOnTheSmallestPhone(Browser browser) {
        return each(page -> {
            browser.open(page);
            browser.width(320);
            Number width = (Number) browser.run("return document.documentElement.scrollWidth");
            assertTrue(width.intValue() <= 320, () -> width + " wide: " + browser.run(STICKS_OUT));
        });
    }

    /** Kept for people to look at. Pages of tables are many and alike. */
    @TestFactory
    Stream<DynamicTest> isKeptAsAPictureUnlessItIsATable(Browser browser) {
        return each(page -> {
            if (page.startsWith("tables/")) {
                return;
            }
            browser.open(page);
            for (int width : KEPT_WIDTHS) {
                browser.width(width);
                browser.keepPicture(page.replace('/', '-').replace(".html", "") + "-" + width);
            }
        });
    }

    /** What is done with a page. */
    private interface Visit {
        void to(String page) throws Exception;
    }

    private static Stream<DynamicTest> each(Visit visit) {
        return BuiltSite.pages().stream().map(page -> DynamicTest.dynamicTest(page, () -> visit.to(page)));
    }
}
