package loomwright.circuit.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.PartFault;
import loomwright.circuit.PartKind;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Extent;
import loomwright.markup.Links;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** The sheets of the punt. Its figures are worked by hand: copper at 58 m/(Ω mm²) at best, no resistance in fuse-links. */
class SheetsStructureTest {
    private static final Circuit PUNT = Written.PUNT;
    private static final Examination EXAMINATION = Examination.of(PUNT);

    @Test
    void theScheduleHasARowForEachDevice() {
        Element sheet = sheet(Sheet.SCHEDULE);
        List<String> rows = Written.rows(sheet, "Schedule of circuits");
        assertEquals(count(PUNT, PartKind.PROTECTION), rows.size());
        assertEquals(
                List.of("Circuit", "Device", "Conductors", "Loads", "Design current", "Ampacity", "Fault current", "Largest drop"),
                Written.heads(sheet, "Schedule of circuits"));
        assertEquals(List.of("number", "number", "number", "number"), sheet.select("thead th[class]").eachAttr("class"));
        assertTrue(rows.get(0).startsWith("F1 Fuse at the battery | large strip fuse-link of 30 A | W1, 4 mm², 1.2 m | – | "), rows.get(0));
        assertTrue(rows.get(1).startsWith("F2 Fuse-link of the bilge pump | blade fuse-link of 7.5 A | W2, 4 mm², 2.6 m | E1 Bilge pump | 4 A | "), rows.get(1));
        assertTrue(rows.get(2).startsWith("F3 Fuse-link of the stern lamp | blade fuse-link of 3 A | W3, 1.5 mm², 4.5 m | E2 Stern lamp | "), rows.get(2));
        assertTrue(rows.stream().allMatch(row -> row.matches(".* A to .* A \\| .*")), rows.toString());
        Element branch = Written.read(LessonSheet.markup(Sheet.SCHEDULE, Links.NONE, EXAMINATION, Extent.branch(PUNT, "lamp-fuse")));
        assertEquals(2, Written.rows(branch, "Schedule of circuits").size());
        Circuit bare = CircuitEdits.withoutBranch(PUNT, "main-fuse");
        assertTrue(LessonSheet.markup(Sheet.SCHEDULE, Links.NONE, Examination.of(bare), Extent.WHOLE).contains("nothing protects this circuit"));
    }

    /** Each conductor is its route and 0.25 m at each end; cable is two of each. */
    @Test
    void partsAndCutsCountTheCircuit() {
        Element sheet = sheet(Sheet.PARTS);
        List<String> cuts = Written.rows(sheet, "Conductors to cut");
        assertEquals(count(PUNT, PartKind.CONDUCTOR), cuts.size());
        assertTrue(cuts.get(0).matches("W1 Lead to the fuse panel \\| 4 mm², .* \\| 1\\.2 m \\| 1\\.7 m \\| ?"), cuts.get(0));
        assertTrue(cuts.get(1).matches("W2 Run to the bilge pump \\| 4 mm², .* \\| 2\\.6 m \\| 3\\.1 m \\| ?"), cuts.get(1));
        assertTrue(cuts.get(2).matches("W3 Run to the stern lamp \\| 1\\.5 mm², .* \\| 4\\.5 m \\| 5 m \\| ?"), cuts.get(2));
        assertEquals(cuts.size(), sheet.select("table[aria-label=Conductors to cut] span.tick").size());
        List<String> parts = Written.rows(sheet, "Parts");
        assertTrue(parts.contains("lead-acid battery of 60 Ah | 1 | G1"), parts.toString());
        assertTrue(parts.contains("large strip fuse-link of 30 A | 1 | F1"), parts.toString());
        assertTrue(parts.contains("blade fuse-link of 7.5 A | 1 | F2"), parts.toString());
        assertTrue(parts.contains("fuse panel for 15 A | 1 | P1"), parts.toString());
        // 2 × 1.7 m and 2 × 3.1 m; 2 × 5 m
        assertTrue(parts.stream().anyMatch(row -> row.startsWith("4 mm², ") && row.endsWith(" | 9.6 m | W1, W2")), parts.toString());
        assertTrue(parts.stream().anyMatch(row -> row.startsWith("1.5 mm², ") && row.endsWith(" | 10.0 m | W3")), parts.toString());
        assertEquals(PUNT.parts().size() - 1, parts.size(), "ten parts; two runs are of one cable");
        assertTrue(sheet.text().contains("0.25 m is added at each end"), sheet.text());
        assertTrue(sheet.selectFirst("p.source").text().contains("common practice"));
    }

