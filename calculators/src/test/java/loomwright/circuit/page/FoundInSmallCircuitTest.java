package loomwright.circuit.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.check.FigureToGet;
import loomwright.markup.Links;
import loomwright.worked.Verdict;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** What is shown of the findings of a small circuit: its blade would have to break 2920 A, and nothing parts its two loads by hand. */
class FoundInSmallCircuitTest {
    private static final Examination EXAMINATION = Examination.of(SmallCircuit.of());

    private static Element part(Examination examination, String id) {
        return Written.read(PartFound.of(new Links(""), examination, id));
    }

    private static Circuit changed(Circuit circuit, String id, String field, String text) {
        return CircuitEdits.changed(circuit, id, field, text).circuit();
    }

    private static long passed(Examination examination, String id) {
        return examination.findings().stream().filter(each -> each.concerns(id) && each.finding().verdict() == Verdict.PASSED).count();
    }

    @Test
    void theVerdictCountsWhatThereIsToDo() {
        int figures = FigureToGet.of(EXAMINATION).size();
        assertEquals("1 to change 2 to decide " + figures + " to get", Written.read(BenchMarkup.verdict(EXAMINATION, 0)).text());
        assertEquals("3 to look at again 1 to change 2 to decide " + figures + " to get", Written.read(BenchMarkup.verdict(EXAMINATION, 3)).text());
        assertEquals(List.of("stop", "caution", "not-known"), Written.read(BenchMarkup.verdict(EXAMINATION, 0)).select("[data-verdict]").eachAttr("data-verdict"));
        Circuit parted = changed(SmallCircuit.of(), "fuse", "device", "class-t");
        assertEquals("none", Written.read(BenchMarkup.verdict(Examination.of(parted), 0)).select("[data-verdict]").get(0).attr("data-verdict"), "nothing to change");
    }

    /** The panel carries 30 A, the run 22.8 A, the lead 41 A: 25 A are too much for the run, 35 A for the panel too. */
    @Test
    void aChangeNamesTheFirstTwoAndCountsTheOthers() {
        String one = ChangeWords.of(EXAMINATION, Examination.of(changed(SmallCircuit.of(), "fuse", "rating", "25 A")));
        assertTrue(one.startsWith("New to change: ") && !one.contains("; ") && !one.contains(" more. "), one);
        String two = ChangeWords.of(EXAMINATION, Examination.of(changed(SmallCircuit.of(), "fuse", "rating", "35 A")));
        assertTrue(two.matches("New to change: [^;.]+; [^;.]+\\. New to decide: .*"), two);
        // Three loads on the battery without any device are three stops.
        String three = ChangeWords.of(EXAMINATION, Examination.of(SmallCircuit.of(bare("one"), bare("two"), bare("three"))));
        assertTrue(three.matches("New to change: [^;.]+; [^;.]+; and 1 more\\. .*"), three);
    }

    private static Part bare(String id) {
        return SmallCircuit.part(id, PartKind.LOAD, "battery", "load-kind=constant-current", "current=0.5 A");
    }

    @Test
    void atAPartItsFindingsStandAndWhatPassedIsCounted() {
        Element panel = part(EXAMINATION, "panel");
        assertEquals("Nothing to change or to decide here: " + passed(EXAMINATION, "panel") + " checks passed here.", panel.text());
        Element fuse = part(EXAMINATION, "fuse");
        assertEquals(1, fuse.select("li[data-verdict=stop]").size());
        assertEquals(1, fuse.select("li[data-verdict=caution]").size());
        assertEquals(passed(EXAMINATION, "fuse") + " checks passed here.", fuse.select("p.help").last().text());
        assertTrue(!fuse.select("li[data-verdict=stop] .working a[href*=breaking-capacity]").isEmpty(), "the working of the stop opens");
        assertEquals(0, fuse.select("li[data-verdict=stop] button[data-go]").size(), "the reader is there already");
        Examination nothing = Examination.of(new Circuit("", List.of(SmallCircuit.part("battery", PartKind.SUPPLY, ""), SmallCircuit.part("spare", PartKind.CONDUCTOR, "battery"))));
        assertTrue(part(nothing, "nobody").text().equals("Nothing has been checked here yet."));
    }

    /** What is missing is looked up, and typed in where its field is: that of a load in the load, that of a run in the device that guards it. */
    @Test
    void aMissingFigureLeadsToTheFieldThatTakesIt() {
        Element lamp = part(EXAMINATION, "lamp");
        Element rating = lamp.selectFirst("button[data-field=outlet-rating]");
        assertEquals("lamp", rating.attr("data-go"));
        assertEquals("Enter it", rating.text());
        assertEquals("fuse", part(EXAMINATION, "lead").selectFirst("button[data-field=clearing-i2t]").attr("data-go"));
        assertEquals("battery", part(EXAMINATION, "battery").selectFirst("button[data-field=days-wanted]").attr("data-go"));
        assertTrue(lamp.text().contains("Look at "), lamp.text());
    }

    /** 25 A before a run of 22.8 A: at the device it is told with the way to it, and a smaller rating can be found. */
    @Test
    void aFindingOfTwoPartsLeadsToTheOther() {
        Examination large = Examination.of(changed(SmallCircuit.of(), "fuse", "rating", "25 A"));
        CircuitFinding found = large.findings().stream().filter(each -> each.finding().verdict() == Verdict.STOP && !each.otherId().isEmpty()).findFirst().orElseThrow();
        Element other = part(large, found.otherId());
        assertTrue(other.select("li[data-verdict=stop] button[data-go=" + found.partId() + "]").size() == 1, other.html());
        Element own = part(large, found.partId());
        assertEquals(0, own.select("li[data-verdict=stop] button[data-go=" + found.partId() + "]").size());
        assertTrue(!own.select("button[data-smallest=" + found.partId() + "]").isEmpty(), own.html());
    }

    /** On paper, or in a lesson that goes without the others, nothing can be pressed; the findings are the same. */
    @Test
    void aloneTheFindingsStandWithoutLinksToPress() {
        Element alone = Written.read(FoundMarkup.alone(new Links(""), EXAMINATION));
        Element live = Written.read(FoundMarkup.live(new Links(""), EXAMINATION, true));
        assertEquals(0, alone.select("button, .working a").size());
        assertTrue(live.select("button").size() > 2 && live.select(".working a").size() > 2);
        assertEquals(live.select("li.finding").size(), alone.select("li.finding").size());
        assertTrue(alone.select("#circuit-change, #circuit-decide, #circuit-figures").size() == 3);
        assertEquals(FigureToGet.of(EXAMINATION).size(), alone.select("ul.figures-to-get > li").size());
    }

    @Test
    void whatIsOpenedAndPutOnTheShelfHasItsFields() {
        Element tools = Written.read(ToolsMarkup.tools());
        for (String id : List.of("circuit-upload", "circuit-shelf", "circuit-upload-beside", "circuit-link")) {
            assertEquals(1, tools.select("#" + id).size(), id);
            assertEquals(1, tools.select("label[for=" + id + "]").size(), id);
        }
    }
}
