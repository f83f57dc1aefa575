package loomwright.circuit.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.check.FindingGroup;
import loomwright.circuit.check.FigureToGet;
import loomwright.circuit.sheet.Designations;
import loomwright.markup.Links;
import loomwright.worked.Verdict;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;

/** What was found, in its groups. */
class FindingsStructureTest {
    /** The trailer with a load far too large for its fuse-link, so that there is something to change. */
    private static final Circuit BAD = CircuitEdits.changed(Written.TRAILER, "strip", "power", "300 W").circuit();
    private static final Examination EXAMINATION = Examination.of(BAD);
    private final Element live = Written.read(FoundMarkup.live(new Links("../"), EXAMINATION, true));
    private final Element printed = Written.read(FoundMarkup.printed(new Links("../"), EXAMINATION));

    @Test
    void groupsStandWorstFirstUnderTheirHeads() {
        assertEquals(List.of("Change this", "Decide this", "Figures to get"), live.select(".findings > h3").eachText());
        assertEquals(List.of("circuit-change", "circuit-decide", "circuit-figures"), live.select(".findings > h3").eachAttr("id"));
        assertEquals("DETAILS", live.selectFirst(".findings").lastElementChild().tagName().toUpperCase(java.util.Locale.ROOT));
        long passed = found(Verdict.PASSED).size();
        assertEquals(passed + " checks passed", live.selectFirst("details#circuit-passed > summary").text());
        String count = found(Verdict.STOP).size() + " thing" + (found(Verdict.STOP).size() == 1 ? "" : "s") + " to change, ";
        assertTrue(live.selectFirst("> p").text().startsWith(count), live.selectFirst("> p").text());
        assertTrue(live.selectFirst("> p").text().endsWith("It does not say that the circuit is free of danger."));
    }

    @Test
    void eachFindingStandsInItsGroupWithWordsRemedyAndSource() {
        for (Element within : List.of(live, printed)) {
            holds(within.select("#circuit-change + ul > li"), Verdict.STOP, "Stop.");
            holds(within.select("#circuit-decide + ul > li"), Verdict.CAUTION, "Caution.");
        }
    }

    private static void holds(List<Element> items, Verdict verdict, String words) {
        List<CircuitFinding> found = found(verdict);
        assertTrue(found.size() > 0 && found.size() == items.size(), verdict + ": " + found.size() + " and " + items.size());
        for (int i = 0; i < items.size(); i++) {
            CircuitFinding each = found.get(i);
            Element item = items.get(i);
            assertEquals(verdict.key(), item.attr("data-verdict"));
            assertEquals(words, item.selectFirst("> p > strong.verdict").text());
            assertEquals(plain(each.check().label()), item.select("> p > strong").get(1).text().replaceAll("\\.$", ""));
            String text = item.selectFirst("> p").text();
            assertTrue(text.contains(plain(each.finding().words())), text);
            String name = BAD.part(each.partId()).title();
            assertTrue(text.contains(plain(name)), text + " does not name " + name);
            boolean named = each.finding().words().contains(name);
            assertTrue(named != text.contains(plain(Designations.of(BAD).titled(each.partId())) + ": "), text);
            assertEquals(each.finding().remedy().isEmpty() ? 0 : 1, item.select("> p.remedy").size());
            assertTrue(item.select("> p.remedy").stream().allMatch(remedy -> remedy.text().startsWith("What to change: ") && remedy.text().length() > 20));
            assertTrue(item.selectFirst("> p.source").text().startsWith("Source: " + plain(each.finding().source().document().title())), item.text());
            assertTrue(item.selectFirst("> p.source a").attr("href").startsWith("../numbers.html#source-"));
        }
    }

    /** They are there to be looked up: by check, and each source once below all that rest on it. */
    @Test
    void whatPassedStandsByCheckWithItsSource() {
        for (Element within : List.of(live, printed)) {
            Elements items = within.select("#circuit-passed > .passed > ul > li.finding[data-verdict=passed]");
            assertEquals(found(Verdict.PASSED).size(), items.size());
            for (CircuitFinding each : found(Verdict.PASSED)) {
                List<Element> said = items.stream().filter(item -> item.text().contains(plain(each.finding().words()))).toList();
                assertTrue(said.size() > 0, each.finding().words());
                Element list = said.get(0).parent();
                assertTrue(said.stream().anyMatch(item -> item.parent().nextElementSibling().text().contains(plain(each.finding().source().document().title()))), said.toString());
                while (!list.tagName().equals("h4")) {
                    list = list.previousElementSibling();
                }
                assertTrue(list.text().startsWith(plain(each.check().label()) + ": "), list.text());
            }
        }
        Element closed = Written.read(FoundMarkup.live(Links.NONE, EXAMINATION, false));
        assertEquals(0, closed.select("#circuit-passed li").size(), "written once it is unfolded");
        assertEquals(live.selectFirst("#circuit-passed > summary").text(), closed.selectFirst("#circuit-passed > summary").text());
    }

