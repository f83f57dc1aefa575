package loomwright.browser;

import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** The button that clears what is remembered. It goes to the end of the page's section on that, which is known by its heading. */
final class ForgetButton {
    private static final String SECTION = "#what-this-device-remembers";

    private ForgetButton() {}

    static void mount(HTMLDocument document) {
        HTMLElement paragraph = document.querySelector("h2" + SECTION + " + p, h2:has(" + SECTION + ") + p");
        if (paragraph == null) {
            return;
        }
        Dom.insertAfter(
                paragraph,
                "<p class=\"moves\"><button type=\"button\" class=\"quiet\" id=\"forget\">Forget my progress on this device</button></p>"
                        + "<p id=\"forgotten\" role=\"status\"></p>");
        HTMLElement answer = document.getElementById("forgotten");
        if (!Progress.isRemembered()) {
            answer.setTextContent("This browser does not let the page remember anything.");
        }
        document.getElementById("forget").addEventListener("click", event -> {
            Progress.forget();
            answer.setTextContent(
                    Progress.isRemembered() ? "Forgotten. Nothing of yours is kept on this device now." : "There was nothing to forget.");
        });
    }
}
