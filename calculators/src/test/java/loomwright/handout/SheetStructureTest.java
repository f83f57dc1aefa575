package loomwright.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.markup.Balance;
import loomwright.markup.Html;
import loomwright.practice.AnswerCheck;
import loomwright.worked.Agreement;
import loomwright.worked.Outcome;
import loomwright.worked.Output;
import loomwright.worked.Slip;
import loomwright.worked.Working;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** What is printed: sheets, tables, answers, workings, register. */
class SheetStructureTest {
    private static final Selection ALL = Selection.ofQuestions(SomeQuestions.LESSONS, List.of(0, 1, 2, 3, 4));
    private static final Handout HANDOUT = new Handout(ALL, 7);

    @Test
    void aSheetAsksEveryQuestionWithABoxForEachAnswerAndRoomForTheWorking() {
        Sheet sheet = HANDOUT.sheet(2);
        Element pages = read(String.join("", SheetMarkup.pages(sheet, "A club", Paper.A4)));
        Element first = pages.selectFirst("section.handout[aria-label=Question sheet 2, page 1 of 2]");
        assertEquals("A club", first.selectFirst("p.house").text());
        assertEquals(sheet.code(), first.selectFirst("dd.code").text());
        assertEquals(List.of("Name", "Date", "Code of this sheet"), first.select("dl.head dt").eachText());
        assertTrue(pages.select("section").get(1).selectFirst("p.house").text().contains(sheet.code()), "a page that gets lost says whose it is");
        List<Element> asked = pages.select("div.asked");
        assertEquals(sheet.tasks().size(), asked.size());
        for (int i = 0; i < asked.size(); i++) {
            Task task = sheet.tasks().get(i);
            String alike = task.question().varies() ? "" : " the same for everyone";
            assertEquals(plain((i + 1) + " " + task.title() + alike), asked.get(i).selectFirst("h3").text());
            assertEquals(plain(task.words()), asked.get(i).selectFirst("p.words").text());
            assertTrue(asked.get(i).select(".ruled > p").size() >= 4);
            assertEquals(
                    task.question().asked().stream().map(box -> plain(box.label() + " " + box.unit().symbol())).toList(), asked.get(i).select("p.answer-line").eachText());
            for (Map.Entry<String, String> entry : task.entries().entrySet()) {
                if (task.needless().has(entry.getKey())) {
                    continue;
                }
                assertEquals(entry.getValue(), asked.get(i).selectFirst(".given [data-input=" + entry.getKey() + "]").attr("data-given"));
            }
            assertFalse(asked.get(i).text().contains(" = "), "a sheet gives no working away");
        }
    }

    @Test
    void theAnswersHaveARowASheetAndAColumnABox() {
        List<Sheet> sheets = HANDOUT.sheets(3);
        Element key = read(String.join("", AnswersMarkup.pages(sheets, "A club", Paper.A4)));
        assertEquals(1, key.select("table").size());
        assertEquals(List.of("1", "2", "3"), key.select("tbody th").eachText());
        for (int person = 0; person < 3; person++) {
            List<String> answers = new ArrayList<>();
            for (Task task : sheets.get(person).tasks()) {
                if (task.question().varies()) {
                    task.question().asked().forEach(box -> answers.add(plain(task.answer(box).text(3))));
                }
            }
            assertEquals(answers, key.select("tbody > tr").get(person).select("td").eachText());
        }
        assertEquals(List.of("Sheet", "1 Voltage drop", "1 Drop as a share of the supply voltage"), key.select("thead th").eachText().subList(0, 3));
        assertTrue(key.text().contains("The current also has to come back."), "the answer in words stands there once");
        assertTrue(key.selectFirst("p.stop").text().startsWith("Stop: "), "and so does the check that stops");
        assertTrue(key.text().contains("No fuse-link puts this right."));
    }

