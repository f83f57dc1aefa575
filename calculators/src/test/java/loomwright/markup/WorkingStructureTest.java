package loomwright.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.graph.Graphs;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import loomwright.worked.Working;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;

/**
 * Two workings as a page shows them, every figure worked by hand. The first: 10 A through 4.2 m of 2.5 mm² to ISO 6722-1, 7.60 mΩ/m. The
 * second: 10 A at a drop of 1.2 V, 1.3 + 0.1 + 1.0 K/W to air of 40 °C.
 */
class WorkingStructureTest {
    private static final Map<String, String> BENCH = Map.of(
            "current", "10 A", "route-length", "4.2 m", "length-counts", "one-way", "conductor", "iso-6722-1", "size", "2.5 mm²", "temperature", "20 °C");
    private static final Map<String, String> SWITCH = Map.of(
            "current", "10 A", "voltage-drop", "1.2 V", "junction-to-case", "1.3", "case-to-sink", "0.1", "sink-to-air", "1.0", "junction-limit", "150 °C");

    private final Element drop = page("voltage-drop", BENCH, List.of("drop-percent", "drop"));
    private final Element junction = page("junction-temperature", SWITCH, List.of());

    @Test
    void stepsOfADropStandInOrderInLettersAndInNumbers() {
        assertEquals(
                List.of("R = r × L | R = 7.6 mΩ/m × 8.4 m = 63.84 mΩ", "U_d = I × R | U_d = 10 A × 63.84 mΩ = 0.6384 V", "u = U_d ÷ U_s | u = 0.6384 V ÷ 12 V = 5.32 %",
                        "U_load = U_s − U_d | U_load = 12 V − 0.6384 V = 11.36 V", "P_lost = U_d × I | P_lost = 0.6384 V × 10 A = 6.384 W"),
                lines(drop).subList(1, 6));
        assertTrue(lines(drop).get(0).endsWith(" = 8.4 m") && lines(drop).get(0).contains("4.2 m"), lines(drop).get(0));
        assertEquals(List.of("8.4 m", "7.6 mΩ/m", "63.84 mΩ", "0.6384 V", "5.32 %", "11.36 V", "6.384 W"), drop.select("ol.steps p.gives > strong.value").eachText());
        assertEquals(7, drop.select("ol.steps > li > p.words").size());
        assertEquals(
                List.of("Step 1: circuit length, out and back equals 2 times route length, one way",
                        "Step 3: resistance out and back equals resistance of one metre at its temperature times circuit length, out and back",
                        "Step 4: voltage drop, out and back equals design current times resistance out and back",
                        "Step 5: voltage drop as a share of the supply voltage equals voltage drop, out and back divided by supply voltage",
                        "Step 6: voltage at the load equals supply voltage minus voltage drop, out and back",
                        "Step 7: power lost as heat in the conductors equals voltage drop, out and back times design current"),
                drop.select(".line").eachAttr("aria-label"));
        Element looked = drop.select("ol.steps > li").get(1);
        assertEquals("Resistance of one metre in the table rt 7.6 mΩ/m", looked.selectFirst("p.gives").text());
        assertEquals(0, drop.select("ol.steps .source").size());
        Element source = drop.selectFirst("details.sources > ol > li[value=2]");
        assertTrue(source.text().endsWith("2.5 mm² published, second-hand"), source.text());
        assertEquals(1, drop.select("details.sources li").size());
        Element whole = Jsoup.parseBodyFragment(Balance.held(OutcomeMarkup.steps(new Links("../"), working("voltage-drop", BENCH)))).body();
        assertEquals(source.text(), whole.selectFirst("ol.steps > li:eq(1) > p.source").text());
    }

    @Test
    void stepsOfAJunctionStandInOrderInLettersAndInNumbers() {
        assertEquals(
                List.of("P = I × U_on | P = 10 A × 1.2 V = 12 W",
                        "θ_j = θ_a + P × (R_jc + R_cs + R_sa) | θ_j = 40 °C + 12 W × (1.3 K/W + 0.1 K/W + 1 K/W) = 68.8 °C",
                        "θ_c = θ_a + P × (R_cs + R_sa) | θ_c = 40 °C + 12 W × (0.1 K/W + 1 K/W) = 53.2 °C",
                        "θ_s = θ_a + P × R_sa | θ_s = 40 °C + 12 W × 1 K/W = 52 °C",
                        "θ_a,max = θ_j,max − P × (R_jc + R_cs + R_sa) | θ_a,max = 150 °C − 12 W × (1.3 K/W + 0.1 K/W + 1 K/W) = 121.2 °C",
                        // 110 K ÷ 12 W = 9.1667 K/W, less 1.4 K/W
                        "R_sa,max = (θ_j,max − θ_a) ÷ P − R_jc − R_cs | R_sa,max = (150 °C − 40 °C) ÷ 12 W − 1.3 K/W − 0.1 K/W = 7.767 K/W"),
                lines(junction));
        Element fraction = junction.select("math").get(10).selectFirst("mfrac");
        assertEquals(2, fraction.childrenSize());
        assertEquals("block", junction.selectFirst("math").attr("display"));
    }

