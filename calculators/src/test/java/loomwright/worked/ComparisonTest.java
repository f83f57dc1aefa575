package loomwright.worked;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    private static final Source TYPED = Source.of(Document.COMPUTED, "typed");
    private static final Source MEMORY = Source.of(Document.FROM_MEMORY, "");
    private static final Source INVENTED = Source.of(Document.INVENTED, "");
    private static final Pattern BOTH = Pattern.compile("^The drop, (.+?)\u00a0V, .* the limit, (.+?)\u00a0V\\.");

    private static Comparison drop(double volts, double limit, Source source) {
        return Comparison.of("The drop", volts(volts)).atMost(volts(limit), "the limit", source).otherwise(Verdict.STOP, "Thicker.");
    }

    private static Comparison size(double volts, double limit, Source source) {
        return Comparison.of("The drop", volts(volts)).atLeast(volts(limit), "the limit", source).otherwise(Verdict.STOP, "Thicker.");
    }

    private static Quantity volts(double volts) {
        return Quantity.of(volts, Units.VOLT);
    }

    @Test
    void whatIsWithinItsLimitPassesByTheLimitsSource() {
        Finding finding = drop(0.3, 0.36, TYPED).finding();
        assertEquals(Verdict.PASSED, finding.verdict());
        assertEquals("The drop, 0.3\u00a0V, is within the limit, 0.36\u00a0V.", finding.words());
        assertEquals("", finding.remedy());
        assertSame(TYPED, finding.source());
    }

    @Test
    void whatIsAboveItsLimitIsAStopWithItsRemedy() {
        Finding finding = drop(0.4, 0.36, TYPED).finding();
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("The drop, 0.4\u00a0V, is above the limit, 0.36\u00a0V.", finding.words());
        assertEquals("Thicker.", finding.remedy());
    }

    @Test
    void whatIsBelowALeastIsAStop() {
        assertEquals("The drop, 0.3\u00a0V, is below the limit, 0.36\u00a0V.", size(0.3, 0.36, TYPED).finding().words());
        assertEquals(Verdict.STOP, size(0.3, 0.36, TYPED).finding().verdict());
        assertEquals(Verdict.PASSED, size(0.4, 0.36, TYPED).finding().verdict());
    }

    @Test
    void theMilderVerdictIsTakenWhereTheCheckSaysSo() {
        Finding finding = drop(0.4, 0.36, TYPED).otherwise(Verdict.CAUTION, "Measure.").finding();
        assertEquals(Verdict.CAUTION, finding.verdict());
        assertEquals("Measure.", finding.remedy());
    }

    @Test
    void theSentenceShowsAsManyDigitsAsTellTheFigureFromItsLimit() {
        assertEquals("The drop, 0.3602\u00a0V, is above the limit, 0.36\u00a0V.", drop(0.3602, 0.36, TYPED).finding().words());
        assertEquals("The drop, 12.00001\u00a0V, is above the limit, 12\u00a0V.", drop(12.00001, 12, TYPED).finding().words());
    }

    @Test
    void lessThanFivePerCentLeftIsACaution() {
        Finding close = drop(0.358, 0.36, TYPED).ifClose("Leave room.").finding();
        assertEquals(Verdict.CAUTION, close.verdict());
        assertEquals("The drop, 0.358\u00a0V, is only just within the limit, 0.36\u00a0V.", close.words());
        assertEquals("Leave room.", close.remedy());
        // 5 % of 0.36 V is 0.018 V, so 0.342 V is the last that is not close
        assertEquals(Verdict.PASSED, drop(0.3419, 0.36, TYPED).finding().verdict());
        assertEquals(Verdict.CAUTION, drop(0.3421, 0.36, TYPED).finding().verdict());
        assertEquals(Verdict.CAUTION, size(0.37, 0.36, TYPED).finding().verdict());
    }

    @Test
    void aRatingThatEqualsItsLimitIsAsIntended() {
        assertEquals(Verdict.PASSED, drop(15, 15, TYPED).exact().finding().verdict());
        assertEquals("The drop, 15\u00a0V, is within the limit, 15\u00a0V.", drop(15, 15, TYPED).exact().finding().words());
    }

    @Test
    void aFigureFromMemoryStopsButNeverPasses() {
        Finding stopped = drop(0.4, 0.36, MEMORY).finding();
        assertEquals(Verdict.STOP, stopped.verdict());
        assertTrue(stopped.words().endsWith("It rests on a figure that is from memory: such a figure is enough to stop."), stopped.words());
        MissingFigure figure = new MissingFigure("limit", "limit of the drop", "the data sheet");
        Finding unknown = drop(0.3, 0.36, MEMORY).settledBy(figure).finding();
        assertEquals(Verdict.NOT_KNOWN, unknown.verdict());
        assertEquals(new MissingFigure("limit", "limit of the drop", "the data sheet", "from memory"), unknown.missing());
        assertEquals("Find the limit of the drop: the data sheet.", unknown.remedy());
        assertTrue(unknown.words().contains("would be within"), unknown.words());
    }

    @Test
    void whatItAlsoRestsOnCountsAsMuch() {
        assertEquals(Verdict.NOT_KNOWN, drop(0.3, 0.36, TYPED).restingOn(INVENTED).finding().verdict());
        assertEquals(INVENTED, drop(0.4, 0.36, TYPED).restingOn(INVENTED).finding().source());
        assertEquals(Verdict.NOT_KNOWN, Comparison.of("The drop", volts(0.3)).restingOn(MEMORY).atMost(volts(1), "the limit", TYPED)
                .finding().verdict());
        assertEquals(Verdict.PASSED, drop(0.3, 0.36, TYPED).restingOn(TYPED).finding().verdict());
    }

    @Test
    void whatIsTakenForGrantedOpensTheSentence() {
        assertEquals(
                "Assuming insulation for 60 °C, a warm place: The drop, 0.3\u00a0V, is within the limit, 0.36\u00a0V.",
                drop(0.3, 0.36, TYPED).assuming("insulation for 60 °C").assuming("a warm place").finding().words());
    }

    @Test
    void theLimitIsShownInTheUnitOfTheFigure() {
        Finding finding = Comparison.of("The drop", Quantity.of(300, Units.MILLIVOLT)).atMost(volts(0.36), "the limit", TYPED).finding();
        assertEquals("The drop, 300\u00a0mV, is within the limit, 360\u00a0mV.", finding.words());
    }

    @Property
    void theVerdictIsThatOfTheNumbers(
            @ForAll @DoubleRange(min = 0.01, max = 1000) double figure, @ForAll @DoubleRange(min = 0.01, max = 1000) double limit) {
        double hair = 2e-8 * limit;
        Verdict most = drop(figure, limit, TYPED).exact().finding().verdict();
        Verdict least = size(figure, limit, TYPED).exact().finding().verdict();
        if (figure > limit + hair) {
            assertEquals(Verdict.STOP, most);
            assertEquals(Verdict.PASSED, least);
        } else if (figure < limit - hair) {
            assertEquals(Verdict.PASSED, most);
            assertEquals(Verdict.STOP, least);
        }
    }

    @Property
    void aSentenceNeverCallsOneFigureAboveItself(
            @ForAll @DoubleRange(min = 0.1, max = 1000) double limit, @ForAll @DoubleRange(min = -100, max = 100) double off) {
        double figure = limit * (1 + off / 1_000_000);
        Comparison comparison = drop(figure, limit, TYPED);
        Matcher said = BOTH.matcher(comparison.finding().words());
        assertTrue(said.find(), comparison.finding().words());
        if (!comparison.holds()) {
            assertNotEquals(said.group(1), said.group(2));
        }
    }

    @Property
    void nothingPassesOnMemory(
            @ForAll @DoubleRange(min = 0.01, max = 1000) double figure, @ForAll @DoubleRange(min = 0.01, max = 1000) double limit) {
        Finding finding = drop(figure, limit, TYPED).restingOn(MEMORY).finding();
        assertFalse(finding.verdict() == Verdict.PASSED || finding.verdict() == Verdict.CAUTION, finding.words());
        assertEquals(drop(figure, limit, TYPED).holds() ? Verdict.NOT_KNOWN : Verdict.STOP, finding.verdict());
    }

    @Property
    void moreIsNeverMilder(
            @ForAll @DoubleRange(min = 0.01, max = 1000) double figure, @ForAll @DoubleRange(min = 1, max = 3) double times,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double limit) {
        Verdict less = drop(figure, limit, TYPED).finding().verdict();
        Verdict more = drop(figure * times, limit, TYPED).finding().verdict();
        assertFalse(less.isWorseThan(more), less + " became " + more);
        assertNull(drop(figure, limit, TYPED).finding().missing());
    }
}