    @Test
    void everyEndOfEveryConductorHasItsLabel() {
        List<String> labels = sheet(Sheet.LABELS).select("ul.labels > li").eachText();
        int runs = count(PUNT, PartKind.CONDUCTOR);
        int one = count(PUNT, PartKind.PROTECTION) + count(PUNT, PartKind.PANEL) + count(PUNT, PartKind.LOAD);
        assertEquals(4 * runs + one, labels.size());
        assertEquals("F1 Fuse at the battery, 30 A on or beside it", labels.get(0));
        assertEquals("W1 +, 4 mm² to P1 + conductor, end at F1 Fuse at the battery", labels.get(1));
        assertEquals("W1 +, 4 mm² from F1 + conductor, end at P1 Fuse panel, two ways", labels.get(2));
        assertEquals("W1 −, 4 mm² to negative of P1 − conductor, end at negative of G1, by a negative busbar if there is one", labels.get(3));
        assertEquals("P1 Fuse panel, two ways, 15 A in all on its lid", labels.get(5));
        assertTrue(labels.contains("W2 −, 4 mm² to E1 − conductor, end at negative of P1, by a negative busbar if there is one"), labels.toString());
        assertTrue(labels.contains("W2 −, 4 mm² from negative of P1 − conductor, end at E1 Bilge pump"), labels.toString());
    }

    @Test
    void theTestSheetHasTheStepsThatTheCircuitAsksFor() {
        Element sheet = sheet(Sheet.TEST_SHEET);
        int runs = count(PUNT, PartKind.CONDUCTOR);
        int points = PUNT.parts().size() - 1;
        List<Integer> sizes = sheet.select("table").stream().map(table -> table.select("tbody > tr").size()).toList();
        assertEquals(List.of(1 + 2 * runs, points, PUNT.parts().size(), count(PUNT, PartKind.PROTECTION)), sizes);
        assertEquals(List.of("circuit-test-0", "circuit-test-2", "circuit-test-3", "circuit-test-4"), sheet.select("h3").eachAttr("id"));
        assertEquals(List.of("Step", "What to do", "Expected", "Your reading", "Initials"), sheet.selectFirst("thead tr").children().eachText());
        List<String> steps = sheet.select("tbody > tr > th").eachText();
        for (int i = 0; i < steps.size(); i++) {
            assertTrue(steps.get(i).startsWith((i + 1) + ". "), steps.get(i));
        }
        assertEquals(4, sheet.select("dl.sign dt").size());
        assertEquals(0, sheet.select("input").size());
    }

