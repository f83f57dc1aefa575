package loomwright.browser;

import java.util.HashMap;
import java.util.Map;
import loomwright.markup.GivenMarkup;
import loomwright.worked.Description;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/** The list of what is given: where the form starts from, and what stands in for the form on paper. */
final class GivenList {
    private final HTMLElement element;
    private final Description description;
    private final String printedMarkup;
    private final Map<String, String> printed = new HashMap<>();
    private Map<String, String> own;

    GivenList(HTMLElement element, Description description) {
        this.element = element;
        this.description = description;
        this.printedMarkup = element.getInnerHTML();
        Window.current().addEventListener("beforeprint", event -> write());
        NodeList<? extends HTMLElement> entries = element.querySelectorAll("[data-input]");
        for (int i = 0; i < entries.getLength(); i++) {
            printed.put(entries.get(i).getAttribute("data-input"), entries.get(i).getAttribute("data-given"));
        }
    }

    HTMLElement element() {
        return element;
    }

    Map<String, String> printed() {
        return printed;
    }

    void hide() {
        element.setHidden(true);
    }

    /** From now on these entries are given. They are written down when the page is printed; until then the form shows them. */
    void show(Map<String, String> entries, boolean isPrinted) {
        own = isPrinted ? null : entries;
    }

    private void write() {
        element.setInnerHTML(own == null ? printedMarkup : GivenMarkup.inside("Given, with your own figures", description, own));
    }
}
