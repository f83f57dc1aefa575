package loomwright.browser;

import java.util.Map;
import loomwright.catalogue.Subject;
import loomwright.markup.Fragment;
import loomwright.markup.Links;
import loomwright.worked.Calculator;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/** Takes over the worked examples of one subject. The page is whole without it, and a page may run several subjects side by side. */
final class PageProgram {
    private PageProgram() {}

    static void start(Subject subject) {
        HTMLDocument document = HTMLDocument.current();
        Links links = new Links(root(document, subject.name() + ".js"));
        NodeList<? extends HTMLElement> sections = document.querySelectorAll("section.example[data-calculator]");
        for (int i = 0; i < sections.getLength(); i++) {
            HTMLElement section = sections.get(i);
            Calculator calculator = subject.find(section.getAttribute("data-calculator"));
            if (calculator != null) {
                LiveExample example = LiveExample.takeOver(section, calculator, links);
                if (i == 0) {
                    carry(example);
                    Window.current().addEventListener("hashchange", event -> carry(example));
                }
            }
        }
        Printing.prepare(document);
    }

    /** Figures in the address go to the first example of the page; an address that only names a place changes nothing. */
    private static void carry(LiveExample example) {
        Map<String, String> carried = Fragment.read(Window.current().getLocation().getHash());
        if (!carried.isEmpty()) {
            example.fill(carried);
        }
    }

    /** The way to the root of the site, as the page's own link to this program has it. */
    private static String root(HTMLDocument document, String file) {
        HTMLElement script = document.querySelector("script[src$='" + file + "']");
        String address = script == null ? file : script.getAttribute("src");
        return address.substring(0, address.length() - file.length());
    }
}