    /** Two questions leave most of two pages empty, so each has all its lines; many are given fewer, and what room is left on a page is shared out. */
    @Test
    void theRoomOfAPageIsUsedToWriteOn() {
        List<Question> many = new ArrayList<>();
        for (int i = 0; i < 14; i++) {
            many.add(Question.inWords("why-" + i, "In your own words", "Why does the route count twice?", "The current also has to come back."));
        }
        List<LessonQuestions> lessons = List.of(new LessonQuestions("01-a", "1 A", true, many));
        Handout handout = new Handout(Selection.ofQuestions(lessons, java.util.stream.IntStream.range(0, 14).boxed().toList()), 1);
        List<String> pages = SheetMarkup.pages(handout.sheet(1), "A club", Paper.A4);
        for (String page : pages) {
            int lines = read(page).select(".ruled > p").size();
            int questions = read(page).select("div.asked").size();
            // a question here takes 15.6 mm and 7 mm a line; 254 mm less the head of 50 mm on the first page and of 7 mm on the others
            double left = 254 - (page.equals(pages.get(0)) ? 50 : 7) - questions * 15.6 - lines * 7;
            assertTrue(left >= 0, "nothing runs over the end: " + left);
            assertTrue(left < questions * 7 || lines == 6 * questions, questions + " questions with " + lines + " lines leave " + left + " mm");
        }
    }

    /** 12.3456 is more than anybody can check with a pencil; a sold size is said as it is sold. */
    @Test
    void anAnswerHasThreeDigits() {
        for (Sheet sheet : HANDOUT.sheets(20)) {
            for (Task task : sheet.tasks()) {
                for (Output box : task.question().asked()) {
                    String digits = task.answerText(box).replaceAll("[^0-9.]", "").replaceFirst("^0\\.0*", "").replace(".", "");
                    assertTrue(digits.length() <= 3, task.answerText(box));
                    assertTrue(AnswerCheck.of(task.working(), box.key(), task.answerText(box)).kind() == AnswerCheck.Kind.AGREES, task.answerText(box));
                }
            }
        }
    }

    @Test
    void theWorkingsHaveALineAStepAndSayWhereWrongAnswersComeFrom() {
        List<Sheet> sheets = HANDOUT.sheets(3);
        Element key = read(String.join("", KeyMarkup.pages(sheets, "A club", Paper.A4)));
        assertEquals(sheets.stream().map(Sheet::code).toList(), key.select("h3.person .code").eachText());
        List<Element> asked = key.select("div.asked");
        int at = 0;
        int slips = 0;
        for (Sheet sheet : sheets) {
            for (Task task : sheet.tasks()) {
                if (task.question().varies()) {
                    Working again = Outcome.of(task.question().calculator(), task.entries()).working();
                    assertEquals(again.steps().size(), asked.get(at).select("ol.lines > li").size());
                    assertEquals(task.question().asked().size(), asked.get(at).select("p.gives").size());
                    assertEquals("Volts and amperes.", asked.get(at).selectFirst("p.said").text());
                    for (Slip slip : again.slips()) {
                        if (task.question().asked().contains(slip.output()) && !Agreement.agrees(slip.value(), task.answer(slip.output()))) {
                            assertTrue(asked.get(at).selectFirst("p.slips").text().contains(plain(slip.value().text(3) + ", " + slip.name())));
                            slips++;
                        }
                    }
                    at++;
                }
            }
        }
        assertEquals(asked.size(), at, "what everyone gets alike stands behind the answers");
        assertTrue(slips > 0);
    }

    /** Print rules: a title takes 7 mm, a name 10 mm, a line of 104 letters 4 mm, a paragraph 0.5 mm more. */
    private static double height(Element block) {
        double height = block.is("h3") ? 10 : 7 + 4 * block.select("p.gives").size();
        for (Element step : block.select("ol.lines > li")) {
            height += 4 * TextWidth.lines("1. " + step.wholeText(), 104);
        }
        for (Element words : block.select("p.words, p.stop, p.said, p.slips")) {
            height += 4 * TextWidth.lines(words.wholeText(), 104) + 0.5;
        }
        return height;
    }

