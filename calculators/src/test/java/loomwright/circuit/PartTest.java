package loomwright.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Two parts are alike if all that was typed for them is; what a part is asked for that it has not is empty. */
class PartTest {
    private static Part run(String id, String name, String fedBy, String reading, String size) {
        return Part.read(id, PartKind.CONDUCTOR, name, fedBy, "", reading, Map.of("size", size, "route-length", "2 m")).partOrRefuse();
    }

    @Test
    void partsAreAlikeIfAllThatWasTypedIs() {
        Part part = run("run", "Run", "fuse", "12.1 V", "2.5 mm²");
        Part same = run("run", "Run", "fuse", "12.1 V", "2.5 mm²");
        assertEquals(part, same);
        assertEquals(part.hashCode(), same.hashCode());
        for (Part other : List.of(
                run("other", "Run", "fuse", "12.1 V", "2.5 mm²"), run("run", "Other", "fuse", "12.1 V", "2.5 mm²"), run("run", "Run", "other", "12.1 V", "2.5 mm²"),
                run("run", "Run", "fuse", "12 V", "2.5 mm²"), run("run", "Run", "fuse", "12.1 V", "4 mm²"), part.triggeredBy("switch"))) {
            assertNotEquals(part, other);
            assertNotEquals(other, part);
        }
        assertNotEquals(run("run", "Run", "fuse", "", "2.5 mm²").hashCode(), run("other", "Run", "fuse", "", "2.5 mm²").hashCode());
        assertTrue(!part.equals("run"));
    }

    @Test
    void whatWasTypedStandsInTheOrderOfTheFields() {
        Part part = run("run", "Run", "fuse", "", "2.5 mm²");
        assertEquals(PartKind.CONDUCTOR.fields().size(), part.texts().size());
        assertEquals("2.5 mm²", part.texts().get(PartKind.CONDUCTOR.indexOf("size")));
        assertEquals("2 m", part.text("route-length"));
        assertEquals("", part.text("capacity"), "a run has no such field");
        assertTrue(part.toString().startsWith(PartKind.CONDUCTOR.key() + " run ") && part.toString().contains("2.5 mm²"), part.toString());
    }

    @Test
    void aPartMovesWithoutLosingWhatItIsTriggeredBy() {
        Part part = run("run", "Run", "fuse", "12.1 V", "2.5 mm²").triggeredBy("switch");
        assertEquals("switch", part.triggeredFrom());
        assertEquals("panel", part.fedFrom("panel").fedBy());
        assertEquals("switch", part.fedFrom("panel").triggeredFrom());
        assertEquals("12.1 V", part.fedFrom("panel").reading());
    }
}
