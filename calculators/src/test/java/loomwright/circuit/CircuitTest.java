package loomwright.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.file.StartingCircuits;
import org.junit.jupiter.api.Test;

class CircuitTest {
    private static final Part BATTERY = Part.of("battery", PartKind.SUPPLY, "", "");

    @Test
    void understandsEveryStartingCircuit() {
        for (Circuit circuit : List.of(StartingCircuits.empty(), StartingCircuits.punt(), StartingCircuits.reedmereTrailer())) {
            assertEquals(List.of(), circuit.faults());
        }
    }

    @Test
    void refusesPartsThatMakeNoTree() {
        refused("begins with its battery", List.of());
        refused("begins with its battery", List.of(load("lamp", "")));
        refused("fed by \u201cnothing\u201d, which is not among", List.of(BATTERY, load("lamp", "nothing")));
        refused("fed by \u201clamp\u201d, which is not among", List.of(BATTERY, load("lamp", "lamp")));
        refused("a load is the end", List.of(BATTERY, load("lamp", "battery"), load("fan", "lamp")));
        refused("Two parts have the id", List.of(BATTERY, load("lamp", "battery"), load("lamp", "battery")));
        refused("second battery", List.of(BATTERY, Part.of("other", PartKind.SUPPLY, "", "battery")));
        refused("nothing feeds it", List.of(Part.of("battery", PartKind.SUPPLY, "", "battery")));
        refused("takes no trigger", List.of(BATTERY, load("lamp", "battery").triggeredBy("battery")));
        refused(
                "no part it can be taken from",
                List.of(BATTERY, Part.of("relay", PartKind.SWITCH, "", "battery").triggeredBy("gone")));
    }

    @Test
    void refusesMorePartsThanItSays() {
        List<Part> parts = new ArrayList<>(List.of(BATTERY));
        for (int i = 1; i < Circuit.MOST_PARTS; i++) {
            parts.add(load("load-" + i, "battery"));
        }
        assertEquals(Circuit.MOST_PARTS, new Circuit("", parts).parts().size());
        parts.add(load("one-more", "battery"));
        refused("may have 500 parts", parts);
    }

    @Test
    void refusesNamesThatCannotBePrinted() {
        assertThrows(CircuitRefusal.class, () -> new Circuit("a\u0000b", List.of(BATTERY)));
        assertThrows(CircuitRefusal.class, () -> Part.of("lamp", PartKind.LOAD, "left\u202eright", "battery"));
        assertThrows(CircuitRefusal.class, () -> Part.of("Lamp", PartKind.LOAD, "", "battery"));
        assertEquals("<script>", load("lamp", "battery").named("<script>").part().title());
    }

    @Test
    void keepsWhatWasTypedAndAddsTheUnitThatIsMeant() {
        assertEquals("4,2 m", run("route-length=4,2 m").text("route-length"));
        assertEquals("4.2 m", run("route-length= 4.2 ").text("route-length"));
        assertEquals("14 AWG", run("size=14 AWG").text("size"));
        assertEquals("2.5 mm2", run("size=2.5 mm2").text("size"));
        assertEquals("40 °C", run().text("temperature"));
        assertEquals("40 °C", run().text("ambient"));
    }

    @Test
    void saysWhichFieldCannotBeUsedAndWhy() {
        PartRead read = run().with("route-length", "900 m");
        assertEquals("route-length", read.faults().get(0).fieldKey());
        assertTrue(read.faults().get(0).message().contains("must be between 0.05"), read.faults().get(0).message());
        assertEquals(1, run().with("engine-space", "perhaps").faults().size());
    }

    @Test
    void collectsWhatCannotBeUnderstoodWithPartAndField() {
        Circuit circuit = new Circuit("", List.of(
                BATTERY, Part.of("run", PartKind.CONDUCTOR, "", "battery", "size=2.7 mm²"), Part.of("lamp", PartKind.LOAD, "", "run"),
                Part.of("relay", PartKind.SWITCH, "", "battery", "switching=relay")));
        List<PartFault> faults = circuit.faults();
        assertEquals("run size", faults.get(0).partId() + " " + faults.get(0).fieldKey());
        assertEquals("lamp power", faults.get(1).partId() + " " + faults.get(1).fieldKey());
        assertEquals("relay coil-resistance", faults.get(2).partId() + " " + faults.get(2).fieldKey());
    }

    private static void refused(String part, List<Part> parts) {
        CircuitRefusal refusal = assertThrows(CircuitRefusal.class, () -> new Circuit("", parts));
        assertTrue(refusal.getMessage().contains(part), refusal.getMessage());
    }

    private static Part load(String id, String fedBy) {
        return Part.of(id, PartKind.LOAD, "", fedBy, "power=10 W");
    }

    private static Part run(String... typed) {
        return Part.of("run", PartKind.CONDUCTOR, "", "battery", typed);
    }
}
