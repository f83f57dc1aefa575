package loomwright.circuit.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.PartKind;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Extent;
import loomwright.markup.Links;
import loomwright.picture.Canvas;
import loomwright.picture.Heading;
import loomwright.picture.Style;
import loomwright.picture.Symbol;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;

/** The drawing of a circuit: a row a part. */
class PlanStructureTest {
    private static final Circuit PUNT = Written.PUNT;

    /** Part, designation and title, what it is, what feeds it: typed from the circuit. */
    private static final List<List<String>> ROWS = List.of(
            List.of("battery", "G1 Battery", "lead-acid, 60 Ah", ""),
            List.of("main-fuse", "F1 Fuse at the battery", "Large bolt-in strip fuse-link, 30 A", "Fed by G1."),
            List.of("lead", "W1 Lead to the fuse panel", "4 mm², route 1.2 m", "Fed by F1."),
            List.of("fuse-panel", "P1 Fuse panel, two ways", "for 15 A in all", "Fed by W1."),
            List.of("pump-fuse", "F2 Fuse-link of the bilge pump", "Blade fuse-link, 7.5 A", "Fed by P1."),
            List.of("pump-run", "W2 Run to the bilge pump", "4 mm², route 2.6 m", "Fed by F2."),
            List.of("bilge-pump", "E1 Bilge pump", "4 A at 12 V", "Fed by W2."),
            List.of("lamp-fuse", "F3 Fuse-link of the stern lamp", "Blade fuse-link, 3 A", "Fed by P1."),
            List.of("lamp-run", "W3 Run to the stern lamp", "1.5 mm², route 4.5 m", "Fed by F3."),
            List.of("stern-lamp", "E2 Stern lamp", "10 W at 12 V", "Fed by W3."));

    @Test
    void eachPartHasItsRowWithDesignationWordsAndWhatFeedsIt() {
        Element body = printed(PUNT, Extent.WHOLE);
        Elements rows = body.select("ol.plan > li");
        assertEquals(ROWS.stream().map(row -> row.get(0)).toList(), rows.eachAttr("data-part"));
        for (int i = 0; i < ROWS.size(); i++) {
            Element pick = rows.get(i).selectFirst("> span.pick");
            assertEquals(ROWS.get(i).get(1), pick.selectFirst("> strong").text());
            assertEquals(ROWS.get(i).get(2), pick.selectFirst("> span.what").text());
            assertEquals(ROWS.get(i).get(3), pick.select("> span.unseen").text());
        }
        assertEquals("Reedmere punt", body.selectFirst("> p.of-circuit").text());
        assertEquals(0, body.select("button, p.next-step").size(), "nothing can be chosen on paper");
        // a constant current; it stands in the second of its texts
        assertTrue(rows.get(6).select("span.what").get(1).text().startsWith("At most 4 A, at least "), rows.get(6).text());
        assertEquals("A circuit without a name", printed(CircuitEdits.renamed(PUNT, ""), Extent.WHOLE).selectFirst("p.of-circuit").text());
    }

    /** The trunk stands at 20, each branch 26 to its right; the middle of a symbol is 28 below the upper edge of its row. */
    @Test
    void linesLeadFromTheTrunkIntoEachBranchAndOnToTheEnd() {
        Element body = printed(PUNT, Extent.WHOLE);
        assertEquals(List.of("M20 28L20 2000"), accents(body, "battery"));
        assertEquals(List.of("M20 0L20 28", "M20 28L20 2000"), accents(body, "lead"));
        // first branch: its trunk goes on below
        assertEquals(List.of("M20 6L46 6L46 28", "M20 0L20 2000", "M46 28L46 2000"), accents(body, "pump-fuse"));
        assertEquals(List.of("M46 0L46 28", "M46 28L46 2000", "M20 0L20 2000"), accents(body, "pump-run"));
        assertEquals(List.of("M46 0L46 28", "M20 0L20 2000"), accents(body, "bilge-pump"));
        // last branch: its trunk ends at the dot
        assertEquals(List.of("M20 6L46 6L46 28", "M20 0L20 6", "M46 28L46 2000"), accents(body, "lamp-fuse"));
        assertEquals(List.of("M46 0L46 28"), accents(body, "stern-lamp"));
        assertEquals(List.of("20 6 4", "20 6 4"), body.select("circle.accent").stream().map(PlanStructureTest::circle).toList());
        assertEquals("46", svg(body, "lead").attr("width"));
        assertEquals("72", svg(body, "pump-run").attr("width"));
        assertEquals(Set.of("52"), new HashSet<>(body.select("svg").eachAttr("height")));
    }

