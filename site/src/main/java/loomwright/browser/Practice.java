package loomwright.browser;

import loomwright.catalogue.Subject;
import loomwright.markup.Links;
import loomwright.worked.Calculator;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/** Takes over the ladders of the examples of one subject, and opens the rung that was asked for while this program was on its way. */
final class Practice {
    private Practice() {}

    static void start(Subject subject) {
        HTMLDocument document = HTMLDocument.current();
        Links links = new Links(root(document, "practice-" + subject.name() + ".js"));
        NodeList<? extends HTMLElement> sections = document.querySelectorAll("section.example[data-subject='" + subject.name() + "']");
        for (int i = 0; i < sections.getLength(); i++) {
            HTMLElement section = sections.get(i);
            Calculator calculator = subject.find(section.getAttribute("data-calculator"));
            HTMLElement ladder = section.querySelector(".ladder");
            Climb climb = new Climb(section, ladder, calculator, links);
            ladder.setAttribute("data-live", "");
            String wanted = ladder.getAttribute("data-wanted");
            if (wanted != null) {
                climb.open(wanted.charAt(0) - '0');
            }
        }
    }

    private static String root(HTMLDocument document, String file) {
        String address = document.querySelector("script[src$='" + file + "']").getAttribute("src");
        return address.substring(0, address.length() - file.length());
    }
}
