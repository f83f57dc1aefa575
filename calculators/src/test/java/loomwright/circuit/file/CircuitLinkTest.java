package loomwright.circuit.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.PartKind;
import org.junit.jupiter.api.Test;

class CircuitLinkTest {
    @Test
    void comesBackAsItWas() {
        for (Circuit circuit : List.of(StartingCircuits.empty(), StartingCircuits.punt(), StartingCircuits.reedmereTrailer())) {
            String link = CircuitLink.write(circuit);
            assertEquals(circuit, CircuitLink.read(link).circuit());
        }
    }

    @Test
    void holdsOnlyWhatALinkMayHold() {
        Circuit named = CircuitEdits.named(StartingCircuits.punt(), "lamp-run", "<script>~_ é \ud83d\ude80 #?&%\"'").circuit();
        String link = CircuitLink.write(named);
        assertTrue(link.matches("[A-Za-z0-9._~-]+"), link);
        assertEquals(named, CircuitLink.read(link).circuit());
    }

    @Test
    void staysShort() {
        int length = CircuitLink.write(StartingCircuits.reedmereTrailer()).length();
        System.out.println("Link of the trailer: " + length + " characters");
        assertTrue(length < 6000, length + " characters");
    }

    @Test
    void noticesAnyCutAndAnyChange() {
        String link = CircuitLink.write(StartingCircuits.punt());
        for (int length = 0; length < link.length(); length++) {
            assertNull(CircuitLink.read(link.substring(0, length)).circuit());
        }
        Random random = new Random(3);
        for (int i = 0; i < 5000; i++) {
            int at = random.nextInt(link.length());
            char other = (char) ('a' + random.nextInt(26));
            if (link.charAt(at) != other) {
                FileRead read = CircuitLink.read(link.substring(0, at) + other + link.substring(at + 1));
                assertNull(read.circuit());
                assertTrue(read.faults().get(0).message().contains("damaged"), read.faults().toString());
            }
        }
    }

    /** With a right sum over wrong cells: what a forger can make. */
    @Test
    void refusesForgedCells() {
        Random random = new Random(4);
        List<String> words = List.of(
                "", "0", "1", "2", "7", "8", "99", "999", "-1", "battery", "x", "1 m", "<b>", "2.5 mm²", "t105", "supply", "load", "size", "reading",
                "drilled-panel", "count");
        for (int i = 0; i < 20_000; i++) {
            List<String> cells = new ArrayList<>(List.of(i % 2 == 0 ? "1" : "2", "name"));
            int count = random.nextInt(24);
            for (int cell = 0; cell < count; cell++) {
                cells.add(words.get(random.nextInt(words.size())));
            }
            FileRead read = CircuitLink.read(LinkText.of(cells));
            assertEquals(read.circuit() == null, !read.faults().isEmpty());
        }
        assertTrue(CircuitLink.read(LinkText.of(List.of("3", ""))).faults().get(0).message().contains("newer"));
        assertNull(CircuitLink.read("0000" + "~".repeat(100)).circuit());
        assertTrue(CircuitLink.read("x".repeat(CircuitLink.LONGEST + 1)).faults().get(0).message().contains("longer"));
    }

    /** A battery and a joint, cell by cell: kind, id, name, fed from, trigger, pairs, end. */
    @Test
    void refusesACellThatPointsNowhere() {
        assertEquals("battery", feeds("0"));
        assertNull(feeds("1"), "fed from itself");
        assertNull(feeds("-1"));
        assertNull(feeds("/"), "the sign before 0");
        assertNull(feeds(":"), "the sign behind 9");
        assertNull(feeds("0000"));
    }

    private static String feeds(String place) {
        List<String> cells = List.of("2", "", "supply", "battery", "", "", "", "", "joint", "joint-1", "", place, "", "");
        Circuit circuit = CircuitLink.read(LinkText.of(cells)).circuit();
        return circuit == null ? null : circuit.node("joint-1").parent().id();
    }

    @Test
    void givesNoLinkThatIsTooLong() {
        Circuit circuit = StartingCircuits.empty();
        for (int i = 0; i < 499; i++) {
            circuit = CircuitEdits.added(circuit, PartKind.JOINT, "battery");
            circuit = CircuitEdits.named(circuit, "joint-" + (i + 1), "ö".repeat(80)).circuit();
        }
        assertNull(CircuitLink.write(circuit));
        assertEquals(circuit, CircuitFile.read(CircuitFile.write(circuit)).circuit());
    }
}
