package loomwright.browser;

import loomwright.units.UnitSystem;
import org.teavm.jso.dom.html.HTMLDocument;

/** The units that the reader chose for all pages; {@code units.js} keeps the choice and writes it on the page. */
final class UnitChoice {
    /** Sent to the document when another is chosen. */
    static final String EVENT = "units";

    private UnitChoice() {}

    static UnitSystem now() {
        return named("data-units");
    }

    /** The units in which the pages of this site were written. */
    static UnitSystem ofSite() {
        return named("data-site-units");
    }

    private static UnitSystem named(String attribute) {
        return UnitSystem.of(HTMLDocument.current().getDocumentElement().getAttribute(attribute));
    }
}
