package loomwright.browser;

import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/** Before printing, unfolds what is folded and shows the figures as a list in the place of the form; afterwards puts all back. */
final class Printing {
    private static final String OPENED = "data-opened";

    private final HTMLDocument document;

    private Printing(HTMLDocument document) {
        this.document = document;
    }

    static void prepare(HTMLDocument document) {
        Printing printing = new Printing(document);
        Window.current().addEventListener("beforeprint", event -> printing.before());
        Window.current().addEventListener("afterprint", event -> printing.after());
    }

    private void before() {
        NodeList<? extends HTMLElement> folded = document.querySelectorAll("details:not([open], .further)");
        for (int i = 0; i < folded.getLength(); i++) {
            folded.get(i).setAttribute(OPENED, "");
            folded.get(i).setAttribute("open", "");
        }
        hide(true);
    }

    private void after() {
        NodeList<? extends HTMLElement> opened = document.querySelectorAll("details[" + OPENED + "]");
        for (int i = 0; i < opened.getLength(); i++) {
            opened.get(i).removeAttribute(OPENED);
            opened.get(i).removeAttribute("open");
        }
        hide(false);
    }

    private void hide(boolean forms) {
        hide("section.example form.try, section.example form.check", forms);
        hide("section.example .given:has(+ form.try)", !forms);
    }

    private void hide(String selector, boolean hidden) {
        NodeList<? extends HTMLElement> elements = document.querySelectorAll(selector);
        for (int i = 0; i < elements.getLength(); i++) {
            elements.get(i).setHidden(hidden);
        }
    }
}
