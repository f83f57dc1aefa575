package loomwright.circuit.hazard;

import java.util.List;
import loomwright.circuit.Circuit;

/** Circuits as a careful electrician would build them: each of another character, every figure invented. They stand beside this test. */
final class RightCircuits {
    /** Their files, without the ending. */
    static final List<String> NAMES = List.of(
            "ringing-shed", "camper", "survey-boat", "trailer-with-relay", "hide-trailer", "camera-mast", "reed-hut", "work-boat-24-v",
            "launch");

    private RightCircuits() {}

    static Circuit of(String name) {
        return Bench.read(name + ".json");
    }
}