    @Test
    void aWorkingIsAsHighAsWhatStandsInIt() {
        for (Task task : HANDOUT.sheet(1).tasks()) {
            Html html = new Html();
            double height = KeyMarkup.working(html, task, 1, "h4");
            Element block = read(html.toString()).selectFirst("div.asked");
            assertEquals(height(block), height, 1e-9, task.title());
            assertEquals(task.question().varies() ? 0 : 1, block.select("p.words").size(), "the words of what everyone is asked alike");
            assertEquals(task.stops().size(), block.select("p.stop").size());
        }
        Question bare = new Question("bare", "Bare", "A coil of {coil-resistance}.", true, SomeQuestions.COIL.calculator(), SomeQuestions.COIL.given(), List.of(), SomeQuestions.COIL.asked(), "");
        Handout handout = new Handout(Selection.ofQuestions(List.of(new LessonQuestions("01-a", "1 A", true, List.of(bare))), List.of(0)), 1);
        String page = KeyMarkup.pages(handout.sheets(1), "A club", Paper.A4).get(0);
        assertEquals(0, read(page).select("p.said").size(), "a lesson that says nothing leaves no empty line");
    }

    /** A4 has 254 mm: 22 mm less on the first page, 8 mm on the others. */
    @Test
    void workingsFillTheirPagesAndANameNeverStandsAlone() {
        List<String> pages = KeyMarkup.pages(HANDOUT.sheets(20), "A club", Paper.A4);
        assertTrue(pages.size() > 3);
        for (int i = 0; i < pages.size(); i++) {
            Element page = read(pages.get(i)).selectFirst("section.workings");
            assertEquals("Workings, page " + (i + 1) + " of " + pages.size(), page.attr("aria-label"));
            assertEquals(i == 0 ? "A club" : "A club, workings, page " + (i + 1) + " of " + pages.size(), page.selectFirst("p.house").text());
            assertEquals(i == 0 ? 1 : 0, page.select("h2, p.facts").size() / 2);
            double room = 254 - (i == 0 ? 22 : 8);
            List<Element> blocks = page.select("h3.person, div.asked");
            double used = blocks.stream().mapToDouble(SheetStructureTest::height).sum();
            assertTrue(used <= room, "page " + (i + 1) + " holds " + used + " of " + room);
            assertTrue(blocks.get(blocks.size() - 1).is("div"), "a name at the end of page " + (i + 1));
            if (i + 1 < pages.size()) {
                List<Element> next = read(pages.get(i + 1)).select("h3.person, div.asked");
                double first = height(next.get(0)) + (next.get(0).is("h3") ? height(next.get(1)) : 0);
                assertTrue(used + first > room, "page " + (i + 1) + " has room for what begins the next");
            }
        }
    }

    @Test
    void aWorkingHasTheNumberOfItsQuestionOnTheSheet() {
        List<String> headings = new ArrayList<>();
        for (Task task : HANDOUT.sheet(1).tasks()) {
            if (task.question().varies()) {
                headings.add(plain(HANDOUT.sheet(1).tasks().indexOf(task) + 1 + " " + task.title()));
            }
        }
        assertEquals(headings, read(String.join("", KeyMarkup.pages(List.of(HANDOUT.sheet(1)), "A club", Paper.A4))).select("h4").eachText());
    }

    /** A mistake that gives the right answer, or another figure than the one asked for, explains no wrong answer. */
    @Test
    void onlyMistakesThatGiveAnotherAnswerStandInTheKey() {
        Task task = HANDOUT.sheet(1).tasks().get(0);
        Question onlyShare = new Question("share", "Share", "", true, task.question().calculator(), task.entries(), List.of(), List.of(task.question().asked().get(1)), "");
        Html html = new Html();
        KeyMarkup.working(html, new Task(onlyShare, task.entries(), task.working(), task.needless()), 1, "h4");
        List<String> ofOthers = task.working().slips().stream().filter(slip -> !slip.output().equals(onlyShare.asked().get(0))).map(slip -> plain(slip.value().text(3) + ", " + slip.name())).toList();
        assertTrue(!ofOthers.isEmpty());
        for (String other : ofOthers) {
            assertFalse(read(html.toString()).text().contains(other), other);
        }
    }

