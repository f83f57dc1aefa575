package loomwright.circuit.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.WorkedCircuits;
import org.junit.jupiter.api.Test;

class CircuitFileTest {
    private static final List<Circuit> STARTING =
            List.of(StartingCircuits.empty(), StartingCircuits.punt(), StartingCircuits.reedmereTrailer());

    @Test
    void comesBackAsItWas() {
        for (Circuit circuit : STARTING) {
            String text = CircuitFile.write(circuit);
            FileRead read = CircuitFile.read(text);
            assertEquals(List.of(), read.faults());
            assertEquals(circuit, read.circuit());
            assertEquals(text, CircuitFile.write(read.circuit()));
        }
    }

    @Test
    void keepsWhatWasTyped() {
        Circuit circuit = CircuitEdits.changed(WorkedCircuits.punt(), "lamp-run", "route-length", "4,5").circuit();
        String text = CircuitFile.write(circuit);
        assertTrue(text.contains("\"route-length\": \"4,5 m\""), text);
        assertTrue(text.contains("\"size\": \"1.5 mm²\""), text);
    }

    @Test
    void carriesReadingsAsTheyWereTyped() {
        Circuit read = CircuitEdits.read(WorkedCircuits.punt(), "lamp-run", " 12,41 ").circuit();
        read = CircuitEdits.read(read, "battery", "dead \u2013 look again").circuit();
        String text = CircuitFile.write(read);
        assertTrue(text.contains("\"reading\": \"12,41\""), text);
        assertEquals(read, CircuitFile.read(text).circuit());
        assertEquals(read, CircuitLink.read(CircuitLink.write(read)).circuit());
        assertEquals(WorkedCircuits.punt(), CircuitEdits.read(CircuitEdits.read(read, "battery", "").circuit(), "lamp-run", "").circuit());
    }

    @Test
    void refusesAReadingThatNoOneTyped() {
        String text = CircuitFile.write(CircuitEdits.read(WorkedCircuits.punt(), "lamp-run", "12.4").circuit());
        refused("The reading is longer than 40 characters: shorten it", text.replace("12.4\"", "9".repeat(41) + "\""));
        refused("The reading holds a character that cannot be printed", text.replace("12.4\"", "12\\u202e4\""));
        refused("A text in double quotes belongs here", text.replace("\"12.4\"", "12.4"));
    }

    @Test
    void carriesTextThatLooksLikeAScriptAsText() {
        String script = "</script><script>alert('1')</script> \"\\ & \ud83d\ude80 é";
        Circuit circuit = CircuitEdits.named(WorkedCircuits.punt(), "lamp-run", script).circuit();
        String text = CircuitFile.write(CircuitEdits.renamed(circuit, script));
        assertFalse(text.contains("<"), text);
        assertEquals(script, CircuitFile.read(text).circuit().part("lamp-run").name());
        assertEquals(script, CircuitFile.read(text).circuit().name());
    }

    @Test
    void takesOtherSpacingAndOrder() {
        String text = "\ufeff{\"parts\":[{\"kind\":\"supply\",\"id\":\"b\"}],\r\n\"version\":1,\"format\":\"loomwright-circuit\"}";
        assertEquals("100 Ah", CircuitFile.read(text).circuit().supply().part().text("capacity"));
    }

    @Test
    void refusesANewerVersionAndOtherFiles() {
        refused("version: The file is of version 2", "{\"format\":\"loomwright-circuit\",\"version\":2,\"future\":{}}");
        // {"format":"loomwright-circuit", are 31 characters, "version": 10 more
        refused("line 1, column 42: version: ", "{\"format\":\"loomwright-circuit\",\"version\":2}");
        refused("\u201cversion\u201d should be 1", "{\"format\":\"loomwright-circuit\",\"version\":\"1\"}");
        refused("\u201cversion\u201d should be 1", "{\"format\":\"loomwright-circuit\"}");
        refused("This is no circuit file", "{\"format\":\"other\",\"version\":1}");
        refused("This is no circuit file", "{}");
        refused("is an object in braces, this is a list", "[]");
        refused("The file is empty", " \n ");
        refused("The file goes on after its end", "{} {}");
    }

    @Test
    void namesUnknownFieldsWithTheirPlace() {
        String text = file("{\"id\":\"b\",\"kind\":\"supply\",\n\"colour\":\"red\"}");
        refused("line 2, column 1: parts[0]: There is no field \u201ccolour\u201d here", text);
        refused("There is no field \u201cextra\u201d here", "{\"format\":\"loomwright-circuit\",\"version\":1,\"extra\":1,\"parts\":[]}");
    }

    @Test
    void saysWhereAValueCannotBeUsed() {
        refused(
                "parts[1].route-length: Route length must be between 0.05",
                file("{\"id\":\"b\",\"kind\":\"supply\"},{\"id\":\"r\",\"kind\":\"conductor\",\"fed-by\":\"b\",\"route-length\":\"9999 m\"}"));
        refused("parts[0].kind: There is no kind of part \u201cbomb\u201d", file("{\"id\":\"b\",\"kind\":\"bomb\"}"));
        refused("parts[0].id", file("{\"id\":\"../../etc\",\"kind\":\"supply\"}"));
        refused("parts[0].capacity: A text in double quotes belongs here, this is a number", file("{\"id\":\"b\",\"kind\":\"supply\",\"capacity\":100}"));
        refused("A part is an object in braces, this is null", file("null"));
        refused("part \u201cr\u201d", file("{\"id\":\"b\",\"kind\":\"supply\"},{\"id\":\"r\",\"kind\":\"load\",\"fed-by\":\"r\",\"power\":\"1 W\"}"));
        refused("\u201cparts\u201d should be a list", "{\"format\":\"loomwright-circuit\",\"version\":1,\"parts\":{}}");
    }

    @Test
    void collectsEveryFaultOfAFile() {
        FileRead read = CircuitFile.read(file("{\"id\":\"b\",\"kind\":\"supply\",\"capacity\":\"much\",\"lowest-voltage\":\"-3 V\",\"what\":\"\"}"));
        assertNull(read.circuit());
        assertEquals(3, read.faults().size());
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