    @Test
    void resultsAskedForStandFirstThenTheOthers() {
        assertEquals(List.of("drop-percent", "drop"), drop.select("tr.first").eachAttr("data-result"));
        assertEquals(List.of("drop-percent", "drop"), drop.select(".upshot tbody > tr").eachAttr("data-result"));
        assertEquals(
                List.of("voltage-at-load", "power-lost", "circuit-length", "resistance-per-metre", "circuit-resistance"),
                drop.select(".outcome > .other-results tbody > tr").eachAttr("data-result"));
        assertEquals("5 more results", drop.selectFirst(".other-results > summary").text());
        assertEquals(List.of("heat"), junction.select(".upshot tbody > tr").eachAttr("data-result"));
        assertEquals("Drop as a share of the supply voltage 5.32 %", drop.selectFirst("tr.first").text());
        assertEquals(0, junction.select("tr.first").size());
        assertEquals(List.of("Quantity", "This example"), drop.select(".upshot thead th").eachText());
        assertEquals("bench-results bench-title", drop.selectFirst(".results > table").attr("aria-labelledby"));
    }

    /** 3 % of 12 V is 0.36 V, 10 % is 1.2 V; the metal of a heat sink that may be touched 70 °C, the junction 150 °C less 10 K. */
    @Test
    void findingsSayVerdictFigureLimitRemedyAndSource() {
        Elements found = drop.select(".findings > ul > li.finding");
        assertEquals(List.of("caution", "passed"), found.eachAttr("data-verdict"));
        assertEquals(List.of("Caution.", "Check passed."), found.select("details > summary strong.verdict").eachText());
        assertTrue(found.get(0).selectFirst("summary").text().endsWith("the drop, 0.638 V, is above 3 % of 12 V, 0.36 V."), found.text());
        assertTrue(found.get(1).selectFirst("summary").text().endsWith("the drop, 0.638 V, is within 10 % of 12 V, 1.2 V."), found.text());
        assertEquals("caution", drop.selectFirst(".upshot > .worst").attr("data-verdict"));
        assertEquals(found.get(0).selectFirst("summary").text(), drop.selectFirst(".upshot > .worst").text());
        assertTrue(found.get(0).selectFirst("p.remedy").text().startsWith("What to do: if your circuit is one of these, "), found.text());
        assertEquals(0, found.get(1).select("p.remedy").size());
        assertEquals(2, found.select("p.source > a[href=../numbers.html#source-abyc-e-11]").size());
        Elements warm = junction.select(".findings > ul > li.finding");
        assertEquals(List.of("passed", "passed"), warm.eachAttr("data-verdict"));
        assertTrue(warm.get(0).text().contains("68.8 °C") && warm.get(0).text().contains("140 °C"), warm.text());
        assertTrue(warm.get(1).text().contains("52 °C") && warm.get(1).text().contains("70 °C"), warm.text());
        assertEquals("2 checks passed.", junction.selectFirst(".upshot > .worst[data-verdict=passed]").text());
        Element plain = Jsoup.parseBodyFragment(Balance.held(FindingsMarkup.list(Links.NONE, working("voltage-drop", BENCH)))).body();
        assertEquals(2, plain.select("div.findings > ul > li").size());
        assertEquals(0, plain.select("h4, a").size());
        assertEquals("", FindingsMarkup.list(Links.NONE, working("ohm-and-power", Map.of("voltage", "12 V", "current", "5 A"))));
    }