    /**
     * A4: 254 mm less a head of 42 mm and 12 mm of the table leave 200 mm, 20 rows of 9.8 mm. The list of five questions takes 14 mm and 5 mm a line, 39 mm: behind 16 rows
     * (12 + 156.8 + 39 = 207.8 mm of 212 mm) there is room for it, behind 17 there is not.
     */
    @Test
    void theRegisterTakesNoMorePagesThanItNeeds() {
        for (int people : new int[] {1, 16, 17, 20, 21, 32, 33, 40, 41, 60, 61}) {
            List<String> pages = RegisterMarkup.pages(HANDOUT, HANDOUT.sheets(people), 7, "A club", Paper.A4);
            int tables = (people + 19) / 20;
            int rowsOfLast = people - people * (tables - 1) / tables;
            assertEquals(tables + (rowsOfLast <= 16 ? 0 : 1), pages.size(), people + " people");
            assertEquals(tables, pages.stream().mapToInt(page -> read(page).select("table").size()).sum());
            assertEquals(1, pages.stream().mapToInt(page -> read(page).select("h2").size()).sum());
            assertEquals(pages.size() == 1 ? "A club" : "A club, page 1 of " + pages.size(), read(pages.get(0)).selectFirst("p.house").text());
            assertEquals(pages.size() == 1 ? "Register" : "Register, page " + pages.size() + " of " + pages.size(), read(pages.get(pages.size() - 1)).selectFirst("section").attr("aria-label"));
        }
    }

    /** A question named by what it asks is not named twice; what was left out says why, unnumbered. */
    @Test
    void theRegisterNamesWhatIsAskedAndWhatIsLeftOut() {
        Question power = SomeQuestions.POWER;
        Question same = new Question("same", power.asked().get(0).label(), power.words(), true, power.calculator(), power.given(), List.of("voltage", "current"), power.asked(), "");
        Handout handout = new Handout(Selection.ofLessons(List.of(new LessonQuestions("01-a", "1 A", true, List.of(same, SomeQuestions.COIL))), List.of(0), 1, true), 1);
        Element register = read(String.join("", RegisterMarkup.pages(handout, handout.sheets(1), 1, "A club", Paper.A4)));
        assertEquals(List.of("On every sheet", "Left out"), register.select("h3").eachText());
        assertEquals(power.asked().get(0).label(), register.selectFirst("ul > li").text());
        assertEquals("A relay for a day: " + SomeQuestions.COIL.asked().get(0).label(), register.selectFirst("ol > li").text());
        assertEquals(1, register.select("h3 + p").size());
        // 14 and 5 mm on every sheet, 14, 12 and 5 mm left out: 50 mm. Behind 15 rows 12 + 147 + 50 = 209 mm of 212 mm, behind 16 rows 218.8 mm.
        assertEquals(1, RegisterMarkup.pages(handout, handout.sheets(15), 1, "A club", Paper.A4).size());
        assertEquals(2, RegisterMarkup.pages(handout, handout.sheets(16), 1, "A club", Paper.A4).size());
    }

    /** ISO 6722-1 prints 7.60 mΩ/m for 2.5 mm² and 4.71 for 4 mm². */
    @Test
    void theTablesHoldWhatHasToBeLookedUp() {
        List<Sheet> sheets = HANDOUT.sheets(20);
        Element tables = read(String.join("", TablesMarkup.pages(sheets, "A club", Paper.A4)));
        assertTrue(tables.text().contains("2.5 7.6") && tables.text().contains("4 4.71"), tables.text());
        List<String> sizes = sheets.stream().map(sheet -> sheet.tasks().get(0).entries().get("size").replaceAll("[^0-9.].*", "")).distinct().sorted().toList();
        assertEquals(sizes, tables.select("table").get(0).select("tbody td:first-child").eachText().stream().sorted().toList(), "of a copyright table the rows needed");
        assertEquals(List.of(), TablesMarkup.pages(new Handout(Selection.ofLessons(SomeQuestions.LESSONS, List.of(2), 9, true), 1).sheets(5), "A club", Paper.A4));
    }

