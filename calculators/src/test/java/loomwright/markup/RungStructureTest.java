package loomwright.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.practice.BlankCheck;
import loomwright.practice.Exercise;
import loomwright.practice.MendedWorking;
import loomwright.worked.Outcome;
import loomwright.worked.Working;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** The ladder and its rungs, from the sample: a look-up, a product, a choice. */
class RungStructureTest {
    private final Working working = Sample.working("8 A");
    private final Exercise exercise = new Exercise(working);

    @Test
    void theLadderHasFourRungsAndStandsOnTheFirst() {
        Element row = read(LadderMarkup.row("bench"));
        assertEquals(List.of("1", "2", "3", "4"), row.select("ol.rungs > li > button").eachAttr("data-rung"));
        assertEquals(List.of("Follow", "Fill in", "Work alone", "Mend"), row.select("button").eachText());
        assertEquals(List.of("1"), row.select("button[aria-pressed=true]").eachAttr("data-rung"));
        assertEquals(3, row.select("button[aria-pressed=false]").size());
        assertEquals("bench-ladder bench-title", row.selectFirst(".ladder").attr("aria-labelledby"));
        assertEquals("bench-rung", row.selectFirst(".rung[hidden]").attr("aria-labelledby"));
        assertEquals("bench-ladder", row.selectFirst("h4").id());
    }

    @Test
    void aBlankAsksForTheFigureInItsUnitAndShowsNoNumber() {
        Element steps = read(RungMarkup.steps(Sample.PLACE, exercise, List.of(1), true));
        assertEquals(List.of("0", "1", "2"), steps.select("ol.steps > li").eachAttr("data-step"));
        Element blank = steps.select("li[data-step]").get(1);
        assertEquals("Your figure for voltage drop, in V", blank.selectFirst("form.yours > label").text());
        assertEquals("bench-blank-1", blank.selectFirst("label").attr("for"));
        assertEquals("decimal", blank.getElementById("bench-blank-1").attr("inputmode"));
        assertEquals("bench-blank-1-reply", blank.getElementById("bench-blank-1").attr("aria-describedby"));
        assertEquals(1, blank.select("#bench-blank-1-reply.reply").size());
        assertEquals("Multiply.", blank.selectFirst("p.words").text());
        assertEquals(1, blank.select("math").size());
        assertTrue(!blank.text().contains("0.4"), "the answer stands open: " + blank.text());
        assertEquals(0, blank.select("button[data-does=formula], .because").size());
        Element looked = steps.selectFirst("li[data-step=0]");
        assertEquals("It is printed.", looked.selectFirst("p.because").text());
        assertEquals("Look the resistance up.", looked.selectFirst("p.words").text());
        assertTrue(steps.selectFirst("li[data-step=2]").text().contains("filled in when the blanks before it are"), steps.text());
    }

    @Test
    void aFormulaWaitsUntilItIsAskedFor() {
        Element blank = read(RungMarkup.steps(Sample.PLACE, exercise, List.of(1), false)).selectFirst("li[data-step=1]");
        assertEquals("Show the formula", blank.selectFirst("button[data-does=formula]").text());
        assertEquals(1, blank.select("div.letters-only[hidden] math").size());
        Element open = read(RungMarkup.steps(Sample.PLACE, exercise, List.of(), false));
        assertEquals(0, open.select("form, .help").size());
        assertEquals(1, open.select("ul.candidates").size());
    }

    /** 8 A × 50 mΩ = 0.4 V. */
    @Test
    void whatIsFilledInIsWorked() {
        String worked = RungMarkup.worked(working.steps().get(1), 1);
        Element line = read(worked).selectFirst(".line");
        assertEquals("Step 2: voltage drop equals current times resistance of the run", line.attr("aria-label"));
        assertTrue(line.selectFirst("math").attr("alttext").replace('\u00a0', ' ').endsWith("8 A × 50 mΩ = 0.4 V"), worked);
        assertEquals("", RungMarkup.worked(working.steps().get(0), 0));
    }

