package loomwright.circuit.sheet;

import loomwright.quantity.Quantity;

/**
 * One step of the test sheet.
 *
 * @param phase when it is done
 * @param partId the part it is done at
 * @param designation its short designation
 * @param what what to do, and where the meter goes
 * @param low the least reading that agrees; null if the reading is described in words only
 * @param high the greatest reading that agrees; null if the reading is described in words only
 * @param expected the expected reading in words
 */
public record TestStep(Phase phase, String partId, String designation, String what, Quantity low, Quantity high, String expected) {
    /** When a step is done, in order. */
    public enum Phase {
        DEAD("Dead tests: battery disconnected, every fuse-link and breaker out"),
        TRIGGER_OFF("First power, triggers off, no load on"),
        TRIGGER_ON("Triggers on, no load on"),
        LOADED("All loads on that are used together"),
        WARMTH("After 30 minutes under load");

        private final String words;

        Phase(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
