package loomwright.generator.page;

import loomwright.circuit.check.Examination;
import loomwright.circuit.file.StartingCircuits;
import loomwright.circuit.page.CircuitMarkup;
import loomwright.generator.markdown.PlainText;
import loomwright.markup.Links;

/** Writes the page of a whole circuit, with the circuit a reader begins with. A site whose content has no such page goes without. */
final class CircuitPage {
    static final String ADDRESS = "your-circuit.html";

    /** The record of your-circuit.mustache. */
    record Page(Frame frame, String title, String intro, String circuit, String cautions, String assumptions, String keeping) {}

    private CircuitPage() {}

    static void write(Site site, Frames frames, Templates templates, SearchData search, PageSink sink) {
        if (!site.content().fronts().containsKey("your-circuit")) {
            return;
        }
        Intro intro = Intro.of(site, "your-circuit", "Your circuit");
        int cautions = sectionAt(intro.html(), 0);
        int rest = sectionAt(intro.html(), cautions + 1);
        int keeping = sectionAt(intro.html(), rest + 1);
        Page page = new Page(
                frames.of(intro.title(), intro.summary(), ADDRESS),
                intro.title(),
                intro.html().substring(0, cautions),
                CircuitMarkup.printed(new Links(""), Examination.of(StartingCircuits.reedmereTrailer())),
                intro.html().substring(cautions, rest),
                intro.html().substring(rest, keeping),
                intro.html().substring(keeping));
        sink.page(ADDRESS, templates.fill("your-circuit", page), intro.places());
        search.add(intro.title(), ADDRESS, "page", intro.summary(), PlainText.of(intro.html()));
    }

    /** Where the next section begins; the end of the text if there is none. */
    private static int sectionAt(String html, int from) {
        int at = html.indexOf("<h2", from);
        return at < 0 ? html.length() : at;
    }
}