    @Test
    void aReplyBeginsWithItsVerdict() {
        Element good = read(RungMarkup.reply(new BlankCheck(BlankCheck.Kind.RIGHT, "Right.", null)));
        assertEquals("agrees", good.selectFirst("p").attr("data-verdict"));
        assertEquals("Right.", good.selectFirst("strong").text());
        Element wrong = read(RungMarkup.reply(new BlankCheck(BlankCheck.Kind.SLIP, "A known slip. Read on. And on.", null)));
        assertEquals("differs", wrong.selectFirst("p").attr("data-verdict"));
        assertEquals("A known slip.", wrong.selectFirst("strong").text());
        assertEquals("A known slip. Read on. And on.", wrong.text());
    }

    @Test
    void choicesHeadAndActionsSayWhatTheyAreGiven() {
        Element choices = read(RungMarkup.choices(Sample.PLACE, "why", "Why?", List.of("one", "two & three")));
        assertEquals("Why?", choices.selectFirst("fieldset > legend").text());
        assertEquals(List.of("0", "1"), choices.select("input[type=radio][name=bench-why]").eachAttr("value"));
        assertEquals(List.of("one.", "two & three."), choices.select("label").eachText());
        Element actions = read(RungMarkup.actions("other", "Other numbers", "again", "Again"));
        assertEquals(List.of("other", "again"), actions.select("button").eachAttr("data-does"));
        assertEquals(List.of("Other numbers", "Again"), actions.select("button").eachText());
        Element head = read(RungMarkup.head(Sample.PLACE, "Fill in", "Do the last step.", Sample.working("8 A"), Sample.entries("8 A", "2.5 mm2")));
        assertEquals("bench-rung", head.selectFirst("h4").id());
        // The sample never asks for its temperature nor how its length counts.
        assertEquals(List.of("Design current 8 A", "Size 2.5 mm²"), head.select(".given dl > div").eachText());
    }

    @Test
    void theSlipStandsAtItsStep() {
        MendedWorking mended = MendedWorking.all(working).get(0);
        Element steps = read(RungMarkup.mended(Sample.PLACE, mended));
        // the resistance counted twice: 0.8 V; the choice after it would have to be made again
        assertEquals(List.of("0", "1"), steps.select("li[data-step]").eachAttr("data-step"));
        assertEquals("0.8 V", steps.select("li[data-step=1] strong.value").text());
    }

    /** 12 A through 1 mm², which Table 5 lets carry 10 A with insulation of 60 °C, and 8.2 A at 40 °C: no fuse-link puts that right. */
    @Test
    void anExampleThatEndsInAStopSaysSo() {
        String said = read(RungMarkup.endsInAStop(fuse("12 A", "1 mm²"))).text().replace('\u00a0', ' ');
        assertTrue(said.startsWith("This example ends in a stop: ") && said.contains("The design current, 12 A, is above the ampacity of 1 mm² (10 A × 0.82), 8.2 A."), said);
        assertEquals("", RungMarkup.endsInAStop(fuse("2 A", "2.5 mm²")));
    }

    private static Working fuse(String current, String size) {
        return Outcome.of(
                Catalogue.find("fuse-choice"), Map.of("design-current", current, "size", size, "insulation-temperature", "t60")).working();
    }

    @Test
    void anAnswerMayBeGivenInAnyUnitOfItsKind() {
        Element form = read(AnswerMarkup.form(Sample.PLACE, Sample.CALCULATOR.description().output("resistance")));
        assertEquals("Ω", form.selectFirst("select > option[selected]").text());
        assertTrue(form.select("select > option").eachText().contains("mΩ"));
        assertEquals("bench-answer-unit", form.selectFirst("select").id());
    }

    private static Element read(String html) {
        return Jsoup.parseBodyFragment(Balance.held(html)).body();
    }
}
