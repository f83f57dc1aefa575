package loomwright.browser;

import java.util.Locale;
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
    private final HTMLElement uploadBeside;
    private final HTMLInputElement linkBox;

    CircuitExchange(CircuitDesk desk, HTMLDocument document, CircuitNotice notice) {
        this.desk = desk;
        this.notice = notice;
        this.upload = document.getElementById("circuit-upload");
        this.uploadBeside = document.getElementById("circuit-upload-beside");
        this.linkBox = (HTMLInputElement) document.getElementById("circuit-link");
    }

    /** Takes what a link carries; listens for the next one, and for files. */
    void open() {
        openLink();
        Window.current().addEventListener("hashchange", event -> {
            openLink();
            desk.showAll();
        });
        upload.addEventListener("change", event -> read(upload, circuit -> {
            desk.change(circuit);
            desk.said().say("The file was opened. Undo brings back what stood here.");
        }));
        uploadBeside.addEventListener("change", event -> read(uploadBeside, desk.beside()::put));
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

    /** What is done with a circuit that was read. */
    private interface Opened {
        void open(Circuit circuit);
    }

    private void read(HTMLElement input, Opened opened) {
        CircuitFiles.read(input, CircuitFile.MOST_BYTES, text -> {
            if (text == null) {
                desk.said().say("The file was refused: it could not be read, or is larger than " + CircuitFile.MOST_BYTES / (1024 * 1024) + " MB."
                        + CircuitStore.STAYS);
                return;
            }
            FileRead read = CircuitFile.read(text);
            if (read.circuit() == null) {
                notice.refuse("The file was refused." + CircuitStore.STAYS, read.faults());
            } else {
                opened.open(read.circuit());
            }
        });
    }

    void download() {
        String file = fileName(desk.now().name());
        CircuitFiles.download(file, CircuitFile.write(desk.now()));
        desk.said().say("The file " + file + " was handed to your browser.");
    }

    /** The name of a circuit as the name of a file: small letters, digits and hyphens, which every disk takes. */
    private static String fileName(String name) {
        StringBuilder file = new StringBuilder();
        String small = name.toLowerCase(Locale.ROOT);
        for (int i = 0; i < small.length(); i++) {
            char c = small.charAt(i);
            if (c >= 'a' && c <= 'z' || c >= '0' && c <= '9') {
                file.append(c);
            } else if (file.length() > 0 && file.charAt(file.length() - 1) != '-') {
                file.append('-');
            }
        }
        int end = file.length() > 0 && file.charAt(file.length() - 1) == '-' ? file.length() - 1 : file.length();
        return (end == 0 ? "circuit" : file.substring(0, end)) + ".json";
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
