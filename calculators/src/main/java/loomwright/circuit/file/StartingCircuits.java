package loomwright.circuit.file;

import loomwright.circuit.Circuit;

/** The circuits a reader may begin with. Those of the lessons are files of {@code content/circuits}, taken in by the build. */
public final class StartingCircuits {
    private static final String BATTERY_ALONE =
            "{\"format\": \"loomwright-circuit\", \"version\": 1, \"parts\": [{\"id\": \"battery\", \"kind\": \"supply\", \"name\": \"Battery\"}]}";

    private StartingCircuits() {}

    /** A battery and nothing else. */
    public static Circuit empty() {
        return read(BATTERY_ALONE);
    }

    /** The field trailer of the Reedmere bird-ringing group, with its new outlets at the bench. */
    public static Circuit reedmereTrailer() {
        return read(CircuitTexts.reedmereTrailer());
    }

    /** The group's open punt, with a bilge pump and a stern lamp. */
    public static Circuit punt() {
        return read(CircuitTexts.reedmerePunt());
    }

    /** Read as a reader's own file is. A test reads each of them, so that a slip never reaches a page. */
    private static Circuit read(String text) {
        FileRead read = CircuitFile.read(text);
        if (read.circuit() == null) {
            throw new IllegalStateException(read.faults().get(0).text());
        }
        return read.circuit();
    }
}
