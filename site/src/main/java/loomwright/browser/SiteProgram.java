package loomwright.browser;

import org.teavm.jso.dom.html.HTMLDocument;

/** The program of every page with worked examples, marks of progress or sheets to make: all but "Your circuit". A page is whole without it. */
final class SiteProgram {
    private SiteProgram() {}

    public static void main(String[] arguments) {
        HTMLDocument document = HTMLDocument.current();
        LessonMarks.mount(document);
        CardButton.mount(document);
        ForgetButton.mount(document);
        TakeAlong.mount(document);
        Workshop.mount(document);
        Printing.prepare(document);
        InSight.followKeyboard();
        Further.followAddress();
        ScrollStops.watch();
        Examples.watch(document);
    }
}
