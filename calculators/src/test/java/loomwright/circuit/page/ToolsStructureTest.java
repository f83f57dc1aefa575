package loomwright.circuit.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.DrilledPanel;
import loomwright.circuit.check.Examination;
import loomwright.circuit.file.StartingCircuits;
import loomwright.circuit.sheet.MainFigures;
import loomwright.markup.Links;
import loomwright.worked.Verdict;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** Tools, shelf and drilling. */
class ToolsStructureTest {
    @Test
    void everyToolHasAButtonAndEveryControlALabel() {
        Element tools = Written.read(ToolsMarkup.tools());
        assertEquals(
                List.of("trailer", "punt", "empty", "download", "link", "beside", "discard", "print", "tick-all", "tick-none"),
                tools.select("button[type=button]").eachAttr("data-does"));
        assertTrue(tools.select("button").stream().noneMatch(button -> button.text().isEmpty()));
        for (Element control : tools.select("input:not([type=checkbox]), select")) {
            assertEquals(1, tools.select("label[for=" + control.id() + "]").size(), control.id());
        }
        assertEquals(
                List.of("drawing", "findings", "results", "schedule", "parts", "labels", "test-sheet", "drilling", "cautions"),
                tools.select("#circuit-print > label > input[type=checkbox][checked]").eachAttr("value"));
        assertEquals("Drawing", tools.selectFirst("#circuit-print > label").text());
        assertEquals(List.of("Name, new circuit", "File and link", "Several circuits", "Print"), tools.select("details > summary").eachText());
        assertEquals("status", tools.getElementById("circuit-notice").attr("role"));
        assertEquals("circuit-name-fault", tools.selectFirst("p.error[hidden]").id());
    }

    @Test
    void theBarHoldsTheVerdictAndTheStepBackBesideWhatIsSaid() {
        Element bar = Written.read(BenchMarkup.bar());
        assertEquals(List.of("drawing", "part", "verdict", "undo", "redo"), bar.select("#circuit-bar button").eachAttr("data-does"));
        assertEquals("undo", bar.selectFirst("#circuit-said + button").attr("data-does"));
        assertEquals("status", bar.selectFirst("#circuit-said > p").attr("role"));
        Circuit punt = StartingCircuits.punt();
        Circuit bad = CircuitEdits.changed(punt, "lamp-fuse", "rating", "40 A").circuit();
        Examination examination = Examination.of(bad);
        Element verdict = Written.read(BenchMarkup.verdict(examination, 2));
        assertEquals("2 to look at again", verdict.selectFirst("[data-verdict=fault]").text());
        assertEquals(examination.count(Verdict.STOP) + " to change", verdict.selectFirst("[data-verdict=stop]").text());
        assertTrue(examination.count(Verdict.STOP) > 0);
        // nothing to change in the punt as it is: the number stands there without its mark
        Element good = Written.read(BenchMarkup.verdict(Examination.of(punt), 0));
        assertTrue(good.text().startsWith("0 to change"), good.text());
        assertEquals(0, good.select("[data-verdict=stop], [data-verdict=fault]").size());
    }

    @Test
    void eachSheetHasATabThatNamesItsElement() {
        Element tabs = Written.read(BenchMarkup.tabs());
        assertEquals(
                List.of("circuit-results", "circuit-schedule", "circuit-parts", "circuit-labels", "circuit-test-sheet", "circuit-drilling"),
                tools(tabs).eachAttr("aria-controls"));
        assertEquals("Schedule of circuits", tabs.getElementById("tab-schedule").text());
    }

    private static org.jsoup.select.Elements tools(Element tabs) {
        return tabs.select("[role=tablist] > button[role=tab]");
    }

    @Test
    void aQuestionHasTwoAnswersAndARefusalItsReasons() {
        Element question = Written.read(ToolsMarkup.question("Take <it>?", "Take it", "Keep mine"));
        assertEquals("Take <it>?", question.selectFirst("strong").text());
        assertEquals(List.of("take", "keep"), question.select("button").eachAttr("data-does"));
        assertEquals(List.of("Take it", "Keep mine"), question.select("button").eachText());
        Element refusal = Written.read(ToolsMarkup.refusal("Not opened", List.of("too long", "<b>")));
        assertEquals("Not opened", refusal.selectFirst("strong").text());
        assertEquals(List.of("too long", "<b>"), refusal.select("li").eachText());
        assertEquals("dismiss", refusal.selectFirst("button").attr("data-does"));
    }

    @Test
    void theShelfNamesEachCircuitAndSetsTheirFiguresSideBySide() {
        List<ShelfMarkup.Kept> kept = List.of(
                new ShelfMarkup.Kept(1, Examination.of(Written.PUNT)), new ShelfMarkup.Kept(2, null),
                new ShelfMarkup.Kept(3, Examination.of(CircuitEdits.renamed(Written.TRAILER, ""))));
        Element options = Written.read("<select>" + ShelfMarkup.options(kept, 3) + "</select>");
        assertEquals(List.of("1: Reedmere punt", "2: cannot be read", "3: without a name"), options.select("option").eachText());
        assertEquals(List.of("3"), options.select("option[selected]").eachAttr("value"));
        assertEquals(List.of("1", "2", "3"), options.select("option").eachAttr("value"));
        Element table = Written.read(ShelfMarkup.table(kept, 1));
        assertEquals(
                List.of("Figure", "1: Reedmere punt (on the desk)", "2: cannot be read", "3: without a name"),
                Written.heads(table, "Main figures side by side"));
        List<String> rows = Written.rows(table, "Main figures side by side");
        assertEquals(MainFigures.LABELS.size(), rows.size());
        assertEquals("Parts | 10 | – | " + Written.TRAILER.parts().size(), rows.get(0));
        // 2 × (1.7 + 3.1 + 5) m
        assertTrue(rows.get(8).startsWith("Conductor to cut, all sizes | 19.6 m | – | "), rows.get(8));
        assertTrue(rows.get(10).matches("The whole day \\| 70\\.[678] Wh \\| – \\| .*"), rows.get(10));
        assertTrue(ShelfMarkup.table(kept.subList(0, 1), 1).contains("Only one circuit is kept here"));
    }

    /** Two cut-outs 60 mm apart, the first 70 mm from the left. */
    @Test
    void theDrillingSheetHasACentreForEachCutOut() {
        DrilledPanel panel = DrilledPanel.NONE.with("panel-width", "200 mm").with("panel-height", "100 mm").with("count", "2")
                .with("hole-diameter", "29 mm").with("centre-distance", "60 mm").with("first-centre", "70 mm").with("row-height", "50 mm").with("clear-depth", "80 mm");
        Element sheet = Written.read(DrillingMarkup.sheet(new Links(""), Written.PUNT.in(panel)));
        List<String> rows = Written.rows(sheet, "Centres to mark");
        assertEquals(List.of("1 | 70 mm | 50 mm | 29 mm |", "2 | 130 mm | 50 mm | 29 mm |"), rows.stream().map(String::strip).toList());
        assertEquals("Reedmere punt", sheet.selectFirst("p.of-circuit").text());
        assertEquals(1, sheet.select("figure.figure > svg").size());
        assertTrue(sheet.select(".findings li.finding").size() > 0);
        Element form = Written.read(DrillingMarkup.form(panel));
        assertEquals(DrilledPanel.FIELDS.size(), form.select(".field").size());
        assertEquals(8, form.select("> .field").size());
        assertEquals("60", form.getElementById("drill-centre-distance").attr("value"));
        assertEquals("Edges, room and frames behind", form.selectFirst("details > summary").text());
    }
}
