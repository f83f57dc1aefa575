package loomwright.circuit.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Damaged and hostile files, made here: each is refused with a reason, or read as a circuit; none ends in an exception or takes long.
 *
 * <p>The profile {@code long} damages the file at every byte; {@code -Dhostile.files=50000} tears and swaps more pieces.
 */
@Timeout(60)
class HostileFileTest {
    private static final int FILES = Integer.getInteger("hostile.files", 500);
    /** How far one damaged place is from the next: with 5,000 files every byte is tried. */
    private static final int STRIDE = Math.max(1, 5000 / FILES);
    private static final String TRAILER = CircuitFile.write(StartingCircuits.reedmereTrailer());

    @Test
    void refusesEveryTruncation() {
        byte[] bytes = TRAILER.getBytes(StandardCharsets.UTF_8);
        // The last byte is a line end, which may be missing.
        for (int length = 0; length < bytes.length - 1; length += STRIDE) {
            FileRead read = CircuitFile.read(new String(bytes, 0, length, StandardCharsets.UTF_8));
            assertNull(read.circuit(), "cut after " + length + " bytes");
            assertFalse(read.faults().get(0).message().isEmpty());
            assertTrue(read.faults().get(0).line() >= 1);
        }
    }

    @Test
    void survivesEveryFlippedByte() {
        byte[] bytes = TRAILER.getBytes(StandardCharsets.UTF_8);
        Random random = new Random(1);
        for (int at = 0; at < bytes.length; at += STRIDE) {
            byte[] damaged = bytes.clone();
            damaged[at] = (byte) random.nextInt(256);
            readOrRefused(new String(damaged, StandardCharsets.UTF_8));
        }
    }

    @Test
    void survivesPiecesTornOutAndSwapped() {
        Random random = new Random(2);
        for (int i = 0; i < FILES; i++) {
            int from = random.nextInt(TRAILER.length());
            int to = Math.min(TRAILER.length(), from + random.nextInt(200));
            int into = random.nextInt(TRAILER.length());
            String piece = TRAILER.substring(from, to);
            readOrRefused(TRAILER.substring(0, from) + TRAILER.substring(to));
            readOrRefused(TRAILER.substring(0, into) + piece + TRAILER.substring(into));
        }
    }

    @Test
    void refusesDeepNesting() {
        refused("nested more than", "[".repeat(100_000));
        refused("nested more than", "{\"a\":".repeat(20_000) + "1" + "}".repeat(20_000));
        refused("nested more than", "{\"format\":\"loomwright-circuit\",\"version\":1,\"parts\":" + "[".repeat(50) + "]".repeat(50) + "}");
    }

    @Test
    void refusesSizeAndCounts() {
        refused("larger than 3 MB", " ".repeat(CircuitFile.MOST_BYTES + 1));
        // Two bytes each in a file
        refused("larger than 3 MB", "é".repeat(CircuitFile.MOST_BYTES / 2 + 1));
        refused("more than 20000 values", "[" + "0,".repeat(30_000) + "0]");
        refused("longer than 200 characters", "{\"" + "x".repeat(100_000) + "\":1}");
        refused("more than 20 digits", "[" + "9".repeat(100_000) + "]");
        refused("501 parts", file("{\"id\":\"b\",\"kind\":\"supply\"}" + ",{\"id\":\"l\",\"kind\":\"load\"}".repeat(500)));
    }

    @Test
    void refusesWrongTypesWhereverTheyStand() {
        for (String wrong : new String[] {"1", "true", "null", "[]", "{}", "-1e99", "\"\"", "\"\u0000\"", "NaN", "Infinity", "undefined", "'x'"}) {
            for (String key : new String[] {"\"capacity\"", "\"id\"", "\"kind\"", "\"battery\"", "\"name\""}) {
                readOrRefused(file("{\"id\":\"b\",\"kind\":\"supply\"," + key + ":" + wrong + "}"));
                readOrRefused("{\"format\":\"loomwright-circuit\",\"version\":" + wrong + ",\"parts\":" + wrong + "}");
                readOrRefused("{\"format\":" + wrong + "}");
                readOrRefused(wrong);
            }
        }
    }

    @Test
    void refusesHugeNumbersInTexts() {
        for (String huge : new String[] {"1e308", "9".repeat(15), "9".repeat(16), "-0", "1/0", "0.000000000000001", "∞", "4 4 4 4", "1,2,3"}) {
            readOrRefused(file("{\"id\":\"b\",\"kind\":\"supply\",\"capacity\":\"" + huge + " Ah\"}"));
            readOrRefused(file(
                    "{\"id\":\"b\",\"kind\":\"supply\"},{\"id\":\"r\",\"kind\":\"conductor\",\"fed-by\":\"b\",\"size\":\"" + huge + " AWG\"}"));
        }
    }

    @Test
    void refusesDuplicateKeys() {
        refused("\u201cid\u201d stands here twice", file("{\"id\":\"b\",\"kind\":\"supply\",\"id\":\"c\"}"));
        refused("\u201cparts\u201d stands here twice", "{\"parts\":[],\"parts\":[]}");
        refused("\u201cid\u201d stands here twice", file("{\"id\":\"b\",\"\\u0069d\":\"c\"}"));
        refused("Two parts have the id", file("{\"id\":\"b\",\"kind\":\"supply\"},{\"id\":\"b\",\"kind\":\"joint\",\"fed-by\":\"b\"}"));
    }

    @Test
    void refusesNamesThatDeceive() {
        refused("cannot be printed", file("{\"id\":\"b\",\"kind\":\"supply\",\"name\":\"a\\u202eb\"}"));
        refused("cannot be printed", file("{\"id\":\"b\",\"kind\":\"supply\",\"name\":\"a\\u0000b\"}"));
        refused("cannot be printed", file("{\"id\":\"b\",\"kind\":\"supply\",\"name\":\"\\ud800\"}"));
        refused("longer than 80", file("{\"id\":\"b\",\"kind\":\"supply\",\"name\":\"" + "x".repeat(81) + "\"}"));
        refused("small letters", file("{\"id\":\"__proto__\",\"kind\":\"supply\"}"));
    }

    @Test
    void refusesBrokenEscapes() {
        refused("four hexadecimal digits", "[\"\\u12\"]");
        refused("four hexadecimal digits", "[\"\\u12");
        refused("A backslash", "[\"\\x\"]");
        refused("A backslash", "[\"\\");
        refused("control character", "[\"a\nb\"]");
    }

    /** A file that is read must then be understood, or refused with part and field; never an exception. */
    private static void readOrRefused(String text) {
        FileRead read = CircuitFile.read(text);
        assertEquals(read.circuit() == null, !read.faults().isEmpty());
        if (read.circuit() != null) {
            assertNotNull(read.circuit().faults());
            assertEquals(read.circuit(), CircuitFile.read(CircuitFile.write(read.circuit())).circuit());
        }
    }

    private static void refused(String part, String text) {
        FileRead read = CircuitFile.read(text);
        assertNull(read.circuit());
        assertTrue(read.faults().stream().anyMatch(fault -> fault.text().contains(part)), read.faults().toString());
    }

    private static String file(String parts) {
        return "{\"format\":\"loomwright-circuit\",\"version\":1,\"parts\":[" + parts + "]}";
    }
}
