package loomwright.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Working;
import org.junit.jupiter.api.Test;

class OutcomeMarkupTest {
    private final String printed = whole(Sample.working("8 A"));

    @Test
    void putsTheResultsAskedForFirst() {
        int drop = printed.indexOf("<tr class=\"first\" data-result=\"drop\"><th scope=\"row\">Voltage drop</th>"
                + "<td class=\"number\"><span class=\"value\">0.4\u00a0V</span></td></tr>");
        int resistance = printed.indexOf("<tr data-result=\"resistance\">");
        assertTrue(drop > 0 && drop < resistance, printed);
    }

    private static String whole(Working working) {
        return UpshotMarkup.printed(Sample.PLACE, working) + OutcomeMarkup.printed(Sample.PLACE, working);
    }

    @Test
    void theUpshotEndsWithTheWorstVerdict() {
        String upshot = UpshotMarkup.printed(Sample.PLACE, Sample.working("8 A"));
        assertTrue(upshot.startsWith("<div class=\"results\">"), upshot);
        assertTrue(upshot.endsWith("<p class=\"worst\" data-verdict=\"stop\"><strong>Stop.</strong> It is hot.</p>"), upshot);
    }

    @Test
    void showsOwnFiguresBesideThePrintedOnes() {
        String own = UpshotMarkup.own(Sample.PLACE, Sample.working("4 A"), Sample.working("8 A"));
        assertContains(own, "<th scope=\"col\" class=\"number own\">Your figures</th><th scope=\"col\" class=\"number printed\">Printed example</th>");
        assertContains(
                own,
                "<td class=\"number own\"><span class=\"value\">0.2\u00a0V</span></td>"
                        + "<td class=\"number printed\"><span class=\"value\">0.4\u00a0V</span></td>");
    }

    @Test
    void writesAFormulaStepThatIsReadInWords() {
        assertContains(printed, "<p class=\"words\">Multiply. Ohm&#39;s law.</p>");
        assertContains(printed, "<div class=\"line\" role=\"group\" aria-label=\"Step 2: voltage drop equals current times resistance of the run\"><math");
        assertContains(printed, "<p class=\"gives\">Voltage drop <strong class=\"value\">0.4\u00a0V</strong></p>");
    }

    @Test
    void writesATableStepWithItsRowAndNoLine() {
        assertContains(
                printed,
                "<li><p class=\"words\">Look the resistance up. It is printed.</p><p class=\"gives\">Resistance of the run "
                        + "<math><msub><mi>R</mi><mtext>c</mtext></msub></math> <strong class=\"value\">50\u00a0mΩ</strong></p></li>");
        assertContains(
                printed,
                "<li value=\"1\"><span class=\"source\">Source: <a href=\"../numbers.html#source-book\">A book &lt;of&gt; tables</a>, 2001, "
                        + "Table 5, 2.5\u00a0mm² <span class=\"standing\">published</span></span></li>");
    }

    @Test
    void writesAConversionOnlyWhenThereIsOne() {
        assertFalse(printed.contains("Bring the current"), printed);
        String converted = whole(Sample.working("500 mA"));
        assertContains(
                converted,
                "<p class=\"words\">Bring the current to amperes.</p><p class=\"gives\"><span class=\"value\">500\u00a0mA</span>"
                        + " is <strong class=\"value\">0.5\u00a0A</strong></p>");
    }

    @Test
    void listsTheSizesAChoiceLookedAt() {
        assertContains(
                printed,
                "<ul class=\"candidates\"><li><span class=\"value\">5 A</span> too small</li>"
                        + "<li><strong class=\"value\">10 A</strong> large enough</li></ul>");
        assertContains(printed, "<span class=\"standing\">common practice</span>");
    }

    @Test
    void saysWhatEachCheckFound() {
        assertContains(
                printed,
                "<li class=\"finding\" data-verdict=\"passed\"><details><summary><span><strong class=\"verdict\">Check passed.</strong> "
                        + "The drop is small.</span></summary><p class=\"source\">");
        assertContains(printed, "data-verdict=\"stop\"><details><summary><span><strong class=\"verdict\">Stop.</strong> It is hot.</span></summary>");
        assertContains(printed, "<p class=\"remedy\">What to do: use a larger size.</p>");
    }

    @Test
    void foldsSlipsAwayWithTheirValueHere() {
        assertContains(
                printed,
                "<li class=\"slip\"><span class=\"value\">0.8\u00a0V</span> for voltage drop: <strong>Counted twice.</strong> "
                        + "The resistance already counts both ways.</li>");
    }

    @Test
    void carriesFiguresToTheNextQuestion() {
        assertContains(printed, "<a href=\"../calculators/fuse-choice.html#size=2.5%20mm%C2%B2\">Which fuse-link?</a>");
    }

    @Test
    void tellsAScreenReaderTheFirstResult() {
        assertEquals("Voltage drop 0.4\u00a0V, 1 stop", StatusText.of(Sample.PLACE, Sample.working("8 A")));
    }

    private static void assertContains(String html, String part) {
        assertTrue(html.contains(part), () -> "not found: " + part + "\nin: " + html);
    }
}
