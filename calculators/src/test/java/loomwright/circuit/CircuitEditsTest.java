package loomwright.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CircuitEditsTest {
    private final Circuit trailer = WorkedCircuits.trailer();

    @Test
    void givesANewCircuitAndLeavesTheOldOne() {
        Circuit changed = CircuitEdits.changed(trailer, "bench-run", "size", "10 mm²").circuit();
        assertEquals("10 mm²", changed.part("bench-run").text("size"));
        assertEquals(WorkedCircuits.trailer(), trailer);
        assertEquals(trailer, CircuitEdits.changed(changed, "bench-run", "size", "6 mm²").circuit());
    }

    @Test
    void givesTheFaultOfATextThatCannotBeUsed() {
        Edit edit = CircuitEdits.changed(trailer, "bench-run", "route-length", "long");
        assertNull(edit.circuit());
        assertEquals("bench-run", edit.faults().get(0).partId());
    }

    @Test
    void addsAtTheEndOfWhatAPartFeeds() {
        Circuit more = CircuitEdits.added(trailer, PartKind.PROTECTION, "fuse-panel");
        more = CircuitEdits.added(more, PartKind.LOAD, "protection-1");
        assertEquals("on-switch", more.parts().get(more.node("protection-1").order() - 1).id());
        assertEquals("load-1", more.parts().get(more.node("protection-1").order() + 1).id());
    }

    @Test
    void insertsBetweenAPartAndWhatFeedsIt() {
        Circuit more = CircuitEdits.insertedBefore(trailer, PartKind.ISOLATOR, "outlet-switch");
        assertEquals("breaker", more.part("isolator-1").fedBy());
        assertEquals("isolator-1", more.part("outlet-switch").fedBy());
    }

    @Test
    void takesOnePartOutAndJoinsWhatItParted() {
        Circuit less = CircuitEdits.without(trailer, "on-switch");
        assertEquals("fuse-panel", less.part("outlet-switch").triggeredFrom());
        less = CircuitEdits.without(less, "bench-joints");
        assertEquals("bench-run", less.part("usb-fuse").fedBy());
        assertThrows(CircuitRefusal.class, () -> CircuitEdits.without(trailer, "battery"));
    }

    @Test
    void takesABranchOutWhole() {
        Circuit less = CircuitEdits.withoutBranch(trailer, "fuse-panel");
        assertNull(less.part("strip"));
        assertEquals("", less.part("outlet-switch").triggeredFrom());
        assertEquals(1, CircuitEdits.withoutBranch(trailer, "main-fuse").parts().size());
    }

    @Test
    void movesABranchButNotBehindItself() {
        Circuit moved = CircuitEdits.moved(trailer, "breaker", "battery");
        assertEquals("battery", moved.part("breaker").fedBy());
        assertThrows(CircuitRefusal.class, () -> CircuitEdits.moved(trailer, "breaker", "bench-run"));
        assertThrows(CircuitRefusal.class, () -> CircuitEdits.moved(trailer, "breaker", "breaker"));
        Circuit deeper = CircuitEdits.moved(trailer, "main-lead", "battery");
        assertEquals("main-lead", deeper.part("breaker").fedBy());
    }

    @Test
    void orderOfPartsDoesNotCallItselfOnALongChain() {
        List<Part> parts = new ArrayList<>(List.of(Part.of("battery", PartKind.SUPPLY, "", "")));
        for (int i = 1; i < Circuit.MOST_PARTS - 1; i++) {
            parts.add(Part.of("joint-" + i, PartKind.JOINT, "", parts.get(i - 1).id()));
        }
        Circuit chain = new Circuit("", parts);
        assertEquals(Circuit.MOST_PARTS, CircuitEdits.added(chain, PartKind.LOAD, "joint-498").parts().size());
    }
}
