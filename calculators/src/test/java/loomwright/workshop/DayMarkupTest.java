package loomwright.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.handout.LessonQuestions;
import loomwright.markup.Balance;
import loomwright.markup.Links;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** The plan of a day on a page and on paper: every table, every line, and the lessons by their names. */
class DayMarkupTest {
    private static final List<LessonQuestions> LESSONS = List.of(
            new LessonQuestions("08-voltage-drop", "8 Voltage drop", true, List.of()), new LessonQuestions("13-joints", "13 Joints", true, List.of()));

    private static Element page(DayPlan plan, Links links, List<Item> printed) {
        return Jsoup.parseBodyFragment(Balance.held(DayMarkup.of(plan, LESSONS, links, printed))).body();
    }

    private static List<String> names(Element page, String table) {
        return page.select("table[aria-label=" + table + "] tbody tr td:first-child").eachText();
    }

    @Test
    void everyTableOfThePlanStandsThereWithEveryLine() {
        DayPlan plan = new DayPlan(20, 3, 8);
        Element page = page(plan, new Links(""), plan.printing(2, 1, 5));
        assertEquals(
                List.of("Hour by hour", "Room and supplies", "Safety", "Tools to bring", "Material to buy", "Parts of the demonstration boards", "To print"),
                page.select("table").eachAttr("aria-label"));
        assertEquals("Hour by hour: 8 hours, 20 people", page.selectFirst("h3").text());
        assertEquals(plan.leading(), page.selectFirst("p.leading").text());
        assertEquals(plan.room().stream().map(Item::name).toList(), names(page, "'Room and supplies'"));
        assertEquals(plan.safety().stream().map(Item::name).toList(), names(page, "Safety"));
        assertEquals(plan.tools().stream().map(Item::name).toList(), names(page, "'Tools to bring'"));
        assertEquals(plan.material().stream().map(Item::name).toList(), names(page, "'Material to buy'"));
        assertEquals(plan.boardParts().stream().map(Item::name).toList(), names(page, "'Parts of the demonstration boards'"));
        assertEquals(4, names(page, "'To print'").size());
        // 23 people, 4 m² each.
        assertTrue(page.select("table[aria-label='Room and supplies'] strong.value").eachText().contains("92 m²"), page.select("strong.value").eachText().toString());
        assertEquals(Timetable.of(8).size(), names(page, "'Hour by hour'").size());
        assertEquals("09:00", names(page, "'Hour by hour'").get(0));
    }

    @Test
    void withoutSheetsNothingIsPrintedAndOnePersonIsOne() {
        Element page = page(new DayPlan(1, 2, 3), new Links(""), List.of());
        assertEquals(6, page.select("table").size());
        assertEquals("Hour by hour: 3 hours, 1 person", page.selectFirst("h3").text());
    }

    @Test
    void aLineLeadsToItsLessonAndOnPaperNamesIt() {
        Element page = page(new DayPlan(12, 2, 8), new Links(""), List.of());
        assertEquals(List.of("lesson 8 Voltage drop", "lesson 13 Joints"), page.select("td a").eachText());
        assertEquals(List.of("lessons/08-voltage-drop.html", "lessons/13-joints.html"), page.select("td a").eachAttr("href"));
        Element paper = page(new DayPlan(12, 2, 8), Links.NONE, List.of());
        assertEquals(0, paper.select("a").size());
        assertTrue(paper.text().contains("(lesson 13 Joints)"), paper.text());
    }
}
