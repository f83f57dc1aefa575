package loomwright.browser;

import loomwright.circuit.Circuit;
import loomwright.circuit.file.CircuitFile;
import loomwright.circuit.file.CircuitLink;
import loomwright.circuit.file.FileRead;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;

/** Circuits that come and go as files and in links. Whatever is refused, the present work stays. */
final class CircuitExchange {
    private static final String FRAGMENT = "#circuit=";

    private final CircuitDesk desk;
    private final CircuitNotice notice;
    private final HTMLElement upload;
    private final HTMLInputElement linkBox;

    CircuitExchange(CircuitDesk desk, HTMLDocument document, CircuitNotice notice) {
        this.desk = desk;
        this.notice = notice;
        this.upload = document.getElementById("circuit-upload");
        this.linkBox = (HTMLInputElement) document.getElementById("circuit-link");
    }

    /** Takes what a link carries; listens for the next one, and for files. */
    void open() {
        openLink();
        Window.current().addEventListener("hashchange", event -> {
            openLink();
            desk.showAll();
        });
        upload.addEventListener("change", event -> upload());
    }

    private void openLink() {
        String hash = Window.current().getLocation().getHash();
        if (!hash.startsWith(FRAGMENT)) {
            return;
        }
        CircuitFiles.clearFragment();
        FileRead read = CircuitLink.read(hash.substring(FRAGMENT.length()));
        if (read.circuit() == null) {
            notice.refuse("The link was refused." + CircuitStore.STAYS, read.faults());
            return;
        }
        Circuit carried = read.circuit();
        if (!desk.store().hasOwn()) {
            desk.change(carried);
        } else if (!carried.equals(desk.now())) {
            notice.ask(
                    "The link carries a circuit of " + carried.parts().size() + " parts: " + title(carried) + ". Here stands your own: "
                            + title(desk.now()) + ".",
                    "Take that of the link", () -> {
                        desk.change(carried);
                        desk.said().say("The circuit of the link was taken. Undo brings back yours.");
                    },
                    "Keep mine", desk.store()::keep);
        }
    }

    private static String title(Circuit circuit) {
        return circuit.name().isEmpty() ? "one without a name" : "\u201c" + circuit.name() + "\u201d";
    }

    private void upload() {
        CircuitFiles.read(upload, CircuitFile.MOST_BYTES, text -> {
            if (text == null) {
                desk.said().say("The file was refused: it could not be read, or is larger than " + CircuitFile.MOST_BYTES / 1024 + " KB."
                        + CircuitStore.STAYS);
                return;
            }
            FileRead read = CircuitFile.read(text);
            if (read.circuit() == null) {
                notice.refuse("The file was refused." + CircuitStore.STAYS, read.faults());
            } else {
                desk.change(read.circuit());
                desk.said().say("The file was opened. Undo brings back what stood here.");
            }
        });
    }

    void download() {
        CircuitFiles.download("circuit.json", CircuitFile.write(desk.now()));
        desk.said().say("The file circuit.json was handed to your browser.");
    }

    void makeLink() {
        String link = CircuitLink.write(desk.now());
        if (link == null) {
            desk.said().say("This circuit is too large for a link: download the file instead.");
            return;
        }
        Dom.closest(linkBox, ".field").setHidden(false);
        linkBox.setValue(CircuitFiles.address() + FRAGMENT + link);
        CircuitFiles.select(linkBox);
    }
}