    /** What stands at the head of a part's form. */
    @Test
    void aPartNamesWhatWasFoundForItAndCountsWhatPassed() {
        for (var part : BAD.parts()) {
            Element own = Written.read(PartFound.of(new Links("../"), EXAMINATION, part.id()));
            List<CircuitFinding> here = EXAMINATION.findings().stream().filter(each -> each.concerns(part.id())).toList();
            for (Verdict verdict : List.of(Verdict.STOP, Verdict.CAUTION)) {
                long wanted = here.stream().filter(each -> each.finding().verdict() == verdict).count();
                assertEquals(wanted, own.select("li[data-verdict=" + verdict.key() + "]").size(), part.id());
            }
            for (Element enter : own.select("li[data-verdict=not-known] button")) {
                String holder = enter.attr("data-go");
                assertTrue(enter.hasAttr("data-field") && BAD.part(holder).kind().indexOf(enter.attr("data-field")) >= 0, enter.toString());
            }
            long passed = here.stream().filter(each -> each.finding().verdict() == Verdict.PASSED).count();
            assertTrue(own.text().contains(passed == 0 ? "o checks passed here." : passed + " check"), own.text());
        }
        Element guilty = Written.read(PartFound.of(new Links("../"), EXAMINATION, "way-1"));
        assertTrue(guilty.select("li[data-verdict=stop] button[data-smallest=way-1]").size() > 0, guilty.toString());
    }

    @Test
    void inThePageAFindingLeadsToItsPart() {
        List<CircuitFinding> open = Stream.concat(found(Verdict.STOP).stream(), found(Verdict.CAUTION).stream()).toList();
        List<Element> items = live.select("#circuit-change + ul > li, #circuit-decide + ul > li");
        for (int i = 0; i < open.size(); i++) {
            Element go = items.get(i).selectFirst("> p.moves > button[data-go]");
            assertEquals(open.get(i).partId(), go.attr("data-go"));
            assertEquals("Change " + plain(Designations.of(BAD).titled(open.get(i).partId())), go.text());
        }
        assertEquals(0, printed.select("button").size());
        assertEquals(0, live.select("#circuit-passed button").size());
        assertTrue(live.select("button[data-smallest]").eachAttr("data-smallest").contains("way-1"), live.select("button").toString());
        assertTrue(live.select("button[data-smallest]").eachAttr("data-smallest").stream().allMatch(id -> Map.of("protection", 1, "conductor", 1).containsKey(BAD.part(id).kind().key())));
        assertEquals("Smallest size that passes for F3 Fuse-link, way 1", live.selectFirst("button[data-smallest=way-1]").text());
    }

    @Test
    void aFigureToGetNamesTheFigureThePlaceAndThePartsThatLackIt() {
        List<FigureToGet> figures = FigureToGet.of(EXAMINATION);
        List<Element> items = live.select("ul.figures-to-get > li");
        assertEquals(figures.size(), items.size());
        Designations designations = Designations.of(BAD);
        for (int i = 0; i < items.size(); i++) {
            Element item = items.get(i);
            assertEquals("not-known", item.attr("data-verdict"));
            String name = item.selectFirst("strong").text();
            assertTrue(plain(figures.get(i).name()).substring(1).equals(name.substring(1)) && Character.isUpperCase(name.charAt(0)), name);
            List<String> lacking = figures.get(i).partIds().stream().map(designations::of).toList();
            assertTrue(item.text().replace(" ,", ",").replace(" .", ".").endsWith("For " + String.join(", ", lacking) + "."), item.text());
            assertTrue(item.text().contains("Look at " + plain(figures.get(i).where())), item.text());
            boolean leads = !figures.get(i).fieldKey().isEmpty();
            assertEquals(leads ? lacking : List.of(), item.select("button").eachText());
            for (Element button : item.select("button[data-field]")) {
                assertTrue(BAD.part(button.attr("data-go")).kind().indexOf(figures.get(i).fieldKey()) >= 0, button.toString());
            }
        }
    }

    @Test
    void groupsWithNothingInThemAreAbsent() {
        Examination none = EXAMINATION.with(List.of());
        Element empty = Written.read(FoundMarkup.live(Links.NONE, none, true));
        assertEquals(0, empty.select("h3, li").size());
        assertTrue(empty.selectFirst("> p").text().startsWith("No things to change, no things to decide, no figures to get; no checks passed."), empty.text());
        Examination one = EXAMINATION.with(found(Verdict.PASSED).subList(0, 1));
        assertTrue(FindingGroup.counted(one).endsWith("; 1 check passed"), FindingGroup.counted(one));
    }

    private static List<CircuitFinding> found(Verdict verdict) {
        return EXAMINATION.findings().stream().filter(each -> each.finding().verdict() == verdict).toList();
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u2009', ' ').replace('\u202f', ' ');
    }
}
