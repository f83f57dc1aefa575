package loomwright.generator.page;

import loomwright.generator.content.Front;
import loomwright.generator.problem.Places;

/**
 * What an author wrote above a page that the generator fills.
 *
 * @param title the title of the page
 * @param summary one sentence for search
 * @param html the text
 * @param places where its links and ids were written
 */
record Intro(String title, String summary, String html, Places places) {

    /** The intro of a page, or its bare title if no author wrote one. */
    static Intro of(Site site, String key, String title) {
        Front front = site.content().fronts().get(key);
        if (front == null) {
            return new Intro(title, title, "", new Places());
        }
        ArticleWriter writer = ArticleWriter.of(site, front.article().title(), front.article());
        String html = writer.write(front.article().body()).html();
        return new Intro(front.article().title(), front.summary(), html, writer.places());
    }
}