    @Test
    void aBranchAloneStandsInOneColumn() {
        Element body = printed(PUNT, Extent.branch(PUNT, "lamp-fuse"));
        assertEquals(
                List.of("battery", "main-fuse", "lead", "fuse-panel", "lamp-fuse", "lamp-run", "stern-lamp"),
                body.select("li").eachAttr("data-part"));
        assertEquals(Set.of("46"), new HashSet<>(body.select("svg").eachAttr("width")));
        assertEquals(0, body.select("circle.accent").size());
    }

    /** Columns close up beyond the fifth: with ten, each is half as wide. */
    @Test
    void manyColumnsAreDrawnCloserTogether() {
        Circuit deep = PUNT;
        String at = "pump-run";
        for (int i = 0; i < 9; i++) {
            Circuit longer = CircuitEdits.added(deep, PartKind.CONDUCTOR, at);
            String end = Kinds.added(longer, deep);
            deep = CircuitEdits.added(longer, PartKind.LOAD, at);
            at = end;
        }
        Element body = printed(deep, Extent.WHOLE);
        // 20 + 13 × 10 + 26
        assertEquals("176", svg(body, at).attr("width"));
        assertEquals("59", svg(body, "pump-run").attr("width"));
    }

    @Test
    void eachKindHasItsSymbolOnTheLine() {
        Circuit all = Kinds.all();
        Element body = printed(all, Extent.WHOLE);
        holdsSymbol(body, "battery", Symbol.BATTERY);
        holdsSymbol(body, "main-fuse", Symbol.FUSE_LINK);
        holdsSymbol(body, "breaker", Symbol.BREAKER);
        holdsSymbol(body, Kinds.ISOLATOR, Symbol.SWITCH_OPEN);
        holdsSymbol(body, "on-switch", Symbol.SWITCH_OPEN);
        holdsSymbol(body, "outlet-switch", Symbol.MAKE_CONTACT);
        holdsSymbol(body, Kinds.RELAY, Symbol.MAKE_CONTACT);
        holdsSymbol(body, Kinds.SOURCE, Symbol.CONVERTER);
        holdsSymbol(body, "strip", Symbol.CONVERTER);
        holdsSymbol(body, "pump", Symbol.MOTOR);
        holdsSymbol(printed(PUNT, Extent.WHOLE), "stern-lamp", Symbol.RESISTOR);
        // boxes: 17 and 20 to each side of a solid-state switch, a coil left of a relay's contact, a busbar 16 to each side
        assertEquals(List.of("34 40"), boxes(body, "outlet-switch"));
        assertEquals(List.of("9 12"), boxes(body, Kinds.RELAY));
        assertEquals(List.of(), boxes(body, "on-switch"));
        assertEquals(List.of("32 8"), svg(body, "fuse-panel").select("rect.solid").stream().map(PlanStructureTest::size).toList());
        double x = x(body, "feed");
        assertEquals(
                List.of(line(x - 8, 30, x + 8, 20), line(x - 8, 37, x + 8, 27)), svg(body, "feed").select("path.ink").eachAttr("d"), "two strokes: out and back");
        assertEquals(2, svg(body, "bench-joints").select("circle.paper").size());
    }

    @Test
    void theMarkIsThatOfTheWorstFinding() {
        Circuit bad = CircuitEdits.changed(PUNT, "lamp-fuse", "rating", "40 A").circuit();
        Examination examination = Examination.of(bad);
        Element body = Written.read(LessonSheet.markup(Sheet.DRAWING, new Links(""), examination, Extent.WHOLE));
        Set<String> seen = new HashSet<>();
        for (Element row : body.select("li")) {
            var found = examination.findingsOn(row.attr("data-part"));
            String worst = found.isEmpty() ? "" : found.get(0).finding().verdict().key();
            assertEquals(worst, row.attr("data-verdict"));
            assertEquals(worst.equals("stop") ? "Change this" : worst.equals("caution") ? "Decide this" : "", row.select("span.mark").text());
            seen.add(worst);
        }
        // 40 A before 1.5 mm²
        assertEquals("stop", body.selectFirst("li[data-part=lamp-fuse]").attr("data-verdict"));
        assertTrue(seen.size() > 1, seen.toString());
    }

