package loomwright.generator.page;

import loomwright.generator.content.PlainPage;
import loomwright.generator.markdown.Markup;
import loomwright.generator.markdown.PlainText;

/** Writes the pages of plain text. */
final class PlainPages {
    /** The record of page.mustache. */
    record Page(Frame frame, String title, String body) {}

    private PlainPages() {}

    static void write(Site site, Frames frames, Templates templates, SearchData search, PageSink sink) {
        for (PlainPage plain : site.content().pages()) {
            String title = plain.article().title();
            String address = plain.article().address();
            ArticleWriter writer = ArticleWriter.of(site, title, plain.article());
            Markup markup = writer.write(plain.article().body());
            Page page = new Page(frames.of(title, plain.summary(), address), title, markup.html());
            sink.page(address, templates.fill("page", page), writer.places());
            search.add(title, address, "page", plain.summary(), PlainText.of(markup.html()));
        }
    }
}
