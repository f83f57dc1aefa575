package loomwright.handout;

import java.util.ArrayList;
import java.util.List;
import loomwright.markup.Html;
import loomwright.worked.Output;

/** The sheet of one person, to be printed, page by page. */
public final class SheetMarkup {
    private static final String NOTE = "The numbers on this sheet are yours alone. Write the working down, not only the answer: the key shows every "
            + "step. They are for practice; a real circuit is worked out from its own figures.";
    /** Lines to write on: so many, or as many as are enough if that saves a page. */
    private static final int MOST_LINES = 6;
    private static final int ENOUGH_LINES = 4;
    /** And so few, if else the sheet would be longer than {@link #PAGES}. */
    private static final int FEWEST_LINES = 2;
    /** A sheet as nobody asked for more. */
    public static final int PAGES = 4;

    private static final double HEAD = 50;
    private static final double RUNNING = 7;
    private static final double LINE = 5;
    private static final double TITLE = 8.6;
    private static final double RULED = 7;
    private static final double ANSWER = 9.5;
    private static final double GAP = 2;

    private final Sheet sheet;
    private final String house;
    private final Paper paper;

    private SheetMarkup(Sheet sheet, String house, Paper paper) {
        this.sheet = sheet;
        this.house = house;
        this.paper = paper;
    }

    /**
     * The pages of a sheet.
     *
     * @param house whose sheet it is: the name of the site or of the club, with its contact
     */
    public static List<String> pages(Sheet sheet, String house, Paper paper) {
        return new SheetMarkup(sheet, house, paper).pages();
    }

    private List<String> pages() {
        int chosen = MOST_LINES;
        List<List<Block>> groups = groups(MOST_LINES);
        for (int lines = MOST_LINES - 1; lines >= FEWEST_LINES; lines--) {
            List<List<Block>> shorter = groups(lines);
            if (shorter.size() < groups.size() && (lines >= ENOUGH_LINES || groups.size() > PAGES)) {
                groups = shorter;
                chosen = lines;
            }
        }
        List<String> bodies = filled(groups, chosen);
        List<String> pages = new ArrayList<>();
        for (int i = 0; i < bodies.size(); i++) {
            String of = bodies.size() == 1 ? "" : ", page " + (i + 1) + " of " + bodies.size();
            Html html = new Html().tag("<section class=\"handout\"").attribute("aria-label", "Question sheet " + sheet.person() + of).tag(">");
            if (i == 0) {
                head(html, of);
            } else {
                html.tag("<p class=\"house\">").text("Sheet " + sheet.person() + of + ", code " + sheet.code()).tag("</p>");
            }
            pages.add(html.tag(bodies.get(i)).tag("</section>\n").toString());
        }
        return pages;
    }

    private List<List<Block>> groups(int lines) {
        List<Block> blocks = new ArrayList<>();
        for (int number = 1; number <= sheet.tasks().size(); number++) {
            blocks.add(block(sheet.tasks().get(number - 1), number, lines));
        }
        return Block.groups(blocks, paper.room() - HEAD, paper.room() - RUNNING);
    }

    /** The pages with more lines to write on where there is room for them. */
    private List<String> filled(List<List<Block>> groups, int lines) {
        List<String> bodies = new ArrayList<>();
        int number = 1;
        for (List<Block> group : groups) {
            double left = paper.room() - (number == 1 ? HEAD : RUNNING);
            for (Block block : group) {
                left -= block.height();
            }
            int more = (int) Math.max(0, Math.min(MOST_LINES - lines, left / (RULED * group.size())));
            StringBuilder body = new StringBuilder();
            for (int i = 0; i < group.size(); i++) {
                body.append(block(sheet.tasks().get(number - 1), number, lines + more).html());
                number++;
            }
            bodies.add(body.toString());
        }
        return bodies;
    }

    private void head(Html html, String of) {
        html.tag("<p class=\"house\">").text(house).tag("</p><h2>").text("Question sheet " + sheet.person());
        html.tag(of.isEmpty() ? "" : "<span class=\"facts\">").text(of.isEmpty() ? "" : of.substring(2)).tag(of.isEmpty() ? "" : "</span>");
        html.tag("</h2><dl class=\"head\"><div class=\"wide\"><dt>Name</dt><dd class=\"blank\"></dd></div>");
        html.tag("<div><dt>Date</dt><dd class=\"blank\"></dd></div><div><dt>Code of this sheet</dt><dd class=\"code\">");
        html.text(sheet.code()).tag("</dd></div></dl><p class=\"facts\">").text(NOTE).tag("</p>");
    }

    private static Block block(Task task, int number, int lines) {
        Question question = task.question();
        String title = number + "  " + task.title();
        Html html = new Html().tag("<div class=\"asked\"><h3>").text(title);
        html.tag(question.varies() ? "</h3>" : " <span class=\"facts\">the same for everyone</span></h3>").tag("<p class=\"words\">");
        html.text(task.words()).tag("</p>");
        double height = GAP + TITLE + LINE * TextWidth.lines(task.words(), TextWidth.SHEET);
        height += title.length() > 60 ? LINE : 0;
        if (!question.isInWords()) {
            html.tag(task.given());
            height += given(task);
        }
        html.tag("<div class=\"ruled\" aria-hidden=\"true\">");
        for (int i = 0; i < lines; i++) {
            html.tag("<p></p>");
        }
        html.tag("</div>");
        height += lines * RULED;
        for (Output asked : question.asked()) {
            html.tag("<p class=\"answer-line\">").text(asked.label()).tag(" <span class=\"blank\"></span> ");
            html.text(asked.unit().symbol()).tag("</p>");
            height += ANSWER;
        }
        return new Block(html.tag("</div>").toString(), height);
    }

    /** The figures stand in two columns; a row is as high as the longer of its two. */
    private static double given(Task task) {
        int rows = 0;
        List<String> lines = task.givenLines();
        for (int i = 0; i < lines.size(); i += 2) {
            int left = TextWidth.lines(lines.get(i), TextWidth.FIGURE);
            rows += i + 1 == lines.size() ? left : Math.max(left, TextWidth.lines(lines.get(i + 1), TextWidth.FIGURE));
        }
        return GAP + LINE * rows;
    }
}
