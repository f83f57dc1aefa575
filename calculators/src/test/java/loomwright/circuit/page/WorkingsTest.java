package loomwright.circuit.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.WorkedCircuits;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.file.CircuitFile;
import loomwright.circuit.file.StartingCircuits;
import loomwright.markup.Fragment;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.NextQuestion;
import loomwright.worked.Result;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import loomwright.worked.Working;
import org.junit.jupiter.api.Test;

/** A finding leads to the calculator that makes its comparison, and the calculator comes to the figures of the finding. */
class WorkingsTest {
    /** Nine digits are carried, and a few of them are multiplied: far finer than the three or four that a page shows. */
    private static final double ROUNDING = 1e-6;

    private final Set<String> opened = new TreeSet<>();

    @Test
    void everyWorkingOfTheTrailerComesToTheFigureOfItsFinding() {
        hold(StartingCircuits.reedmereTrailer());
        hold(StartingCircuits.punt());
        hold(WorkedCircuits.trailer());
        hold(WorkedCircuits.punt());
        assertEquals(
                Set.of(
                        "ampacity", "breaking-capacity", "fuse-choice", "fuse-place", "joint-heat", "junction-temperature", "panel-headroom", "panel-yield",
                        "selectivity", "short-circuit-heating", "trigger-loop"),
                opened);
    }

    /** A motor that takes ten times the rating of its blade for a second: the table of opening times says that the fuse-link has opened by then. */
    @Test
    void aStartThatOpensItsFuseLeadsToTheOpeningTimesOfThatFuse() {
        String trailer = CircuitFile.write(WorkedCircuits.trailer());
        String slow = trailer.replace("\"start-current\": \"15 A\"", "\"start-current\": \"60 A\"").replace("\"start-time\": \"0.3 s\"", "\"start-time\": \"2 s\"");
        hold(CircuitFile.read(slow).circuit());
        assertTrue(opened.contains("time-current"), opened::toString);
    }

    /** What was chosen for a part goes with it into the calculator: another rule, a warmer place, a figure of the sheet, a sheath. */
    @Test
    void whatWasSaidOfAPartIsSaidToTheCalculatorToo() {
        Circuit punt = WorkedCircuits.punt();
        hold(changed(changed(punt, "lamp-fuse", "rating", "30 A"), "battery", "fuse-rule", "33-cfr-183"));
        hold(changed(changed(punt, "lamp-run", "engine-space", "yes"), "lamp-run", "insulation-temperature", "t60"));
        hold(changed(punt, "lamp-run", "sheet-ampacity", "12 A"));
        hold(changed(punt, "lamp-run", "ambient", "55 °C"));
        hold(changed(punt, "lamp-run", "rule-set", "bs-7671-cord"));
        Circuit bare = CircuitEdits.without(punt, "main-fuse");
        hold(changed(bare, "lead", "route-length", "7 in"));
        hold(changed(changed(bare, "lead", "route-length", "1 m"), "lead", "sheath", "yes"));
        hold(changed(changed(bare, "lead", "route-length", "1.1 m"), "lead", "sheath", "yes"));
        assertTrue(opened.contains("fuse-place"), opened::toString);
    }

    private static Circuit changed(Circuit circuit, String id, String field, String text) {
        return CircuitEdits.changed(circuit, id, field, text).circuit();
    }

    @Test
    void everyConductorDeviceAndJointOfTheTrailerHasAWorking() {
        Examination examination = Examination.of(StartingCircuits.reedmereTrailer());
        for (Check check : List.of(Check.AMPACITY, Check.CONDUCTOR_PROTECTED, Check.JOINT_HEAT, Check.UNPROTECTED_LENGTH)) {
            assertTrue(!examination.findings(check).isEmpty(), check.label());
            for (CircuitFinding found : examination.findings(check)) {
                assertTrue(Workings.of(examination, found) != null, found.finding().words());
            }
        }
    }

    @Test
    void everyCheckHasALessonThatExists() {
        for (Check check : Check.values()) {
            Path lesson = Path.of("..", "content", "lessons", Workings.lesson(check), "lesson.md");
            assertTrue(Files.exists(lesson), lesson.toString());
        }
    }

    private void hold(Circuit circuit) {
        Examination examination = Examination.of(circuit);
        for (CircuitFinding found : examination.findings()) {
            NextQuestion question = Workings.of(examination, found);
            if (question != null) {
                opened.add(question.calculatorKey());
                Working working = Trial.of(question.calculatorKey(), Fragment.read(Fragment.write(question.carried()))).working();
                if (found.check() == Check.SHORT_CIRCUIT_HEAT && found.finding().verdict() == Verdict.NOT_KNOWN) {
                    holdOpen(found.finding().words(), working);
                    continue;
                }
                Quantity sought = sought(found, working);
                List<String> shown = new ArrayList<>();
                assertTrue(comesTo(working, sought, shown), () -> found.finding().words() + "\n" + sought + " is not among " + shown + "\n" + question);
            }
        }
    }

    private static Quantity sought(CircuitFinding found, Working working) {
        return switch (found.check()) {
            case CONDUCTOR_PROTECTED -> found.finding().limit();
            // The circuit says what is left below the limit, the calculator how warm the junction gets.
            case SWITCH_HEAT -> Quantity.of(
                    working.entries().quantity("junction-limit").value() - found.finding().figure().value(), Units.CELSIUS);
            default -> found.finding().figure();
        };
    }

    /** Current and longest time stand in the sentence; more than 5 s is not stated there. */
    private static void holdOpen(String words, Working working) {
        Quantity longest = working.result("longest-time").quantity();
        assertTrue(words.contains("A short circuit of " + working.entries().quantity("current").text(3) + " in "), words);
        assertTrue(words.contains(longest.value() > 5 ? "more than 5\u00a0s" : "stands it for " + longest.text(3)), words + " " + longest);
        assertTrue(working.entries().quantity("clearing-time") == null, words);
    }

    /** As a result, or as what one of its own checks holds against its limit. */
    private static boolean comesTo(Working working, Quantity sought, List<String> shown) {
        boolean found = false;
        for (Result result : working.results()) {
            found |= same(result.quantity(), sought, shown);
        }
        for (var finding : working.findings()) {
            found |= same(finding.figure(), sought, shown);
            found |= finding.limit() != null && same(finding.limit(), sought, shown);
        }
        return found;
    }

    private static boolean same(Quantity one, Quantity sought, List<String> shown) {
        shown.add(one.text());
        return one.dimension().equals(sought.dimension()) && Math.abs(one.base() - sought.base()) <= ROUNDING * Math.abs(sought.base());
    }
}
