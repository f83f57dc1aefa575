package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.markup.Fragment;
import loomwright.markup.Links;
import loomwright.worked.Calculator;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/** Takes over every worked example of the page. The page is whole without it. */
public final class PageProgram {
    private static final String FILE = "loomwright.js";

    private PageProgram() {}

    public static void main(String[] arguments) {
        HTMLDocument document = HTMLDocument.current();
        Links links = new Links(root(document));
        List<LiveExample> examples = new ArrayList<>();
        NodeList<? extends HTMLElement> sections = document.querySelectorAll("section.example[data-calculator]");
        for (int i = 0; i < sections.getLength(); i++) {
            HTMLElement section = sections.get(i);
            Calculator calculator = Catalogue.find(section.getAttribute("data-calculator"));
            if (calculator != null) {
                examples.add(LiveExample.takeOver(section, calculator, links));
            }
        }
        if (!examples.isEmpty()) {
            carry(examples.get(0));
            Window.current().addEventListener("hashchange", event -> carry(examples.get(0)));
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
    private static String root(HTMLDocument document) {
        HTMLElement script = document.querySelector("script[src$='" + FILE + "']");
        String address = script == null ? FILE : script.getAttribute("src");
        return address.substring(0, address.length() - FILE.length());
    }
}