    /** A mistake that can happen to several results is told once, with what it gives for each. */
    @Test
    void aSlipOfSeveralResultsIsToldOnce() {
        Element usb = Jsoup.parseBodyFragment(SlipsMarkup.of(working("device-current", Map.of("device-voltage", "5 V", "device-current", "3 A", "efficiency", "85 %")))).body();
        List<String> told = usb.select("li.slip").eachText().stream().map(each -> each.substring(each.indexOf(": "))).toList();
        assertEquals(told.stream().distinct().toList(), told);
        // 15 W × 0.85 = 12.75 W; ÷ 12 V, ÷ 10.5 V and ÷ 14.6 V
        Element multiplied = usb.select("li.slip:contains(Multiplied by the efficiency)").first();
        assertTrue(multiplied.select(".value").eachText().containsAll(List.of("12.75 W", "1.0625 A", "1.214 A", "0.8733 A")), multiplied.text());
    }

    /** Of a long list whose first is taken, the one taken is seen, and the others are folded. */
    @Test
    void whatWasTakenIsNeverFoldedAway() {
        Element place = Jsoup.parseBodyFragment(StepsMarkup.withoutSources(Links.NONE, working("fuse-place", Map.of("distance", "0.15 m", "rule-set", "33-cfr-source")))).body();
        assertEquals(0, place.select("details.tried strong.value").size());
        assertEquals(1, place.select(".candidates strong.value").size());
        assertTrue(place.selectFirst("details.tried > summary").text().endsWith(" others"), place.text());
    }

    /** Half and twice 0.6384 V; 0.3048 of it; 12 V less 5.32 % read as volts; 0.6384 ÷ 11.3616 and ÷ 13.8; 12 V + 0.6384 V; 12 V × 10 A. */
    @Test
    void slipsNameWhatTheyGiveHere() {
        assertEquals(
                List.of("0.3192 V", "1.2768 V", "0.1946 V", "6.68 V", "5.619 %", "4.626 %", "12.64 V", "120 W"),
                drop.select("details.slips > ul > li.slip > span.value").eachText());
        assertTrue(drop.select("li.slip").get(0).text().startsWith("0.3192 V for voltage drop: The return conductor left out. "), drop.select("li.slip").text());
        assertEquals("Mistakes that give another number", drop.selectFirst("details.slips > summary").text());
        // 40 °C + 12 W × 1.4 K/W; 12 W × 2.4 K/W; 150 °C − 12 W × 1.3 K/W; 110 K ÷ 12 W
        assertEquals(List.of("56.8 °C", "28.8 °C", "134.4 °C", "9.167 K/W"), junction.select("li.slip > span.value").eachText());
        assertEquals(3, drop.select("details.assumptions > ul > li").size());
    }

    @Test
    void theNextQuestionCarriesTheFigures() {
        Element next = drop.selectFirst(".questions > ul > li > a");
        assertEquals("Now choose the fuse-link", next.text());
        String address = next.attr("href");
        assertTrue(address.startsWith("../calculators/fuse-choice.html#"), address);
        Map<String, String> carried = Fragment.read(address.substring(address.indexOf('#')));
        assertEquals(Map.of("design-current", "10\u00a0A", "size", "2.5\u00a0mm²"), carried);
        assertEquals("x/calculators/a.html", new Links("x/").calculator("a", Map.of()));
    }

    @Test
    void aChoiceMarksTheOneTaken() {
        Working fuse = working("fuse-choice", Map.of("design-current", "10 A", "size", "2.5 mm²"));
        Element steps = Jsoup.parseBodyFragment(Balance.held(OutcomeMarkup.steps(Links.NONE, fuse))).body();
        Element candidates = steps.selectFirst("ul.candidates");
        assertEquals(1, candidates.select("li > strong.value").size());
        assertTrue(candidates.select("li").size() > 1);
        String taken = candidates.nextElementSibling().text();
        assertEquals("Taken: " + candidates.selectFirst("strong.value").text(), taken);
        assertEquals(0, steps.select("a").size(), "paper leads nowhere");
    }

    @Test
    void aProjectorShowsTheSameInPieces() {
        Working working = working("voltage-drop", BENCH);
        List<String> pieces = ProjectedMarkup.steps(new Links("../"), working);
        List<String> whole = Jsoup.parseBodyFragment(Balance.held(OutcomeMarkup.steps(new Links("../"), working))).select("ol.steps > li").eachText();
        assertEquals(whole, pieces.stream().map(piece -> Jsoup.parseBodyFragment(Balance.held(piece)).text()).toList());
        assertEquals(drop.select("li.finding").eachText(), ProjectedMarkup.checks(new Links("../"), working).stream().map(item -> Jsoup.parseBodyFragment(Balance.held(item)).text()).toList());
        assertEquals(drop.select("details.assumptions li").eachText(), ProjectedMarkup.assumptions(working).stream().map(item -> Jsoup.parseBodyFragment(Balance.held(item)).text()).toList());
        assertEquals(7, Jsoup.parseBodyFragment(Balance.held(ProjectedMarkup.results(new Place("b", Links.NONE, List.of()), working))).select("tbody tr").size());
    }

