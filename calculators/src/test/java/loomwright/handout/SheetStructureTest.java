package loomwright.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.markup.Links;
import loomwright.markup.Place;
import loomwright.worked.AnswerCheck;
import loomwright.worked.Outcome;
import loomwright.worked.Slip;
import loomwright.worked.Working;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** Question sheet, key and register as they are printed. */
class SheetStructureTest {
    private static final Selection ALL = Selection.ofLessons(SomeQuestions.LESSONS, List.of(1, 2), Selection.ALL);
    private static final Handout HANDOUT = new Handout(ALL, 7);

    @Test
    void aSheetAsksEveryQuestionAndLeavesRoomForTheWorking() {
        Sheet sheet = HANDOUT.sheet(2);
        Element page = read(SheetMarkup.of(sheet, "A club")).selectFirst("section.handout[aria-label=Question sheet 2]");
        assertEquals("A club", page.selectFirst("p.house").text());
        assertEquals(sheet.code(), page.selectFirst("dd.code").text());
        assertEquals(List.of("Name", "Date", "Code of this sheet"), page.select("dl.head dt").eachText());
        List<Element> asked = page.select("div.asked");
        assertEquals(sheet.tasks().size(), asked.size());
        for (int i = 0; i < asked.size(); i++) {
            Task task = sheet.tasks().get(i);
            assertEquals(plain((i + 1) + " " + task.title() + " sheet 2"), asked.get(i).selectFirst("h3").text());
            assertEquals(plain(task.words()), asked.get(i).selectFirst("p.words").text());
            int steps = task.working().steps().size();
            assertEquals(steps < 2 ? 3 : steps > 6 ? 7 : steps + 1, asked.get(i).select(".ruled > p").size());
            assertEquals(plain(task.question().asked().label() + " " + task.question().asked().unit().symbol()), asked.get(i).selectFirst("p.answer-line").text());
            for (Map.Entry<String, String> entry : task.entries().entrySet()) {
                assertEquals(entry.getValue(), asked.get(i).selectFirst(".given [data-input=" + entry.getKey() + "]").attr("data-given"));
            }
            assertTrue(!asked.get(i).text().contains(" = "), "a sheet gives no working away");
        }
    }

    @Test
    void theKeyAtAGlanceHasARowASheetAndAColumnAQuestion() {
        List<Sheet> sheets = HANDOUT.sheets(3);
        Element key = read(KeyMarkup.glance(sheets, "A club"));
        assertEquals(1, key.select("table").size());
        assertEquals("Answers to questions 1 to 4", key.selectFirst(".scroll").attr("aria-label"));
        assertEquals(List.of("1", "2", "3"), key.select("tbody th").eachText());
        for (int person = 0; person < 3; person++) {
            List<String> answers = sheets.get(person).tasks().stream().map(task -> plain(task.answer().text())).toList();
            assertEquals(answers, key.select("tbody > tr").get(person).select("td").eachText());
        }
        assertEquals("1 Voltage drop", key.select("thead th").get(1).text());
        assertEquals(5, key.select("thead th").size());
        assertEquals(0, read(KeyMarkup.glance(List.of(), "")).select("table").size());
    }

    /** Six questions: five in the first table, one in the second. */
    @Test
    void aLongKeyGoesOnInAnotherTable() {
        Sheet first = HANDOUT.sheet(1);
        List<Task> tasks = new ArrayList<>(first.tasks());
        tasks.addAll(first.tasks().subList(0, 2));
        Element key = read(KeyMarkup.glance(List.of(new Sheet(1, "code", tasks)), "A club"));
        assertEquals(List.of("Answers to questions 1 to 5", "Answers to questions 6 to 6"), key.select(".scroll").eachAttr("aria-label"));
        assertEquals(List.of(6, 2), key.select("thead tr").stream().map(Element::childrenSize).toList());
        assertTrue(key.select("thead th").last().text().startsWith("6 "), key.select("thead").text());
    }

