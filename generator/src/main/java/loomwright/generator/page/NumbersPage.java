package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.generator.example.CheckedQuestion;
import loomwright.generator.example.Example;
import loomwright.generator.example.Pin;
import loomwright.generator.markdown.PlainText;
import loomwright.source.Document;

/** Writes "Where the numbers come from": every pin with its difference, every document with what relies on it. */
final class NumbersPage {
    private static final String ADDRESS = "numbers.html";
    private static final int DIFFERENCE_DIGITS = 2;

    /** The record of numbers.mustache. */
    record Page(
            Frame frame,
            String title,
            String intro,
            int pinCount,
            int exampleCount,
            int questionCount,
            int outsideCount,
            List<PinRow> pins,
            List<SourceEntry> sources) {}

    /** A pin. */
    record PinRow(
            String href,
            String example,
            String result,
            String computed,
            String published,
            String difference,
            String allowed,
            String source,
            String sourceId,
            String locus,
            String standing) {}

    /** A document. */
    record SourceEntry(
            String id,
            String document,
            String issuer,
            String edition,
            String standing,
            String seen,
            String note,
            Links usedIn) {}

    private NumbersPage() {}

    static void write(Site site, Frames frames, Templates templates, SearchData search, PageSink sink) {
        Intro intro = Intro.of(site, "numbers", "Where the numbers come from");
        List<PinRow> pins = new ArrayList<>();
        int outside = 0;
        for (Example example : site.book().all()) {
            for (Pin pin : example.pins()) {
                pins.add(row(example.address(), example.title(), pin));
                outside += pin.holds() ? 0 : 1;
            }
        }
        for (CheckedQuestion question : site.book().questions()) {
            for (Pin pin : question.pins()) {
                pins.add(row(question.address(), "Question: " + question.key().replace('-', ' '), pin));
                outside += pin.holds() ? 0 : 1;
            }
        }
        List<SourceEntry> sources = site.content().documents().values().stream().map(each -> entry(site, each)).toList();
        Page page = new Page(
                frames.of(intro.title(), intro.summary(), ADDRESS), intro.title(), intro.html(), pins.size(),
                site.book().all().size(), site.book().questions().size(), outside, pins, sources);
        search.add(intro.title(), ADDRESS, "page", intro.summary(), PlainText.of(intro.html()));
        sink.page(ADDRESS, templates.fill("numbers", page), intro.places());
    }

    private static PinRow row(String address, String title, Pin pin) {
        return new PinRow(
                Address.from(ADDRESS, address),
                title,
                pin.output().label(),
                pin.computed().in(pin.expect().unit()).text(),
                pin.expectText(),
                pin.difference().text(DIFFERENCE_DIGITS),
                pin.toleranceText(),
                pin.source().document().title(),
                Address.sourceId(pin.source().document().key()),
                orNull(pin.source().locus()),
                pin.source().standing().words());
    }

    private static SourceEntry entry(Site site, Document document) {
        return new SourceEntry(
                Address.sourceId(document.key()),
                document.title(),
                document.issuer(),
                orNull(document.edition()),
                document.standing().words(),
                orNull(document.seen()),
                orNull(document.note()),
                Links.of(ADDRESS, site.reliance().ofDocument(document.key())));
    }

    private static String orNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
