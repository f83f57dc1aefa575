package loomwright.browser;

import loomwright.circuit.Circuit;
import loomwright.circuit.file.CircuitFile;
import loomwright.circuit.file.FileRead;
import loomwright.markup.PartFigures;
import org.teavm.jso.JSBody;

/**
 * Keeps the circuit of one place, and what was typed for it and cannot be used, under a name in the storage of the browser. Another tab of the
 * same page may do the same; nothing is written over what this tab has not seen.
 */
final class CircuitKeeper {
    /** What came of keeping. */
    enum Kept {
        YES,
        /** Storage is forbidden or full. */
        REFUSED,
        /** Another tab has kept something else in between. */
        OTHER
    }

    private static final String NAME = "loomwright-circuit";
    /** Stands between circuit and drafts; a file cannot hold it. */
    private static final char BETWEEN = '\u001e';

    private static final String LAST = NAME + "-last";

    private final String name;
    private String seen = "";

    CircuitKeeper(int place) {
        this.name = place == 1 ? NAME : NAME + "-" + place;
    }

    /** The place that was on the desk last, or 0. */
    static int lastPlace() {
        String text = read(LAST);
        int place = 0;
        for (int i = 0; text != null && i < text.length() && i < 2; i++) {
            int digit = text.charAt(i) - '0';
            place = digit < 0 || digit > 9 ? 0 : 10 * place + digit;
        }
        return place;
    }

    static void rememberPlace(int place) {
        write(LAST, Integer.toString(place));
    }

    /** What is kept, or empty if nothing is; null if storage is forbidden. */
    String text() {
        return read(name);
    }

    /** Takes what is kept for seen. */
    void see() {
        String text = text();
        seen = text == null ? "" : text;
    }

    boolean isOther() {
        String text = text();
        return text != null && !text.isEmpty() && !text.equals(seen);
    }

    Kept keep(Circuit circuit, Drafts drafts) {
        if (isOther()) {
            return Kept.OTHER;
        }
        String file = CircuitFile.write(circuit);
        String text = file + BETWEEN + drafts.written();
        if (!CircuitFile.mayBeRead(file) || !write(name, text)) {
            return Kept.REFUSED;
        }
        seen = text;
        return Kept.YES;
    }

    /** Leaves the figures of a circuit for the examples of the other pages. */
    static void publish(String figures) {
        write(PartFigures.KEPT_AS, figures);
    }

    /** Empties the place. */
    void forget() {
        remove(name);
    }

    /** The circuit in what is kept. */
    static FileRead circuit(String text) {
        int between = text.indexOf(BETWEEN);
        return CircuitFile.read(between < 0 ? text : text.substring(0, between));
    }

    /** What is kept beside a circuit because it cannot be used. */
    static Drafts drafts(String text, Circuit circuit) {
        int between = text.indexOf(BETWEEN);
        return Drafts.read(between < 0 ? "" : text.substring(between + 1), circuit);
    }

    @JSBody(params = "name", script = "try { return window.localStorage.getItem(name) || ''; } catch (refused) { return null; }")
    private static native String read(String name);

    @JSBody(
            params = {"name", "text"},
            script = "try { window.localStorage.setItem(name, text); return true; } catch (refused) { return false; }")
    private static native boolean write(String name, String text);

    @JSBody(params = "name", script = "try { window.localStorage.removeItem(name); } catch (refused) { }")
    private static native void remove(String name);
}
