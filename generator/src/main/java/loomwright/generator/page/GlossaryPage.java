package loomwright.generator.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import loomwright.generator.content.Term;
import loomwright.generator.markdown.PlainText;

/** Writes the words of the trade. */
final class GlossaryPage {
    private static final String ADDRESS = "glossary.html";

    /** The record of glossary.mustache. */
    record Page(Frame frame, String title, String intro, List<Letter> letters, List<Entry> terms) {}

    /** A letter that some word begins with. */
    record Letter(String letter, String href) {}

    /** A word and its meaning. */
    record Entry(String id, String term, String meaning) {}

    private GlossaryPage() {}

    static void write(Site site, Frames frames, Templates templates, SearchData search, PageSink sink) {
        Intro intro = Intro.of(site, "glossary", "Words");
        ArticleWriter writer = new ArticleWriter(site, new Place(intro.title(), ADDRESS), List.of());
        List<Entry> entries = new ArrayList<>();
        Map<String, Letter> letters = new LinkedHashMap<>();
        for (Term term : site.content().terms().values()) {
            String meaning = writer.write(term.meaning()).html();
            entries.add(new Entry(term.key(), term.words(), meaning));
            String letter = term.words().substring(0, 1).toUpperCase(Locale.ROOT);
            letters.putIfAbsent(letter, new Letter(letter, "#" + term.key()));
            search.add(term.words(), Address.term(term.key()), "word", PlainText.of(meaning), "");
        }
        Page page = new Page(
                frames.of(intro.title(), intro.summary(), ADDRESS),
                intro.title(), intro.html(), List.copyOf(letters.values()), entries);
        sink.page(ADDRESS, templates.fill("glossary", page), intro.places().and(writer.places()));
    }
}
