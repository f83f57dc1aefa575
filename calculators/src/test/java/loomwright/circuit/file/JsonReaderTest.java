package loomwright.circuit.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The limits of the reader, each tried at the limit and one beyond it, and the place that a fault names. */
class JsonReaderTest {
    @Test
    void readsAsDeepAsTheLimitAndNoDeeper() {
        int most = JsonReader.MOST_DEPTH;
        assertNotNull(JsonReader.read("[".repeat(most) + "]".repeat(most)));
        assertTrue(fault("[".repeat(most + 1) + "]".repeat(most + 1)).message().contains("nested"));
    }

    @Test
    void readsAsManyValuesAsTheLimitAndNoMore() {
        int inner = JsonReader.MOST_VALUES - 1;
        assertEquals(inner, ((Json.Items) JsonReader.read("[" + "0,".repeat(inner - 1) + "0]")).all().size());
        assertTrue(fault("[" + "0,".repeat(inner) + "0]").message().contains("20000 values"));
    }

    @Test
    void readsAsManyBytesAsTheLimitAndNoMore() {
        assertNotNull(JsonReader.read("0" + " ".repeat(JsonReader.MOST_BYTES - 1)));
        assertTrue(fault("0" + " ".repeat(JsonReader.MOST_BYTES)).message().contains("3 MB"));
    }

    @Test
    void readsANumberOfTwentyDigitsAndNoLonger() {
        assertEquals("9".repeat(20), ((Json.Digits) JsonReader.read("9".repeat(20))).text());
        assertEquals("-0.9e+5", ((Json.Digits) JsonReader.read("-0.9e+5")).text());
        assertEquals("A number has more than 20 digits", fault("9".repeat(21)).message());
    }

    @Test
    void takesSpaceAnywhereBetweenMarks() {
        Json.Members members = (Json.Members) JsonReader.read(" { \"a\" \n : [ 1 , true ] \t, \"b\":null}\r\n");
        assertEquals(2, members.all().size());
        assertEquals("b", members.all().get(1).key());
        assertEquals(2, ((Json.Items) members.all().get(0).value()).all().size());
    }

    @Test
    void saysWhatStandsWhereSomethingElseBelongs() {
        assertEquals("A value is missing, there is the end of the file", fault("[").message());
        assertEquals("A value is missing, there is \u201c!\u201d", fault("!").message());
        assertEquals("A value is missing, there is \u201c~\u201d", fault("~").message());
        assertEquals("A value is missing, there is a character that does not belong there", fault("\u007f").message());
        assertEquals("A value is missing, there is a character that does not belong there", fault("\u00e9").message());
        assertEquals("A comma or \u201c]\u201d is missing, there is \u201c2\u201d", fault("[1 2]").message());
        assertEquals("\u201c:\u201d is missing, there is \u201c1\u201d", fault("{\"a\" 1}").message());
    }

    @Test
    void countsLinesAndColumnsFromOne() {
        FileFault fault = fault("{\n  \"a\": 1,\r\n  \"a\": 2\n}");
        assertEquals(3, fault.line());
        assertEquals(3, fault.column());
        assertEquals(1, fault("\ufeff!").column());
    }

    @Test
    void aCircuitFileSaysWhichPartAndWhichVersion() {
        assertTrue(refusal("\"version\": 9, \"name\": \"\", \"parts\": []").message().contains("version 9"));
        assertTrue(refusal("\"version\": 0, \"name\": \"\", \"parts\": []").message().contains("should be 1"));
        FileFault noList = refusal("\"version\": 1, \"name\": \"\", \"parts\": 1");
        assertEquals("parts", noList.path());
        FileFault tooMany = refusal("\"version\": 1, \"name\": \"\", \"parts\": [" + "0,".repeat(500) + "0]");
        assertEquals("There are 501 parts; a circuit may have 500", tooMany.message());
        assertTrue(refusal("\"version\": 1, \"name\": \"\", \"parts\": [{\"kind\": \"bomb\"}]").message().contains("supply, "));
        FileFault twice = refusal("\"version\": 1, \"name\": \"\", \"parts\": [{\"kind\": \"supply\", \"id\": \"g\"},\n{\"kind\": \"supply\", \"id\": \"g\"}]");
        assertEquals("part \u201cg\u201d", twice.path());
    }

    private static FileFault refusal(String rest) {
        return CircuitFile.read("{\"format\": \"loomwright-circuit\", " + rest + "}").faults().get(0);
    }

    private static FileFault fault(String text) {
        return assertThrows(JsonFault.class, () -> JsonReader.read(text)).fault();
    }
}