    /**
     * 2 × 2.6 m ÷ (58 × 4) = 22.41 mΩ, 2 × 4.5 m ÷ (58 × 1.5) = 103.4 mΩ. With 12.6 V at the battery, 4 A for the pump and 14.4 Ω for
     * the lamp: the lead has 2.4 m ÷ 232 = 10.345 mΩ, so the panel reads (12.6 − 0.010345 × 4) ÷ (1 + 0.010345 ÷ 14.50345) = 12.550 V,
     * the lamp 12.550 × 14.4 ÷ 14.50345 = 12.460 V, the pump 12.550 − 4 × 0.022414 = 12.460 V.
     */
    @Test
    void expectedReadingsAreThoseWorkedByHand() {
        Circuit read = CircuitEdits.read(PUNT, "battery", "12.6").circuit();
        Element sheet = Written.read(CircuitMarkup.inside(Sheet.TEST_SHEET, Links.NONE, Examination.of(read)));
        assertTrue(
                sheet.text().contains(
                        "loads, chargers and solar panel off; breaker open; negative lead off; then the main fuse-links. Refit in exact reverse"),
                sheet.text());
        List<String> dead = Written.rows(sheet, "Dead tests: battery disconnected, every fuse-link and breaker out");
        assertTrue(dead.stream().anyMatch(row -> row.contains("W2 Run to the bilge pump") && row.contains("| 22.4 mΩ to ")), dead.toString());
        assertTrue(dead.stream().anyMatch(row -> row.contains("W3 Run to the stern lamp") && row.contains("| 103 mΩ to ")), dead.toString());
        List<String> loaded = Written.rows(sheet, "All loads on that are used together");
        assertTrue(loaded.get(0).contains("G1 Battery | Volts at its terminals: note it first | 12.6 V |"), loaded.get(0));
        assertTrue(loaded.get(3).contains("P1 Fuse panel, two ways | Volts behind it, loads on | ") && loaded.get(3).contains(" to 12.55 V"), loaded.get(3));
        assertTrue(loaded.get(6).contains("E1 Bilge pump") && loaded.get(6).contains(" to 12.46 V"), loaded.get(6));
        assertTrue(loaded.get(9).contains("E2 Stern lamp") && loaded.get(9).contains(" to 12.46 V"), loaded.get(9));
        List<String> idle = Written.rows(sheet, "Triggers on, no load on");
        assertTrue(idle.stream().allMatch(row -> row.contains("| Volts behind it | 12.6 V |")), idle.toString());
        assertTrue(sheet.text().contains("with 12.6 V at the terminals"), sheet.text());
    }

    @Test
    void aReadingIsTypedOnlyWhereVoltsUnderLoadAreExpected() {
        Circuit read = CircuitEdits.read(CircuitEdits.read(PUNT, "battery", "12.6").circuit(), "bilge-pump", "11.4").circuit();
        Element sheet = Written.read(CircuitMarkup.inside(Sheet.TEST_SHEET, Links.NONE, Examination.of(read)));
        assertEquals(PUNT.parts().stream().map(part -> part.id()).toList(), sheet.select("input.reading").eachAttr("data-reading"));
        assertEquals("11.4", sheet.getElementById("reading-bilge-pump").attr("value"));
        assertEquals("Your reading in volts, step 23, E1", sheet.getElementById("reading-bilge-pump").attr("aria-label"));
        assertEquals("What your readings say", sheet.selectFirst("#circuit-compared > h3#circuit-readings").text());
        assertTrue(sheet.select("#circuit-compared li.finding").stream().anyMatch(item -> item.text().contains("Bilge pump")), sheet.select("#circuit-compared").text());
        assertEquals("", Written.read(CircuitMarkup.inside(Sheet.TEST_SHEET, Links.NONE, EXAMINATION)).selectFirst("#circuit-compared").text());
        for (String useless : List.of("4.9", "32.1", "12 A")) {
            Circuit odd = CircuitEdits.read(PUNT, "battery", useless).circuit();
            Element beside = Written.read(CircuitMarkup.inside(Sheet.TEST_SHEET, Links.NONE, Examination.of(odd)));
            assertEquals(sheet(Sheet.TEST_SHEET).selectFirst("p").text().substring(0, 40), beside.select("p").get(1).text().substring(0, 40), useless);
        }
    }

