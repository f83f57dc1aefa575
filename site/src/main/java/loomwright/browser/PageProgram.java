package loomwright.browser;

import loomwright.markup.Links;
import org.teavm.jso.JSBody;
import org.teavm.jso.dom.html.HTMLDocument;

/** What the page knows of its program: the tag that asked for it, and whether it is ready. */
final class PageProgram {
    private PageProgram() {}

    /** The page says here, and nowhere else, that its program listens and that every example in sight is taken over. */
    @JSBody(script = "document.documentElement.setAttribute('data-program', 'ready');")
    static native void isReady();

    /** Addresses from this page, after the tag that asked for the program. */
    static Links links(HTMLDocument document) {
        String address = document.querySelector("script[data-program]").getAttribute("src");
        return new Links(address.substring(0, address.lastIndexOf('/') + 1));
    }
}
