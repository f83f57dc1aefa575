package loomwright.generator.page;

import java.util.Map;
import loomwright.generator.problem.Span;

/** Takes finished pages. */
public interface PageSink {

    /**
     * Takes a page.
     *
     * @param address where it goes, from the root of the site
     * @param html the page
     * @param links links that an author wrote, by address, with the place of the first of each
     */
    void page(String address, String html, Map<String, Span> links);

    /** Takes a text file that is not a page. */
    void file(String address, String text);
}