    @Test
    void inThePageEachRowIsAButtonOneIsChosenAndAFaultyOneSaysSo() {
        PlanMarkup.Plan plan = PlanMarkup.of(PUNT, Examination.of(PUNT), Set.of("lamp-run"), "pump-run");
        assertEquals(ROWS.size(), plan.rows().size());
        Element body = Written.read(plan.whole());
        assertEquals(ROWS.size(), body.select("ol.plan > li > button[type=button].pick").size());
        assertEquals(List.of("pump-run"), parts(body.select("button[aria-pressed=true]")));
        assertEquals(List.of("pump-run"), parts(body.select("button[tabindex=0]")));
        assertEquals(ROWS.size() - 1, body.select("button[aria-pressed=false][tabindex=-1]").size());
        assertEquals("fault", body.selectFirst("li[data-part=lamp-run]").attr("data-verdict"));
        assertEquals("Needs another look", body.selectFirst("li[data-part=lamp-run] .mark").text());
        assertEquals(0, body.select("p.next-step").size());
        Circuit open = CircuitEdits.without(PUNT, "stern-lamp");
        Element next = Written.read(PlanMarkup.of(open, null, Set.of(), "battery").whole());
        assertTrue(next.selectFirst("p.next-step").text().startsWith("Next: W3 Run to the stern lamp feeds nothing yet."), next.text());
        assertEquals(0, next.select("[data-verdict], .mark").size(), "nothing has been examined");
        assertEquals(1, next.select("li[data-part=lead] .what").size());
    }

    @Test
    void aTriggerIsNamed() {
        Element row = printed(Written.TRAILER, Extent.WHOLE).selectFirst("li[data-part=outlet-switch]");
        assertTrue(row.text().contains("Trigger from K1."), row.text());
        assertTrue(row.selectFirst(".what").text().endsWith("olid-state switch for d.c., for 40 A"), row.text());
    }

    private static Element printed(Circuit circuit, Extent extent) {
        return Written.read(PlanMarkup.printed(Examination.of(circuit), extent));
    }

    private static Element svg(Element body, String part) {
        return body.selectFirst("li[data-part=" + part + "] > svg");
    }

    private static List<String> accents(Element body, String part) {
        return svg(body, part).select("path.accent").eachAttr("d");
    }

    /** The canvas ends 26 right of the middle of the symbol. */
    private static double x(Element body, String part) {
        return Double.parseDouble(svg(body, part).attr("width")) - 26;
    }

    private static void holdsSymbol(Element body, String part, Symbol symbol) {
        Canvas canvas = new Canvas();
        symbol.draw(canvas, x(body, part), 28, Heading.SOUTH);
        String expected = Written.read("<svg>" + canvas.body() + "</svg>").selectFirst("svg").html();
        assertTrue(svg(body, part).html().contains(expected.strip()), () -> part + " is not drawn as " + symbol + ": " + svg(body, part));
    }

    private static String line(double x1, double y1, double x2, double y2) {
        return Written.read("<svg>" + new Canvas().line(Style.INK, x1, y1, x2, y2).body() + "</svg>").selectFirst("path").attr("d");
    }

    private static List<String> boxes(Element body, String part) {
        return svg(body, part).select("rect.paper").stream().map(PlanStructureTest::size).filter(size -> size.equals("34 40") || size.equals("9 12")).toList();
    }

    private static String size(Element rect) {
        return rect.attr("width") + " " + rect.attr("height");
    }

    private static String circle(Element circle) {
        return circle.attr("cx") + " " + circle.attr("cy") + " " + circle.attr("r");
    }

    private static List<String> parts(Elements buttons) {
        return buttons.stream().map(button -> button.parent().attr("data-part")).toList();
    }
}