    @Test
    void resultsHaveEachPointEachLoadAndTheDay() {
        Element sheet = Written.read(CircuitMarkup.inside(Sheet.RESULTS, Links.NONE, EXAMINATION));
        assertEquals(PUNT.parts().size(), Written.rows(sheet, "Voltage and current at each point").size());
        List<String> drops = Written.rows(sheet, "Drop to each load");
        assertEquals(count(PUNT, PartKind.LOAD), drops.size());
        assertTrue(drops.get(0).startsWith("E1 Bilge pump | 4 A | ") && drops.get(1).startsWith("E2 Stern lamp | "), drops.toString());
        List<String> day = Written.rows(sheet, "A day");
        // at rest 12.8 V: 4 A × 12.8 V × 0.5 h; the lamp 12.8² V² ÷ 14.4 Ω × 4 h = 45.5 Wh, and 44.9 Wh with 0.2 Ω before it
        assertEquals("E1 Bilge pump | 25.6 Wh", day.get(0));
        assertTrue(List.of("E2 Stern lamp | 45 Wh", "E2 Stern lamp | 45.1 Wh", "E2 Stern lamp | 45.2 Wh").contains(day.get(1)), day.get(1));
        assertTrue(day.stream().anyMatch(row -> row.matches("The whole day \\| 70\\.[678] Wh")), day.toString());
        assertEquals(List.of("circuit-points", "circuit-drops", "circuit-day"), sheet.select("h3").eachAttr("id"));
        assertTrue(sheet.selectFirst("p.source").text().startsWith("Source: "));
        assertEquals(8, Written.rows(Written.read(CircuitMarkup.inside(Sheet.RESULTS, Links.NONE, EXAMINATION)), "A day").size());
    }

    @Test
    void thePrintedPageHoldsEverySheetOnceInOrder() {
        Element page = Written.read(CircuitMarkup.printed(new Links(""), EXAMINATION));
        List<String> expected = new ArrayList<>(List.of("drawing", "findings", "results", "schedule", "parts", "labels", "test-sheet", "drilling"));
        assertEquals(expected, page.select("section.sheet-of-paper").eachAttr("data-sheet"));
        assertEquals(expected, page.select("section.sheet-of-paper").eachAttr("aria-labelledby"));
        for (Element section : page.select("section.sheet-of-paper")) {
            assertEquals(section.attr("data-sheet"), section.selectFirst("> h2, > details.folded > summary > h2").id());
            assertEquals("Reedmere punt", section.selectFirst("p.of-circuit").text());
        }
        assertEquals(expected.subList(2, 8), page.select("section.sheet-of-paper:has(> details.folded:not([open]))").eachAttr("data-sheet"), "folded until asked for");
        assertEquals("circuit-plan", page.selectFirst("[data-sheet=drawing]").id());
        assertEquals("circuit-test-sheet", page.selectFirst("[data-sheet=test-sheet]").id());
        assertEquals(0, page.select("button, input").size());
        assertEquals(PUNT.parts().size(), page.select("#circuit-rows li").size());
        assertTrue(page.selectFirst("[data-sheet=drilling]").text().contains("nothing to drill yet"));
        assertTrue(page.selectFirst("#workbench > #circuit-plan > p").text().startsWith("One line stands for both conductors"));
    }

    @Test
    void aSheetOfALessonIsFoundByItsKey() {
        for (Sheet sheet : LessonSheet.ALL) {
            assertEquals(sheet, LessonSheet.of(sheet.key()));
        }
        assertEquals(null, LessonSheet.of("drilling"));
        assertThrows(IllegalArgumentException.class, () -> LessonSheet.markup(Sheet.DRILLING, Links.NONE, EXAMINATION, Extent.WHOLE));
    }

    @Test
    void whatCannotBeUnderstoodLeadsToItsPart() {
        Element faults = Written.read(CircuitMarkup.faults(PUNT, List.of(new PartFault("lead", "size", "Size is empty"), new PartFault("", "", "A loop"))));
        assertEquals(List.of("W1 Lead to the fuse panel Size is empty.", "A loop."), faults.select("li").eachText());
        assertEquals(List.of("lead"), faults.select("button").eachAttr("data-go"));
    }

    private static Element sheet(Sheet sheet) {
        return Written.read(LessonSheet.markup(sheet, Links.NONE, EXAMINATION, Extent.WHOLE));
    }

    private static int count(Circuit circuit, PartKind kind) {
        return (int) circuit.parts().stream().filter(part -> part.kind() == kind).count();
    }
}
