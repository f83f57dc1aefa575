package loomwright.browser;

import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;

/** The name of the circuit. */
final class CircuitNameBox {
    private final HTMLInputElement box;
    private final HTMLElement fault;

    CircuitNameBox(HTMLDocument document) {
        this.box = (HTMLInputElement) document.getElementById("circuit-name");
        this.fault = document.getElementById("circuit-name-fault");
    }

    HTMLInputElement box() {
        return box;
    }

    /** Shows the name, unless it is being typed. */
    void show(String name) {
        if (!box.getValue().strip().equals(name)) {
            box.setValue(name);
            accept();
        }
    }

    void accept() {
        fault.setHidden(true);
        box.removeAttribute("aria-invalid");
    }

    /** Whether what stands in the box is no name, and so is kept nowhere. */
    boolean isRefused() {
        return box.getAttribute("aria-invalid") != null;
    }

    void refuse(String message) {
        fault.setTextContent("Look again: " + message + ".");
        fault.setHidden(false);
        box.setAttribute("aria-invalid", "true");
    }
}
