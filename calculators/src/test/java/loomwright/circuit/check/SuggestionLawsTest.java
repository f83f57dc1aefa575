package loomwright.circuit.check;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.circuit.RandomCircuit;
import loomwright.circuit.Node;
import loomwright.worked.Verdict;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class SuggestionLawsTest {
    /** A size or rating that is suggested never leaves its own conductor, or a conductor behind it, with more than it may carry. */
    @Property(tries = 60, maxDiscardRatio = 20)
    void neverSuggestsWhatAConductorMayNotCarry(@ForAll long seed) {
        Circuit circuit = RandomCircuit.of(seed);
        Assume.that(Examination.of(circuit).faults().isEmpty());
        for (Part part : circuit.parts()) {
            Suggestion suggestion = SmallestThatPasses.of(circuit, part.id());
            assertFalse(suggestion.words().isEmpty());
            if (suggestion.circuit() == null) {
                continue;
            }
            Examination after = Examination.of(suggestion.circuit());
            for (CircuitFinding finding : after.findingsOn(part.id())) {
                boolean ownLimit = List.of(Check.AMPACITY, Check.CONDUCTOR_PROTECTED, Check.DEVICE_LOADING).contains(finding.check());
                assertTrue(!ownLimit || finding.finding().verdict() != Verdict.STOP, finding.toString());
            }
            if (part.kind() == PartKind.PROTECTION) {
                noConductorBehindIsOverrated(after, part);
            }
        }
    }

    private static void noConductorBehindIsOverrated(Examination examination, Part device) {
        Node at = examination.circuit().node(device.id());
        for (CircuitFinding finding : examination.findings(Check.CONDUCTOR_PROTECTED)) {
            Node place = examination.circuit().node(finding.partId());
            boolean behind = at.isOnTheWayTo(place);
            assertTrue(!behind || finding.finding().verdict() != Verdict.STOP, finding.toString());
        }
    }
}
