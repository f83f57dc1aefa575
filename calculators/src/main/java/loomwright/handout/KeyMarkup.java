package loomwright.handout;

import java.util.ArrayList;
import java.util.List;
import loomwright.markup.Html;
import loomwright.markup.StepLine;
import loomwright.worked.Agreement;
import loomwright.worked.Finding;
import loomwright.worked.Output;
import loomwright.worked.Slip;
import loomwright.worked.Step;

/** Every working of every person, a line a step, person after person: for the one who goes round the tables. */
final class KeyMarkup {
    private static final double LINE = 4;
    private static final double PERSON = 10;
    private static final double TITLE = 7;
    private static final double HEAD = 22;
    private static final double RUNNING = 8;

    private KeyMarkup() {}

    static List<String> pages(List<Sheet> sheets, String house, Paper paper) {
        List<Block> blocks = new ArrayList<>();
        for (Sheet sheet : sheets) {
            add(blocks, sheet);
        }
        List<String> bodies = Block.pages(blocks, paper.room() - HEAD, paper.room() - RUNNING);
        List<String> pages = new ArrayList<>();
        for (int i = 0; i < bodies.size(); i++) {
            String of = "page " + (i + 1) + " of " + bodies.size();
            Html html = new Html().tag("<section class=\"handout key workings\"").attribute("aria-label", "Workings, " + of).tag("><p class=\"house\">");
            html.text(i == 0 ? house : house + ", workings, " + of).tag("</p>");
            html.tag(i == 0 ? "<h2>Workings</h2><p class=\"facts\">Every step of every sheet. What everyone was asked alike stands behind the answers.</p>" : "");
            pages.add(html.tag(bodies.get(i)).tag("</section>\n").toString());
        }
        return pages;
    }

    /** The name of a sheet never stands alone at the end of a page: it goes with the first working. */
    private static void add(List<Block> blocks, Sheet sheet) {
        Html html = new Html().tag("<h3 class=\"person\">").text("Sheet " + sheet.person()).tag(" <span class=\"code\">").text(sheet.code()).tag("</span></h3>");
        double height = PERSON;
        for (int i = 0; i < sheet.tasks().size(); i++) {
            Task task = sheet.tasks().get(i);
            if (task.question().varies()) {
                height += working(html, task, i + 1, "h4");
                blocks.add(new Block(html.toString(), height));
                html = new Html();
                height = 0;
            }
        }
    }

    /** Writes a working under a heading of that level, and says how high it is. */
    static double working(Html html, Task task, int number, String heading) {
        double height = TITLE;
        html.tag("<div class=\"asked\"><" + heading + ">").text(number + "  " + task.title()).tag("</" + heading + ">");
        if (!task.question().varies()) {
            height += line(html, "words", task.words());
        }
        if (!task.question().isInWords()) {
            html.tag("<ol class=\"lines\">");
            for (Step step : task.working().steps()) {
                String line = StepLine.of(step);
                html.tag("<li>").text(line).tag("</li>");
                height += LINE * TextWidth.lines("1. " + line, TextWidth.KEY);
            }
            html.tag("</ol>");
            for (Output asked : task.question().asked()) {
                html.tag("<p class=\"gives\">").text(asked.label()).tag(" <strong class=\"value\">").text(task.answerText(asked)).tag("</strong></p>");
                height += LINE;
            }
        }
        for (Finding stop : task.stops()) {
            height += line(html, "stop", "Stop: " + Task.sentence(stop.words()) + " " + stop.remedy());
        }
        if (!task.because().isEmpty()) {
            height += line(html, "said", task.because());
        }
        height += slips(html, task);
        html.tag("</div>");
        return height;
    }

    private static double line(Html html, String name, String text) {
        html.tag("<p class=\"" + name + "\">").text(text).tag("</p>");
        return LINE * TextWidth.lines(text, TextWidth.KEY) + 0.5;
    }

    /** What a wrong answer may come from. */
    private static double slips(Html html, Task task) {
        StringBuilder text = new StringBuilder();
        if (task.working() != null) {
            for (Slip slip : task.working().slips()) {
                if (task.question().asked().contains(slip.output()) && Agreement.isApart(slip.value(), task.answer(slip.output()))) {
                    text.append(text.length() == 0 ? "Wrong answers and where they come from: " : "; ").append(slip.value().text(3)).append(", ").append(slip.name());
                }
            }
        }
        return text.length() == 0 ? 0 : line(html, "slips", text + ".");
    }
}
