package loomwright.browser;

import loomwright.circuit.Circuit;
import loomwright.circuit.file.FileRead;
import loomwright.circuit.file.StartingCircuits;
import loomwright.circuit.page.PublishedFigures;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** How the circuit is kept on this device. Whatever is refused, the present work stays. */
final class CircuitStore {
    static final String STAYS = " What stands here stays as it is.";

    private final CircuitDesk desk;
    private final CircuitNotice notice;
    private final HTMLElement line;
    /** Whether closing the page would lose something. */
    private boolean unkept;
    /** The circuit that everybody begins with is not the reader's own. */
    private final Circuit everybodys = StartingCircuits.reedmereTrailer();
    private boolean waiting;
    private int timer;

    CircuitStore(CircuitDesk desk, HTMLDocument document, CircuitNotice notice) {
        this.desk = desk;
        this.notice = notice;
        this.line = document.getElementById("circuit-kept");
    }

    private CircuitKeeper keeper() {
        return desk.shelf().now().keeper();
    }

    /** Brings back what was kept; listens for other tabs. */
    void open() {
        String kept = keeper().text();
        if (kept == null) {
            say(CircuitKeeper.Kept.REFUSED);
        } else if (kept.isEmpty()) {
            line.setTextContent("Nothing is kept on this device yet. It will be, at your first change.");
        } else {
            bringBack(kept);
        }
        Window.current().addEventListener("pagehide", event -> keepWaiting());
        Leaving.askFirst(() -> unkept || desk.nameBox().isRefused());
        Window.current().addEventListener("storage", event -> {
            lookForOthers();
            desk.beside().show(true);
        });
    }

    private void bringBack(String kept) {
        FileRead read = CircuitKeeper.circuit(kept);
        if (read.circuit() != null) {
            keeper().see();
            desk.shelf().now().begin(read.circuit(), CircuitKeeper.drafts(kept, read.circuit()));
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

    /** Whether something of the reader's own is kept where this circuit is kept. */
    boolean hasOwn() {
        String kept = keeper().text();
        return kept != null && !kept.isEmpty() || desk.shelf().now().history().canGoBack();
    }

    /** Keeps the circuit, a large one a moment later, so that the key that changed it is not held up. */
    void keep() {
        Window.clearTimeout(timer);
        waiting = !CircuitView.isSmall(desk.now());
        if (waiting) {
            timer = Window.setTimeout(this::keepWaiting, 0);
        } else {
            keepNow();
        }
    }

    private void keepWaiting() {
        if (waiting) {
            waiting = false;
            keepNow();
        }
    }

    /** Keeps the circuit, unless another tab has kept something that was not seen here. */
    private void keepNow() {
        if (notice.isAsking()) {
            unkept = true;
            line.setTextContent("Not kept until the question above is answered.");
            return;
        }
        CircuitKeeper.Kept kept = desk.shelf().now().keep();
        if (kept == CircuitKeeper.Kept.OTHER) {
            lookForOthers();
        } else {
            boolean own = !desk.now().equals(everybodys);
            CircuitKeeper.publish(own ? PublishedFigures.of(desk.examination()) : "");
            say(kept);
        }
    }

    private void say(CircuitKeeper.Kept kept) {
        boolean refused = kept == CircuitKeeper.Kept.REFUSED;
        unkept = refused && desk.shelf().isWorkedOn();
        line.setTextContent(refused
                ? "Not kept: this browser does not let the page keep anything, or has no room left. Download the file before you leave."
                : "Kept on this device.");
        Dom.mark(line, "refused", refused);
    }

    private void lookForOthers() {
        if (!keeper().isOther() || notice.isAsking()) {
            return;
        }
        line.setTextContent("Not kept since another tab kept something else.");
        unkept = desk.shelf().isWorkedOn();
        notice.ask(
                "In another tab or window of this page the circuit was changed. Both cannot be kept in one place of this device.",
                "Take the other one", this::takeOther, "Keep mine", this::keepMine);
    }

    private void takeOther() {
        String other = keeper().text();
        FileRead read = CircuitKeeper.circuit(other == null ? "" : other);
        keeper().see();
        if (read.circuit() == null) {
            notice.refuse("The other one cannot be read." + STAYS, read.faults());
        } else {
            desk.change(read.circuit(), desk.chosen(), CircuitKeeper.drafts(other, read.circuit()));
            desk.said().say("The circuit of the other tab was taken. Undo brings back yours.");
        }
    }

    private void keepMine() {
        keeper().see();
        keep();
    }
}
