package loomwright.circuit.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import loomwright.circuit.Circuit;
import loomwright.circuit.WorkedCircuits;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.file.StartingCircuits;
import loomwright.circuit.sheet.Designations;
import loomwright.markup.Links;
import loomwright.worked.Verdict;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every finding shows how its figure comes about: in a calculator with these figures, or unfolded where it stands. */
class UnfoldedTest {
    /** Three digits are shown: each line is within half a unit of the third, five thousandths of it at most. */
    private static final double ROUNDING = 0.005;

    static Stream<Circuit> circuits() {
        return Stream.of(StartingCircuits.reedmereTrailer(), StartingCircuits.punt(), WorkedCircuits.trailer(), WorkedCircuits.punt());
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void everyFindingWithAFigureHeldAgainstALimitHasItsWorking(Circuit circuit) {
        Examination examination = Examination.of(circuit);
        Set<String> without = new TreeSet<>();
        for (CircuitFinding found : examination.findings()) {
            if (found.finding().limit() != null && Workings.of(examination, found) == null && lines(examination, found).isEmpty()) {
                without.add(found.check() + ": " + found.finding().words());
            }
        }
        assertEquals(Set.of(), without);
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void whatEachPieceOfTheWayTakesAddsUpToWhatIsLostOnIt(Circuit circuit) {
        Examination examination = Examination.of(circuit);
        for (CircuitFinding found : examination.findings(Check.VOLTAGE_DROP)) {
            if (found.finding().words().contains("What reaches")) {
                continue;
            }
            double sum = 0;
            int pieces = 0;
            for (String line : lines(examination, found)) {
                if (line.contains("\u00d7")) {
                    double amperes = number(line.substring(line.lastIndexOf(':') + 1, line.indexOf('\u00d7')));
                    double milliohms = number(line.substring(line.indexOf('\u00d7') + 1, line.indexOf('=')));
                    double volts = number(line.substring(line.indexOf('=') + 1)) * (line.endsWith("mV") ? 0.001 : 1);
                    assertEquals(volts, amperes * milliohms / 1000, 3 * ROUNDING * volts, line);
                    sum += volts;
                    pieces++;
                }
            }
            assertTrue(pieces > 0, found.finding().words());
            double lost = found.finding().figure().base();
            assertEquals(lost, sum, ROUNDING * lost, found.finding().words());
        }
    }

    /** The last line says what the words of the verdict say. */
    @ParameterizedTest
    @MethodSource("circuits")
    void theLastLineHoldsTheFigureAgainstItsLimit(Circuit circuit) {
        Examination examination = Examination.of(circuit);
        int held = 0;
        for (CircuitFinding found : examination.findings()) {
            List<String> lines = lines(examination, found);
            if (found.finding().limit() == null || lines.isEmpty()) {
                continue;
            }
            String last = lines.get(lines.size() - 1);
            boolean most = found.finding().words().contains(" is within ") || found.finding().words().contains(" would be within ");
            boolean above = found.finding().words().contains(" is above ");
            if (most || above) {
                assertEquals(most, last.contains(" \u2264 "), found.finding().words() + "\n" + last);
                held++;
            }
        }
        assertTrue(held > 10, held + " held");
    }

    /** What flows through a device parts behind it, and nothing is lost. */
    @Test
    void theCurrentThroughADeviceIsThatOfTheBranchesBehindIt() {
        Examination examination = Examination.of(StartingCircuits.reedmereTrailer());
        int sums = 0;
        for (CircuitFinding found : examination.findings(Check.DEVICE_LOADING)) {
            double sum = 0;
            double together = Double.NaN;
            for (String line : lines(examination, found)) {
                if (line.startsWith("Together ")) {
                    together = number(line.substring(9));
                } else if (line.contains(": ") && line.endsWith("A") && !line.contains("=")) {
                    sum += number(line.substring(line.lastIndexOf(':') + 1)) * (line.endsWith("mA") ? 0.001 : 1);
                }
            }
            if (!Double.isNaN(together)) {
                assertEquals(together, sum, ROUNDING * together, found.finding().words());
                sums++;
            }
        }
        assertTrue(sums > 3, sums + " sums");
    }

    @Test
    void aFindingWithoutACalculatorUnfoldsItsWorkingOnThePage() {
        Examination examination = Examination.of(StartingCircuits.reedmereTrailer());
        Element page = Written.read(FoundMarkup.live(new Links("../"), examination, true));
        for (Element finding : page.select(".finding:is([data-verdict=stop], [data-verdict=caution])")) {
            boolean opens = finding.selectFirst(".working a[href*=calculators]") != null;
            boolean unfolds = finding.selectFirst("details.unfolds li") != null;
            assertTrue(opens != unfolds || finding.text().contains("by hand"), finding.text());
        }
        long cautions = examination.findings().stream().filter(each -> each.finding().verdict() == Verdict.CAUTION).count();
        assertTrue(cautions > 0, "the trailer leaves something to decide");
        assertTrue(page.select(".passed details.unfolds").size() > 20, "what passed unfolds too");
    }

    private static List<String> lines(Examination examination, CircuitFinding found) {
        return Unfolded.lines(examination, Designations.of(examination.circuit()), found);
    }

    private static double number(String text) {
        String digits = text.replace("\u00a0", " ").strip();
        return Double.parseDouble(digits.substring(0, digits.indexOf(' ')).replace("\u2009", ""));
    }
}
