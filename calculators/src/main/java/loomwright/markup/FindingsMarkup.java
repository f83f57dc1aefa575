package loomwright.markup;

import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.Working;

/** The checks of a working. */
public final class FindingsMarkup {
    private FindingsMarkup() {}

    /** The checks of an example, a line each; what to do and the source unfold. */
    static String folded(Links links, Working working) {
        if (working.findings().isEmpty()) {
            return "";
        }
        Html html = new Html().tag("<div class=\"findings checks\"><h4>Checks</h4><ul>");
        for (Finding finding : working.findings()) {
            html.tag("<li class=\"finding\"").attribute("data-verdict", finding.verdict().key()).tag("><details><summary><span><strong class=\"verdict\">");
            html.text(Words.sentence(finding.verdict().words())).tag("</strong> ").text(Words.sentence(finding.words())).tag("</span></summary>");
            remedy(html, "What to do: ", finding);
            html.tag(SourceMarkup.paragraph(links, finding.source())).tag("</details></li>");
        }
        return html.tag("</ul></div>").toString();
    }

    /** The checks where a heading stands already. */
    public static String list(Links links, Working working) {
        return working.findings().isEmpty() ? "" : "<div class=\"findings\">" + items(links, working) + "</div>";
    }

    private static String items(Links links, Working working) {
        Html html = new Html().tag("<ul>");
        for (Finding finding : working.findings()) {
            item(html, links, finding);
        }
        return html.tag("</ul>").toString();
    }

    /** One check, as an item of a list. */
    static void item(Html html, Links links, Finding finding) {
        open(html, finding.verdict());
        html.text(Words.sentence(finding.words())).tag("</p>");
        remedy(html, "What to do: ", finding);
        html.tag(SourceMarkup.paragraph(links, finding.source())).tag("</li>");
    }

    /** The start of a check: the item, its first paragraph and the verdict in it. */
    public static void open(Html html, Verdict verdict) {
        html.tag("<li class=\"finding\"").attribute("data-verdict", verdict.key()).tag("><p><strong class=\"verdict\">");
        html.text(Words.sentence(verdict.words())).tag("</strong> ");
    }

    /** What to do about a check, if there is anything to do. */
    public static void remedy(Html html, String lead, Finding finding) {
        if (!finding.remedy().isEmpty()) {
            html.tag("<p class=\"remedy\">").text(lead).text(Words.sentence(Words.small(finding.remedy()))).tag("</p>");
        }
    }
}
