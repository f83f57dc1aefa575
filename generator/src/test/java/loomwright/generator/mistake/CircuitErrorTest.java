package loomwright.generator.mistake;

import org.junit.jupiter.api.Test;

/** Mistakes in circuit blocks and circuit files. */
class CircuitErrorTest extends MistakeTest {
    private static final String HUT = """
            {
              "format": "loomwright-circuit", "version": 1, "name": "Hut", "parts": [
                {"id": "battery", "kind": "supply"},
                {"id": "lamp", "kind": "load", "fed-by": "battery", "power": "12 W"}
              ]
            }
            """;

    private void hut(String file, String show) {
        site.write("circuits/hut.json", file);
        site.lesson("""
                ```circuit
                key: hut-drawn
                circuit: hut
                show: %s
                ```
                """.formatted(show));
    }

    @Test
    void rejectsUnknownCircuit() {
        hut(HUT, "drawing");
        site.lesson("""
                ```circuit
                key: hut-drawn
                circuit: hat
                show: drawing
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:9:10: no circuit is called "hat". Did you mean "hut"?
                   circuit: hat
                            ^
                1 mistake
                """);
    }

    @Test
    void rejectsUnknownSheet() {
        hut(HUT, "lables");
        rejects("""
                content/lessons/01-first/lesson.md:10:7: a circuit has no sheet "lables". Did you mean "labels"?
                   show: lables
                         ^
                1 mistake
                """);
    }

    @Test
    void rejectsUnknownBranch() {
        hut(HUT, "labels\nbranch: lamb");
        rejects("""
                content/lessons/01-first/lesson.md:11:9: the circuit "hut" has no part "lamb". Did you mean "lamp"?
                   branch: lamb
                           ^
                1 mistake
                """);
    }

    @Test
    void rejectsBlockWithoutItsKeys() {
        hut(HUT, "labels");
        site.lesson("""
                ```circuit
                key: hut-drawn
                sheet: labels
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:8:1: the circuit block has no "circuit". Add a line circuit: with its text.
                   key: hut-drawn
                   ^
                content/lessons/01-first/lesson.md:8:1: the circuit block has no "show". Add a line show: with its text.
                   key: hut-drawn
                   ^
                content/lessons/01-first/lesson.md:9:1: the circuit block has an unknown key "sheet". Use one of: branch, circuit, key, show.
                   sheet: labels
                   ^
                3 mistakes
                """);
    }

    /** The file is named, not the lessons that show it. */
    @Test
    void rejectsCircuitFileWithAFaultAtItsPlace() {
        hut(HUT.replace("12 W", "bright"), "drawing");
        rejects("""
                content/circuits/hut.json:4:66: parts[1].power: Power it takes has no number. Enter a number between 0.001 W and 10 000 W.
                       {"id": "lamp", "kind": "load", "fed-by": "battery", "power": "bright"}
                                                                                    ^
                1 mistake
                """);
    }

    @Test
    void rejectsCircuitFileThatIsNone() {
        hut("{\"format\": \"other\"}\n", "drawing");
        rejects("""
                content/circuits/hut.json:1:12: format: This is no circuit file. "format" should say "loomwright-circuit".
                   {"format": "other"}
                              ^
                1 mistake
                """);
    }

    @Test
    void rejectsFiguresThatDoNotGoTogether() {
        hut(HUT.replace("\"power\": \"12 W\"", "\"power\": \"12 W\", \"current\": \"1 A\""), "drawing");
        rejects("""
                content/circuits/hut.json:4:57: lamp, power: More than one of power, current, resistance and power at the ports is entered. Keep one and empty the others.
                       {"id": "lamp", "kind": "load", "fed-by": "battery", "power": "12 W", "current": "1 A"}
                                                                           ^
                1 mistake
                """);
    }

    @Test
    void rejectsPartFedFromNowhere() {
        hut(HUT.replace("\"fed-by\": \"battery\"", "\"fed-by\": \"panel\""), "drawing");
        rejects("""
                content/circuits/hut.json:4:5: part "lamp": Load "lamp" is fed by "panel", which is not among the parts before it. Correct it, or open the file on the page "Your circuit" and download it anew.
                       {"id": "lamp", "kind": "load", "fed-by": "panel", "power": "12 W"}
                       ^
                1 mistake
                """);
    }
}