    /** Both figures of a change: 5 A loses half as much, 0.3192 V, 2.66 %. */
    @Test
    void ownFiguresStandBesideThePrintedOnes() {
        Map<String, String> half = new java.util.HashMap<>(BENCH);
        half.put("current", "5 A");
        Place place = new Place("bench", Links.NONE, List.of("drop"));
        Element own = Jsoup.parseBodyFragment(Balance.held(UpshotMarkup.own(place, working("voltage-drop", half), working("voltage-drop", BENCH))
                + OutcomeMarkup.own(place, working("voltage-drop", half), working("voltage-drop", BENCH)))).body();
        assertEquals("Voltage drop 0.3192 V 0.6384 V", own.selectFirst("tr.first").text());
        assertEquals("2.66 %", own.selectFirst("tr[data-result=drop-percent] > td.own").text());
        assertEquals("5.32 %", own.selectFirst("tr[data-result=drop-percent] > td.printed").text());
        assertEquals("Voltage drop 0.3192\u00a0V", StatusText.of(place, working("voltage-drop", half)).substring(0, 21));
        assertEquals("Voltage drop 0.6384\u00a0V, 1 caution", StatusText.of(place, working("voltage-drop", BENCH)));
        Element none = Jsoup.parseBodyFragment(Balance.held(UpshotMarkup.own(place, working("voltage-drop", half), working("ohm-and-power", Map.of("voltage", "12 V", "current", "5 A"))))).body();
        assertEquals("none", none.selectFirst("tr.first > td.printed").text());
    }

    @Test
    void aGraphStandsWithItsFiguresAndItsTitle() {
        Calculator calculator = Catalogue.find("voltage-drop");
        Element figure = Jsoup.parseBodyFragment(Balance.held(PictureMarkup.graph("bench", Graphs.draw(calculator, BENCH, working("voltage-drop", BENCH))))).body().selectFirst("figure.graph#bench-graph");
        assertEquals("Voltage drop against length", figure.selectFirst("figcaption").text());
        assertEquals("bench-graph-t", figure.selectFirst("> svg[role=img]").attr("aria-labelledby"));
        assertEquals("bench-graph-d", figure.selectFirst("> svg[role=img]").attr("aria-describedby"));
        Elements rows = figure.select("details.figures tbody > tr");
        // the ticks 0, 2, 4, 6, 8 and the length itself
        assertEquals(List.of("0", "2", "4", "4.2", "6", "8"), rows.select("th[scope=row]").eachText());
        assertTrue(rows.get(3).text().endsWith(" 0.638"), rows.text());
        assertEquals(figure.select("thead th[scope=col]").size(), rows.get(3).childrenSize());
        assertEquals("Figures of: Voltage drop against length", figure.selectFirst("table").attr("aria-label"));
        assertEquals("", PictureMarkup.graph("bench", null));
        assertEquals("", PictureMarkup.projected("bench", null));
        assertEquals(0, Jsoup.parseBodyFragment(Balance.held(PictureMarkup.projected("bench", Graphs.draw(calculator, BENCH, working("voltage-drop", BENCH))))).select("table, figcaption").size());
    }

    private static List<String> lines(Element page) {
        return page.select(".line").stream().map(line -> String.join(" | ", line.select("math").eachAttr("alttext")).replace('\u00a0', ' ')).toList();
    }

    private static Element page(String calculator, Map<String, String> entries, List<String> show) {
        Place place = new Place("bench", new Links("../"), show);
        return Jsoup.parseBodyFragment(Balance.held("<div class=\"upshot\">" + UpshotMarkup.printed(place, working(calculator, entries)) + "</div><div class=\"outcome\">"
                + OutcomeMarkup.printed(place, working(calculator, entries)) + "</div>")).body();
    }

    private static Working working(String calculator, Map<String, String> entries) {
        Outcome outcome = Outcome.of(Catalogue.find(calculator), entries);
        if (outcome.working() == null) {
            throw new AssertionError(outcome.faults().toString());
        }
        return outcome.working();
    }
}
