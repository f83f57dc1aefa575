package loomwright.circuit.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.WorkedCircuits;
import loomwright.circuit.check.Examination;
import org.junit.jupiter.api.Test;

class ExtentTest {
    private final Circuit punt = WorkedCircuits.punt();
    private final Examination examination = Examination.of(punt);

    @Test
    void holdsTheWayFromTheBatteryAndAllBehind() {
        Extent lamp = Extent.branch(punt, "lamp-fuse");
        List<String> held = punt.parts().stream().map(Part::id).filter(lamp::has).toList();
        assertEquals(List.of("battery", "main-fuse", "lead", "fuse-panel", "lamp-fuse", "lamp-run", "stern-lamp"), held);
        for (Part part : punt.parts()) {
            assertTrue(Extent.WHOLE.has(part.id()));
            assertTrue(Extent.branch(punt, "battery").has(part.id()), "all is behind the battery");
        }
    }

    @Test
    void listsOnlyWhatItHolds() {
        PartsAndCuts lists = PartsAndCuts.of(examination.circuit(), Extent.branch(punt, "lamp-fuse"));
        assertEquals(List.of("lead", "lamp-run"), lists.cuts().stream().map(CutLine::partId).toList());
        assertFalse(lists.parts().stream().anyMatch(line -> line.what().contains("pump")));
    }

    @Test
    void keepsTheFindingsOnItsPartsInTheirOrder() {
        Extent lamp = Extent.branch(punt, "lamp-fuse");
        Examination part = lamp.of(examination);
        assertEquals(examination.findings().stream().filter(finding -> lamp.has(finding.partId())).toList(), part.findings());
        assertTrue(part.findings().size() < examination.findings().size() && !part.findings().isEmpty());
        assertEquals(examination.findings(), Extent.WHOLE.of(examination).findings());
    }
}