    @Test
    void theRegisterLeavesNoRowAlone() {
        for (Paper paper : Paper.values()) {
            for (int people = 1; people <= 90; people++) {
                List<Sheet> sheets = HANDOUT.sheets(people);
                List<Integer> rows = RegisterMarkup.pages(HANDOUT, sheets, 7, "A club", paper).stream().map(page -> read(page).select("tbody tr").size()).filter(count -> count > 0).toList();
                assertEquals(people, rows.stream().mapToInt(Integer::intValue).sum());
                assertTrue(people == 1 || rows.stream().allMatch(count -> count > 1 && count >= rows.get(0) - 1), people + ": " + rows);
            }
        }
        Element register = read(String.join("", RegisterMarkup.pages(HANDOUT, HANDOUT.sheets(3), 7, "A club", Paper.A4)));
        assertEquals("7", register.selectFirst("dd.code").text());
        assertEquals(List.of("Sheet", "Name", "Code", "Right, of 5"), register.select("thead th").eachText());
        assertEquals(HANDOUT.sheets(3).stream().map(Sheet::code).toList(), register.select("tbody td.code").eachText());
        assertEquals("The cable to the bench: Voltage drop, Drop as a share of the supply voltage", register.selectFirst("ol > li").text());
    }

    @Test
    void thePagesAreCountedBeforeTheyArePrinted() {
        Printout printout = new Printout(HANDOUT, 20, 7, "A club", Paper.LETTER);
        int sections = printout.parts().stream().mapToInt(part -> read(part.html()).select("section.handout").size()).sum();
        assertEquals(sections, printout.pages());
        assertTrue(printout.said().startsWith("20 sheets of 5 questions: " + sections + " pages in all (register 2, tables 2, sheets 40, answers 2, workings "), printout.said());
        assertEquals(2, printout.pagesOfOne());
    }

    @Test
    void inThePageAQuestionHasABoxForEachAnswerAndTellsTheRestAfterwards() {
        Sheet sheet = HANDOUT.sheet(1);
        assertEquals("Sheet 1 " + sheet.code(), read(TaskMarkup.head(sheet)).text());
        Task task = sheet.tasks().get(0);
        Element marked = read(TaskMarkup.marked(task, 1)).selectFirst("section.marked#mark-1");
        assertEquals("mark-1-title", marked.attr("aria-labelledby"));
        assertEquals(plain("1 " + task.title()), marked.selectFirst("h3#mark-1-title").text());
        assertEquals(2, marked.select("form.check").size());
        assertEquals(1, marked.select("#mark-1-answer").size());
        assertEquals(1, marked.select("#mark-1-2-answer").size());
        assertEquals(task.working().steps().size(), marked.select("details ol.steps > li").size());
        assertEquals("Volts and amperes.", marked.selectFirst("div.more[hidden]").text());
        Task trap = sheet.tasks().stream().filter(each -> each.question().key().equals("trap")).findFirst().orElseThrow();
        assertTrue(read(TaskMarkup.marked(trap, 3)).selectFirst("div.more[hidden]").text().startsWith("Stop: "));
        Task words = sheet.tasks().stream().filter(each -> each.question().isInWords()).findFirst().orElseThrow();
        assertEquals("The answer The current also has to come back.", read(TaskMarkup.marked(words, 2)).selectFirst("details").text());
    }

    /** An answer lies within four times the printed one, either way. */
    @Test
    void answersKeepTheOrderOfThePrintedOne() {
        for (Sheet sheet : HANDOUT.sheets(40)) {
            for (Task task : sheet.tasks()) {
                for (Output asked : task.question().asked()) {
                    Working printed = Outcome.of(task.question().calculator(), task.question().given()).working();
                    double times = task.answer(asked).base() / printed.result(asked.key()).quantity().base();
                    assertTrue(times >= 0.25 && times <= 4, task.question().key() + ": " + times);
                }
            }
        }
    }

    private static Element read(String html) {
        return Jsoup.parseBodyFragment(Balance.held(html)).body();
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u2009', ' ');
    }
}
