package loomwright.browser;

import java.util.HashMap;
import java.util.Map;
import loomwright.markup.Absent;
import loomwright.markup.Assumed;
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
    private final Map<String, String> said = new HashMap<>();
    private final Assumed assumed;
    private Map<String, String> now;
    private Map<String, String> own;
    private Absent absent;

    GivenList(HTMLElement element, Description description, Assumed assumed) {
        this.assumed = assumed;
        this.element = element;
        this.description = description;
        this.printedMarkup = element.getInnerHTML();
        Window.current().addEventListener("beforeprint", event -> write());
        NodeList<? extends HTMLElement> entries = element.querySelectorAll("[data-input]");
        for (int i = 0; i < entries.getLength(); i++) {
            HTMLElement entry = entries.get(i);
            printed.put(entry.getAttribute("data-input"), entry.getAttribute("data-given"));
            if (!entry.hasAttribute("data-unsaid")) {
                said.put(entry.getAttribute("data-input"), entry.getAttribute("data-given"));
            }
        }
    }

    HTMLElement element() {
        return element;
    }

    /** What the example was printed with. */
    Map<String, String> printed() {
        return printed;
    }

    /** What of it was said; the rest is assumed. */
    Map<String, String> said() {
        return said;
    }

    void hide() {
        element.setHidden(true);
    }

    /**
     * From now on these entries are given. They are written down when the page is printed; until then the form shows them.
     *
     * @param typed what of them is the reader's
     * @param without what does not belong to the way chosen
     */
    void show(Map<String, String> entries, Map<String, String> typed, Absent without, boolean isPrinted) {
        absent = without;
        now = isPrinted ? null : entries;
        own = typed;
    }

    private void write() {
        element.setInnerHTML(now == null ? printedMarkup : GivenMarkup.inside("Given, with your own figures", description, now, own, assumed, absent));
    }
}
