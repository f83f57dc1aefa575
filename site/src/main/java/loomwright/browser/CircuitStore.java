package loomwright.browser;

import java.util.HashMap;
import loomwright.circuit.Circuit;
import loomwright.circuit.file.CircuitFile;
import loomwright.circuit.file.CircuitLink;
import loomwright.circuit.file.FileRead;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;

/** How the circuit is kept on this device, in files and in links. Whatever is refused, the present work stays. */
final class CircuitStore {
    private static final String FRAGMENT = "#circuit=";
    private static final String STAYS = " What stands here stays as it is.";

    private final CircuitDesk desk;
    private final HTMLDocument document;
    private final CircuitNotice notice;
    private final HTMLElement line;
    private final CircuitKeeper keeper = new CircuitKeeper();

    CircuitStore(CircuitDesk desk, HTMLDocument document) {
        this.desk = desk;
        this.document = document;
        this.notice = new CircuitNotice(document.getElementById("circuit-notice"));
        this.line = document.getElementById("circuit-kept");
    }

    /** Brings back what was kept, then what a link carries; listens for other tabs. */
    void open() {
        String kept = keeper.text();
        if (kept == null) {
            line.setTextContent(words(CircuitKeeper.Kept.REFUSED));
        } else if (kept.isEmpty()) {
            line.setTextContent("Nothing is kept on this device yet. It will be, at your first change.");
        } else {
            bringBack(kept);
        }
        openLink();
        Window.current().addEventListener("storage", event -> lookForOthers());
        Window.current().addEventListener("hashchange", event -> openLink());
        document.getElementById("circuit-upload").addEventListener("change", event -> upload());
    }

    private void bringBack(String kept) {
        FileRead read = CircuitKeeper.circuit(kept);
        if (read.circuit() != null) {
            keeper.see();
            desk.begin(read.circuit(), CircuitKeeper.readings(kept));
            line.setTextContent("This is the circuit kept on this device.");
            return;
        }
        notice.ask(
                "What was kept on this device cannot be read: " + read.faults().get(0).text() + ". It is left as it is, and nothing new is kept, until you say so.",
                "Download it as it is", () -> {
                    CircuitFiles.download("kept-circuit.txt", kept);
                    line.setTextContent("Nothing is kept: open the page again to be asked once more.");
                },
                "Keep what stands here in its place", this::keepMine);
    }

    /** Keeps the circuit, unless another tab has kept something that was not seen here. */
    void keep() {
        if (notice.isAsking()) {
            return;
        }
        CircuitKeeper.Kept kept = keeper.keep(desk.now(), desk.readings());
        if (kept == CircuitKeeper.Kept.OTHER) {
            lookForOthers();
        } else {
            line.setTextContent(words(kept));
        }
    }

    private static String words(CircuitKeeper.Kept kept) {
        return kept == CircuitKeeper.Kept.YES
                ? "Kept on this device."
                : "This browser does not let the page keep anything, or has no room left: download the file before you leave.";
    }

    private void lookForOthers() {
        if (!keeper.isOther()) {
            return;
        }
        line.setTextContent("Not kept since another tab kept something else.");
        notice.ask(
                "In another tab or window of this page the circuit was changed. Both cannot be kept on this device.", "Take the other one", () -> {
                    String other = keeper.text();
                    FileRead read = CircuitKeeper.circuit(other == null ? "" : other);
                    keeper.see();
                    if (read.circuit() == null) {
                        notice.refuse("The other one cannot be read." + STAYS, read.faults());
                    } else {
                        desk.change(read.circuit(), desk.chosen(), CircuitKeeper.readings(other));
                        desk.say("The circuit of the other tab was taken. Undo brings back yours.");
                    }
                },
                "Keep mine", this::keepMine);
    }

    private void keepMine() {
        keeper.see();
        keep();
    }

    private void openLink() {
        String hash = Window.current().getLocation().getHash();
        if (!hash.startsWith(FRAGMENT)) {
            return;
        }
        CircuitFiles.clearFragment();
        FileRead read = CircuitLink.read(hash.substring(FRAGMENT.length()));
        if (read.circuit() == null) {
            notice.refuse("The link was refused." + STAYS, read.faults());
            return;
        }
        Circuit carried = read.circuit();
        String kept = keeper.text();
        if (kept == null || kept.isEmpty()) {
            desk.change(carried, carried.supply().id(), new HashMap<>());
        } else if (!carried.equals(desk.now())) {
            notice.ask(
                    "The link carries a circuit of " + carried.parts().size() + " parts: " + title(carried) + ". Here stands your own: "
                            + title(desk.now()) + ".",
                    "Take that of the link", () -> {
                        desk.change(carried, carried.supply().id(), new HashMap<>());
                        desk.say("The circuit of the link was taken. Undo brings back yours.");
                    },
                    "Keep mine", this::keep);
        }
    }

    private static String title(Circuit circuit) {
        return circuit.name().isEmpty() ? "one without a name" : "\u201c" + circuit.name() + "\u201d";
    }

    private void upload() {
        CircuitFiles.read(document.getElementById("circuit-upload"), CircuitFile.MOST_BYTES, text -> {
            if (text == null) {
                desk.say("The file was refused: it could not be read, or is larger than " + CircuitFile.MOST_BYTES / 1024 + " KB." + STAYS);
                return;
            }
            FileRead read = CircuitFile.read(text);
            if (read.circuit() == null) {
                notice.refuse("The file was refused." + STAYS, read.faults());
            } else {
                notice.clear();
                desk.change(read.circuit(), read.circuit().supply().id(), new HashMap<>());
                desk.say("The file was opened. Undo brings back what stood here.");
            }
        });
    }

    void download() {
        CircuitFiles.download("circuit.json", CircuitFile.write(desk.now()));
        desk.say("The file circuit.json was handed to your browser.");
    }

    void makeLink() {
        String link = CircuitLink.write(desk.now());
        if (link == null) {
            desk.say("This circuit is too large for a link: download the file instead.");
            return;
        }
        HTMLInputElement box = (HTMLInputElement) document.getElementById("circuit-link");
        Dom.closest(box, ".field").setHidden(false);
        box.setValue(CircuitFiles.address() + FRAGMENT + link);
        CircuitFiles.select(box);
    }
}