    @Test
    void theKeyAgreesWithTheCalculatorAndSaysWhereWrongAnswersComeFrom() {
        Sheet sheet = HANDOUT.sheet(3);
        Element key = read(KeyMarkup.of(sheet, "A club", Links.NONE)).selectFirst("section.key[aria-label=Answers to sheet 3]");
        assertEquals(sheet.code(), key.selectFirst(".code").text());
        List<Element> asked = key.select("div.asked");
        assertEquals(sheet.tasks().size(), asked.size());
        int slips = 0;
        for (int i = 0; i < asked.size(); i++) {
            Task task = sheet.tasks().get(i);
            Working again = Outcome.of(task.question().calculator(), task.entries()).working();
            assertEquals(plain(again.result(task.question().asked().key()).quantity().text()), asked.get(i).selectFirst("> p.words > strong.value").text());
            assertEquals(again.steps().size(), asked.get(i).select("ol.steps > li").size());
            List<String> wrong = new ArrayList<>();
            for (Slip slip : again.slips()) {
                if (slip.output().equals(task.question().asked()) && !AnswerCheck.agrees(slip.value(), task.answer())) {
                    wrong.add(plain(slip.value().text() + ": " + slip.name()));
                }
            }
            assertEquals(wrong, asked.get(i).select("> ul > li").eachText());
            assertEquals(wrong.isEmpty() ? 1 : 2, asked.get(i).select("> p.words").size());
            slips += wrong.size();
        }
        assertTrue(slips > 0);
    }

    @Test
    void theRegisterHasARowForEachAndTheQuestionsOfTheDay() {
        List<Sheet> sheets = HANDOUT.sheets(3);
        Element register = read(RegisterMarkup.of(HANDOUT, sheets, 7, "A club"));
        assertEquals("7", register.selectFirst("dd.code").text());
        assertEquals(List.of("Sheet", "Name", "Code", "Right, of 4"), register.select("thead th").eachText());
        assertEquals(sheets.stream().map(Sheet::code).toList(), register.select("tbody td.code").eachText());
        assertEquals(List.of("1", "2", "3"), register.select("tbody th").eachText());
        assertEquals(
                List.of("The cable to the bench: Voltage drop", "The fuse-link of the bench: " + SomeQuestions.FUSE.asked().label(),
                        "A relay for a day: " + SomeQuestions.COIL.asked().label(), "A port: Power"),
                register.select("ol > li").eachText());
        assertEquals(0, register.select("ul").size());
    }

    @Test
    void inThePageAQuestionHasABoxAndItsWorkingFolded() {
        Sheet sheet = HANDOUT.sheet(1);
        assertEquals("Sheet 1 " + sheet.code(), read(TaskMarkup.head(sheet)).text());
        Task task = sheet.tasks().get(0);
        Element marked = read(TaskMarkup.marked(new Place("q1", Links.NONE, List.of()), task, 1)).selectFirst("section.marked#q1");
        assertEquals("q1-title", marked.attr("aria-labelledby"));
        assertEquals(plain("1 " + task.title()), marked.selectFirst("h3#q1-title").text());
        assertEquals(plain(task.words()), marked.selectFirst("> p").text());
        assertEquals(1, marked.select("form.check input#q1-answer").size());
        assertEquals(task.working().steps().size(), marked.select("details ol.steps > li").size());
    }

    /** An answer lies within four times the printed one, either way: 0.51 V for the drop. */
    @Test
    void answersKeepTheOrderOfThePrintedOne() {
        for (Sheet sheet : HANDOUT.sheets(40)) {
            for (Task task : sheet.tasks()) {
                Working printed = Outcome.of(task.question().calculator(), task.question().given()).working();
                double times = task.answer().base() / printed.result(task.question().asked().key()).quantity().base();
                assertTrue(times >= 0.25 && times <= 4, task.question().key() + ": " + times);
            }
        }
    }

    private static Element read(String html) {
        return Jsoup.parseBodyFragment(html).body();
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u2009', ' ');
    }
}
