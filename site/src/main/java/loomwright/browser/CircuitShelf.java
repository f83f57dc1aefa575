package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.file.StartingCircuits;
import loomwright.circuit.file.FileRead;

/** The circuits of this device, side by side: each has a place of its own, and one of them is on the desk. */
final class CircuitShelf {
    static final int PLACES = 12;

    private final OpenCircuit[] open = new OpenCircuit[PLACES + 1];
    private int at;

    /** The place last used, with the circuit a reader begins with until what is kept there has been read. */
    CircuitShelf() {
        int last = CircuitKeeper.lastPlace();
        at = last >= 1 && last <= PLACES ? last : 1;
        open[at] = new OpenCircuit(new CircuitKeeper(at), StartingCircuits.reedmereTrailer());
    }

    OpenCircuit now() {
        return open[at];
    }

    int place() {
        return at;
    }

    /** The places that hold a circuit. */
    List<Integer> places() {
        List<Integer> places = new ArrayList<>();
        for (int place = 1; place <= PLACES; place++) {
            if (open[place] != null || !kept(place).isEmpty()) {
                places.add(place);
            }
        }
        return places;
    }

    /** Whether there is work in this tab that a reader would miss. */
    boolean isWorkedOn() {
        int circuits = 0;
        boolean changed = false;
        for (OpenCircuit each : open) {
            circuits += each == null ? 0 : 1;
            changed |= each != null && (each.history().canGoBack() || !each.drafts().isEmpty());
        }
        return changed || circuits > 1;
    }

    /** The first empty place, or 0. */
    int free() {
        for (int place = 1; place <= PLACES; place++) {
            if (open[place] == null && kept(place).isEmpty()) {
                return place;
            }
        }
        return 0;
    }

    private static String kept(int place) {
        String text = new CircuitKeeper(place).text();
        return text == null ? "" : text;
    }

    /** The circuit at a place; what another tab kept there counts before what was open here. Null if it cannot be read. */
    Circuit circuit(int place) {
        boolean here = place == at || open[place] != null && !open[place].keeper().isOther();
        return here ? open[place].now() : CircuitKeeper.circuit(kept(place)).circuit();
    }

    /** Takes the circuit of another place to the desk, or says why not. */
    FileRead go(int place) {
        OpenCircuit there = open[place];
        if (there == null || there.keeper().isOther()) {
            String text = kept(place);
            FileRead read = CircuitKeeper.circuit(text);
            if (read.circuit() == null) {
                return read;
            }
            open[place] = new OpenCircuit(new CircuitKeeper(place), read.circuit());
            open[place].begin(read.circuit(), CircuitKeeper.drafts(text, read.circuit()));
            open[place].keeper().see();
        }
        settle(place);
        return new FileRead(open[place].now(), List.of());
    }

    /** Puts a circuit at an empty place and takes it to the desk. */
    void put(int place, Circuit circuit) {
        open[place] = new OpenCircuit(new CircuitKeeper(place), circuit);
        settle(place);
    }

    /** Takes the circuit on the desk away for good; another one comes in its place. */
    void discard() {
        open[at].keeper().forget();
        open[at] = null;
        for (int place : places()) {
            if (go(place).circuit() != null) {
                return;
            }
        }
        put(1, StartingCircuits.reedmereTrailer());
    }

    private void settle(int place) {
        at = place;
        CircuitKeeper.rememberPlace(place);
    }
}
