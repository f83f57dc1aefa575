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
    record Page(Frame frame, String title, String intro, String circuit, String body) {}

    private CircuitPage() {}

    static void write(Site site, Frames frames, Templates templates, SearchData search, PageSink sink) {
        if (!site.content().fronts().containsKey("your-circuit")) {
            return;
        }
        Intro intro = Intro.of(site, "your-circuit", "Your circuit");
        int firstSection = intro.html().indexOf("<h2");
        int split = firstSection < 0 ? intro.html().length() : firstSection;
        Page page = new Page(
                frames.of(intro.title(), intro.summary(), ADDRESS),
                intro.title(),
                intro.html().substring(0, split),
                CircuitMarkup.printed(new Links(""), Examination.of(StartingCircuits.reedmereTrailer())),
                intro.html().substring(split));
        sink.page(ADDRESS, templates.fill("your-circuit", page), intro.places());
        search.add(intro.title(), ADDRESS, "page", intro.summary(), PlainText.of(intro.html()));
    }
}
