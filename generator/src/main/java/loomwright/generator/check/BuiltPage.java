package loomwright.generator.check;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import loomwright.generator.problem.Problem;
import loomwright.generator.problem.SourceFile;
import loomwright.generator.problem.Span;

/** A finished page under check. */
final class BuiltPage {
    private final String address;
    private final String html;
    private final Map<String, Span> authorLinks;
    private final Set<String> ids = new HashSet<>();

    BuiltPage(String address, String html, Map<String, Span> authorLinks) {
        this.address = address;
        this.html = html;
        this.authorLinks = authorLinks;
    }

    String address() {
        return address;
    }

    Set<String> ids() {
        return ids;
    }

    /** A problem at the words of the page that show it: the built page, for want of the author's own line. */
    Problem problem(String shownBy, String words, String remedy) {
        SourceFile file = new SourceFile("page " + address, html);
        return file.find(shownBy, 0, html.length()).problem(words, remedy);
    }

    /** A problem with a link: at the author's line if an author wrote the link. */
    Problem linkProblem(String href, String words, String remedy) {
        Span place = authorLinks.get(href);
        return place == null
                ? problem("href=\"" + href.replace("&", "&amp;") + "\"", words, remedy)
                : place.problem(words, remedy);
    }
}
