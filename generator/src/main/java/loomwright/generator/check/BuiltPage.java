package loomwright.generator.check;

import java.util.HashSet;
import java.util.Set;
import loomwright.generator.problem.Places;
import loomwright.generator.problem.Problem;
import loomwright.generator.problem.SourceFile;
import loomwright.generator.problem.Span;

/** A finished page under check. */
final class BuiltPage {
    private final String address;
    private final String html;
    private final Places places;
    private final Set<String> ids = new HashSet<>();

    BuiltPage(String address, String html, Places places) {
        this.address = address;
        this.html = html;
        this.places = places;
    }

    Set<String> ids() {
        return ids;
    }

    /** A problem at the words of the page that show it: the built page, for want of the author's own line. */
    Problem problem(String shownBy, String words, String remedy) {
        SourceFile file = new SourceFile(Problem.PAGE + address, html);
        return file.find(shownBy, 0, html.length()).problem(words, remedy);
    }

    /** Where an author wrote a link, or null if no author did. */
    Span writtenAt(String href) {
        return places.ofLink(href);
    }

    /** A problem with a link: at the author's line if an author wrote the link. */
    Problem linkProblem(String href, String words, String remedy) {
        Span place = writtenAt(href);
        return place == null
                ? problem("href=\"" + href.replace("&", "&amp;") + "\"", words, remedy)
                : place.problem(words, remedy);
    }

    /** A problem with an id, or with what bears it: at the author's line if an author gave the id. */
    Problem idProblem(String id, String words, String remedy) {
        Span place = places.ofId(id);
        return place == null ? problem("id=\"" + id + "\"", words, remedy) : place.problem(words, remedy);
    }
}
