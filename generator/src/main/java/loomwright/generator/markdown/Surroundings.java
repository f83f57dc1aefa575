package loomwright.generator.markdown;

import loomwright.generator.problem.Span;

/** What the text of a page needs from the rest of the site. Each method reports its own problems. */
public interface Surroundings {

    /**
     * A value by its name, as HTML.
     *
     * @param linked whether it may be a link
     */
    String value(String name, Span place, boolean linked);

    /**
     * Where a link leads, and its class.
     *
     * @return null if it leads nowhere; the link is then left out
     */
    Target link(String address, Span place);

    /** A fenced block of ours, as HTML; null if there is no such block at this place. */
    String block(Span info);

    /** The id of a heading of this text; each id is given once in a page. */
    String headingId(String heading, Span place);

    /**
     * Where a link leads.
     *
     * @param href the address from the page it stands in
     * @param kind the class of the link, or an empty text
     * @param words what a link without words of its own says, or an empty text
     */
    record Target(String href, String kind, String words) {
        public Target(String href, String kind) {
            this(href, kind, "");
        }
    }
}
