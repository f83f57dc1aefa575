package loomwright.markup;

import loomwright.source.Source;

/** The line that says where a figure comes from. */
public final class SourceMarkup {
    private SourceMarkup() {}

    /** The line as a paragraph. */
    public static String paragraph(Links links, Source source) {
        return wrapped("p", links, source);
    }

    /** The line inside a sentence or a list. */
    public static String inLine(Links links, Source source) {
        return wrapped("span", links, source);
    }

    private static String wrapped(String element, Links links, Source source) {
        Html html = new Html().tag("<" + element + " class=\"source\">Source: ");
        if (links.root() == null) {
            html.text(source.document().title());
        } else {
            html.tag("<a").attribute("href", links.source(source)).tag(">").text(source.document().title()).tag("</a>");
        }
        if (isDate(source.document().edition())) {
            html.tag(", ").text(source.document().edition());
        }
        if (!source.locus().isEmpty()) {
            html.tag(", ").text(source.locus());
        }
        html.tag(" <span class=\"standing\">").text(source.standing().words()).tag("</span>");
        return html.tag("</" + element + ">").toString();
    }

    /** Whether the edition names a year. "Undated" and the like stand on the page of sources only. */
    private static boolean isDate(String edition) {
        for (int i = 0; i < edition.length(); i++) {
            if (edition.charAt(i) >= '0' && edition.charAt(i) <= '9') {
                return true;
            }
        }
        return false;
    }
}
