package loomwright.turned;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import loomwright.quantity.Units;
import loomwright.worked.FormulaStep;
import loomwright.worked.TableStep;
import org.junit.jupiter.api.Test;

class TurnedRoundTest {
    private static final String[] RUN = {"current=10 A", "route-length=4.2 m", "size=2.5 mm²", "temperature=20 °C"};

    @Test
    void eachFormulaIsTurnedRoundAndShownWithItsNumbers() {
        Turned turned = Asked.of("voltage-drop", RUN).atMost("route-length", "drop-percent", "3 %");
        assertEquals(Turned.Kind.WORKED_OUT, turned.kind());
        // ISO 6722-1: 7.60 mΩ/m. 0.36 V ÷ 10 A = 36 mΩ; ÷ 7.60 mΩ/m = 4.7368 m; halved 2.3684 m.
        List<String> lines = turned.steps().stream().filter(step -> step instanceof FormulaStep).map(step -> (FormulaStep) step)
                .map(step -> step.formula().workedText(step.values(), step.result()).replace('\u00a0', ' ')).collect(Collectors.toList());
        assertEquals(List.of(
                "U_d = 3 % × 12 V = 0.36 V", "R = 0.36 V ÷ 10 A = 36 mΩ", "L = 36 mΩ ÷ 7.6 mΩ/m = 4.737 m", "l = 4.737 m ÷ 2 = 2.368 m"), lines);
        assertTrue(turned.steps().get(0) instanceof TableStep, "what is known stands first");
        assertEquals(2.368, turned.answer().value());
    }

    @Test
    void anAnswerComesInTheUnitOfTheEntryAndIsRoundedToTheSideThatPasses() {
        Turned turned = Asked.of("voltage-drop", "current=10 A", "route-length=10 ft", "size=2.5 mm²", "temperature=20 °C")
                .atMost("route-length", "drop-percent", "3 %");
        // 2.3684 m ÷ 0.3048 = 7.7703 ft.
        assertEquals(Units.FEET, turned.answer().unit());
        assertEquals(7.770, turned.answer().value(), 1e-9);
    }

    @Test
    void ofSizesTheLastThatPassesAndTheFirstThatDoesNotAreShown() {
        Turned turned = Asked.of("voltage-drop", RUN).atMost("size", "drop-percent", "3 %");
        // ISO 6722-1: 8.4 m × 10 A ÷ 12 V × 3.14 mΩ/m = 2.198 % with 6 mm², × 4.71 mΩ/m = 3.297 % with 4 mm².
        assertEquals(Turned.Kind.SIZES, turned.kind());
        assertEquals("6\u00a0mm² 2.198\u00a0% true, 4\u00a0mm² 3.297\u00a0% false", turned.attempts().stream()
                .map(attempt -> attempt.figure().text() + " " + attempt.gives() + " " + attempt.passes()).collect(Collectors.joining(", ")));
    }

    /** A pull of nought gives nought, which is enough; a limit that is only touched parts nothing. */
    @Test
    void whereTheLeastThatIsGivenIsTheLimitItselfEveryFigurePasses() {
        Turned turned = Asked.of("pull-force", "rule-set=military", "size=16 AWG", "pulled=0 lbf").atLeast("pulled", "held-ratio", "0");
        assertEquals(Turned.Kind.ALL_PASS, turned.kind(), turned.words());
    }

    @Test
    void aCurrentIsFoundByTheVerdictOfAllChecks() {
        Turned turned = Asked.of("ampacity", "rule-set=33-cfr-183", "size=14 AWG", "insulation-temperature=t60", "ambient=30 °C", "design-current=1 A")
                .withoutAStop("design-current");
        // 33 CFR 183.425, Table 5: 14 AWG, 60 °C: 20 A.
        assertEquals(20, turned.answer().value(), 1e-9, turned.words());
        assertEquals(List.of(true, false), turned.attempts().stream().map(Attempt::passes).toList());
    }

    @Test
    void whatDoesNotDependOnTheEntryIsSaid() {
        Turned turned = Asked.of("voltage-drop", RUN).atMost("supply-voltage", "drop", "0.3 V");
        assertNull(turned.answer());
        assertTrue(turned.words().startsWith("The voltage drop does not depend on the supply voltage here: it is 0.6384"), turned.words());
    }

    @Test
    void aLimitOutOfReachIsSaidWithBothEnds() {
        Turned turned = Asked.of("voltage-drop", "current=200 A", "route-length=20 m", "size=2.5 mm²", "temperature=20 °C", "supply-voltage=60 V")
                .atMost("size", "drop-percent", "0.1 %");
        assertNull(turned.answer());
        assertTrue(turned.words().startsWith("No figure passes"), turned.words());
    }

    @Test
    void anEntryThatTheOthersLeaveNoRoomForIsRefusedWithTheReason() {
        Turned turned = Asked.of("ohm-and-power", "voltage=12 V", "current=5 A").atMost("power", "resistance", "3 Ω");
        assertNull(turned.answer());
        assertTrue(turned.words().contains("no power gives the resistance"), turned.words());
    }
}
