package loomwright.circuit.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.PartKind;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** As many parts as a circuit may have, with the longest texts there are: what is written can be read back. */
class LargestTest {
    private static final long MOST_NANOSECONDS = 200_000_000;

    /** Names of 80 characters in scripts that take one, two and three bytes each, as escapes, and in pairs. */
    private static final List<String> NAMES = List.of(
            "Run to the bench, by the door, ".repeat(3).substring(0, 80), "\u0416".repeat(80), "\u96fb".repeat(80), "<".repeat(80), "\ud83d\ude80".repeat(40));

    @ParameterizedTest(name = "{0}")
    @EnumSource(value = PartKind.class, names = "SUPPLY", mode = EnumSource.Mode.EXCLUDE)
    void goesOutAndComesBack(PartKind kind) {
        for (String name : NAMES) {
            Circuit circuit = full(kind, name, false);
            assertEquals(Circuit.MOST_PARTS, circuit.parts().size());
            comesBack(circuit);
        }
        comesBack(full(kind, NAMES.get(3), true));
    }

    private static void comesBack(Circuit circuit) {
        String file = CircuitFile.write(circuit);
        assertTrue(CircuitFile.mayBeRead(file), file.length() + " characters");
        assertEquals(circuit, CircuitFile.read(file).circuit());
        String link = CircuitLink.write(circuit);
        assertTrue(link == null || circuit.equals(CircuitLink.read(link).circuit()));
    }

    /** With short names five hundred parts still make a file; the link says by null that it is too long. */
    @Test
    void hasAClearLimitForLinks() {
        Circuit circuit = full(PartKind.SWITCH, "", true);
        assertEquals(null, CircuitLink.write(circuit));
        assertNotNull(CircuitLink.write(StartingCircuits.reedmereTrailer()));
    }

    private static Circuit full(PartKind kind, String name, boolean everyField) {
        StringBuilder file = new StringBuilder("{\"format\": \"loomwright-circuit\", \"version\": 1, \"parts\": [{\"id\": \"battery\", \"kind\": \"supply\"}");
        String before = "battery";
        for (int i = 1; i < Circuit.MOST_PARTS; i++) {
            String id = "x".repeat(37) + (i < 10 ? "00" : i < 100 ? "0" : "") + i;
            file.append(", {\"id\": \"").append(id).append("\", \"kind\": \"").append(kind.key()).append("\", \"fed-by\": \"").append(before);
            file.append("\", \"name\": \"").append(name).append("\", \"reading\": \"").append(name, 0, name.length() / 2).append('"');
            file.append(kind.isTriggered() ? ", \"triggered-from\": \"" + before + "\"" : "");
            for (Field field : kind.fields()) {
                boolean asked = everyField || field.key().equals("power");
                file.append(asked && field instanceof QuantityField quantity ? ", \"" + field.key() + "\": \"" + longest(quantity) + "\"" : "");
            }
            file.append('}');
            before = kind.feeds() ? id : before;
        }
        FileRead read = CircuitFile.read(file.append("]}").toString());
        assertEquals(List.of(), read.faults());
        return read.circuit();
    }

    /** A quantity its field takes, in 60 characters. */
    private static String longest(QuantityField field) {
        String unit = field.units().get(0).symbol();
        String greatest = field.limits().get(0).greatest().text().replace(unit, "").replace("\u00a0", "").replace("\u202f", "").strip();
        return unit.isEmpty() ? greatest : greatest + " ".repeat(60 - greatest.length() - unit.length()) + unit;
    }

    /** Measured on an idle machine: a few milliseconds. The limit is that of the page; the best of several counts, since other tests run beside it. */
    @Test
    void answersAtOnceWhateverIsWrong() {
        StringBuilder unknown = new StringBuilder("{\"format\": \"loomwright-circuit\", \"version\": 1, \"parts\": [");
        for (int i = 0; i < 19_900; i++) {
            unknown.append(i % 100 == 0 ? (i == 0 ? "{\"id\": \"b\", \"kind\": \"supply\"" : "") : "").append(", \"key-").append(i).append("\": 1");
        }
        String file = unknown.append("}]}").toString();
        FileRead read = CircuitFile.read(file);
        long best = Long.MAX_VALUE;
        for (int round = 0; round < 20 && best >= MOST_NANOSECONDS; round++) {
            long start = System.nanoTime();
            read = CircuitFile.read(file);
            best = Math.min(best, System.nanoTime() - start);
        }
        assertTrue(best < MOST_NANOSECONDS, best / 1_000_000 + " ms");
        assertEquals(21, read.faults().size());
        assertTrue(read.faults().get(20).message().startsWith("There are more"));
    }
}
