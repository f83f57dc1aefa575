package loomwright.browser;

import loomwright.units.UnitSystem;
import org.teavm.jso.dom.html.HTMLDocument;

/** The units that the reader chose for all pages; {@code units.js} keeps the choice and writes it on the page. */
final class UnitChoice {
    /** Sent to the document when another is chosen. */
    static final String EVENT = "units";

    private UnitChoice() {}

    static UnitSystem now() {
        return UnitSystem.of(HTMLDocument.current().getDocumentElement().getAttribute("data-units"));
    }
}
