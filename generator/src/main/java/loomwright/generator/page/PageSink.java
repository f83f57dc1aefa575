package loomwright.generator.page;

import loomwright.generator.problem.Places;

/** Takes finished pages. */
public interface PageSink {

    /**
     * Takes a page.
     *
     * @param address where it goes, from the root of the site
     * @param html the page
     * @param places where an author wrote its links and ids
     */
    void page(String address, String html, Places places);

    /** Takes a file that is not a page. */
    void file(String address, byte[] bytes);
}
