package loomwright.generator.page;

import java.util.Map;
import loomwright.generator.content.Front;
import loomwright.generator.problem.Span;

/**
 * What an author wrote above a page that the generator fills.
 *
 * @param title the title of the page
 * @param summary one sentence for search
 * @param html the text
 * @param links the links in it
 */
record Intro(String title, String summary, String html, Map<String, Span> links) {

    /** The intro of a page, or its bare title if no author wrote one. */
    static Intro of(Site site, String key, String title) {
        Front front = site.content().fronts().get(key);
        if (front == null) {
            return new Intro(title, title, "", Map.of());
        }
        ArticleWriter writer = ArticleWriter.of(site, front.article().title(), front.article());
        String html = writer.write(front.article().body()).html();
        return new Intro(front.article().title(), front.summary(), html, writer.links());
    }
}
