package loomwright.plan.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Conductor;
import loomwright.circuit.Node;
import loomwright.circuit.Protection;
import loomwright.circuit.check.FindingGroup;
import loomwright.circuit.file.CircuitLink;
import loomwright.circuit.page.LessonSheet;
import loomwright.circuit.page.Sheet;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.Extent;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.plan.Bought;
import loomwright.plan.Chosen;
import loomwright.plan.Plan;
import loomwright.plan.Shopping;
import loomwright.plan.Taken;

/** The plan that came of the answers: drawing and sizes on one page, every reason, what to buy, what to measure, what to read. */
public final class PlanSheet {
    private final Links links;
    private final Plan plan;
    private final List<LessonFact> lessons;
    private final Html html = new Html();

    private PlanSheet(Links links, Plan plan, List<LessonFact> lessons) {
        this.links = links;
        this.plan = plan;
        this.lessons = lessons;
    }

    /**
     * The whole plan.
     *
     * @param plan one with a circuit
     * @param lessons what the page knows of the lessons
     * @param job the answers as text for a link; empty for none
     */
    public static String of(Links links, Plan plan, List<LessonFact> lessons, String job) {
        PlanSheet sheet = new PlanSheet(links, plan, lessons);
        sheet.onePage();
        sheet.onward(job);
        sheet.asks();
        sheet.reasons();
        sheet.taken();
        sheet.shopping();
        sheet.section("job-test", "Test sheet", "<details><summary>Every step, with the reading to expect</summary>" + LessonSheet.markup(Sheet.TEST_SHEET, links, plan.examination(), Extent.WHOLE) + "</details>");
        sheet.section("job-found", "What the checks found", "<p>No check stops this circuit. Figures that only a data sheet has are to be looked up before you buy.</p>"
                + LessonSheet.markup(Sheet.FINDINGS, links, plan.examination(), Extent.WHOLE));
        sheet.lessons();
        return sheet.html.toString();
    }

    private void section(String id, String title, String body) {
        html.tag("<section class=\"sheet-of-paper\"").attribute("aria-labelledby", id).tag("><h2").attribute("id", id).tag(">").text(title).tag("</h2>");
        html.tag(body).tag("</section>");
    }

    private void onePage() {
        Html body = new Html().tag("<p>").text("Worked out on the careful side: " + FindingGroup.counted(plan.examination()) + ". Plan first, connect last; this page does not see your job.").tag("</p>");
        body.tag(LessonSheet.markup(Sheet.DRAWING, links, plan.examination(), Extent.WHOLE)).tag(sizes());
        section("job-plan", "The plan on one page", body.toString());
    }

    private String sizes() {
        Designations designations = Designations.of(plan.circuit());
        Html table = new Html();
        open(table, "Sizes and devices", "Part", "What", "Route");
        for (Node node : plan.circuit().nodes()) {
            if (node.figures() instanceof Conductor run) {
                row(table, designations.titled(node.id()), run.size().text() + ", two conductors, insulation for " + run.around().insulation().rating().text(), run.routeLength().text());
            } else if (node.figures() instanceof Protection device) {
                row(table, designations.titled(node.id()), device.words(), "\u2013");
            }
        }
        return table.tag("</tbody></table></div>").toString();
    }

    private static void open(Html html, String label, String... heads) {
        html.tag("<div class=\"scroll\" role=\"region\" tabindex=\"0\"").attribute("aria-label", "Table: " + label).tag("><table class=\"dense\"").attribute("aria-label", label);
        html.tag("><thead><tr>");
        for (String head : heads) {
            html.tag("<th scope=\"col\">").text(head).tag("</th>");
        }
        html.tag("</tr></thead><tbody>");
    }

    private static void row(Html html, String head, String... cells) {
        html.tag("<tr><th scope=\"row\">").text(head).tag("</th>");
        for (String cell : cells) {
            html.tag("<td>").text(cell).tag("</td>");
        }
        html.tag("</tr>");
    }

    private void onward(String job) {
        html.tag("<p class=\"actions on-screen\">");
        String link = CircuitLink.write(plan.circuit());
        if (link != null) {
            html.tag("<a id=\"job-bench\"").attribute("href", links.root() + "your-circuit.html#circuit=" + link).tag(">Open this circuit on the bench, to change it</a> ");
        }
        if (!job.isEmpty()) {
            html.tag("<a id=\"job-link\"").attribute("href", links.root() + "first-job.html#" + job).tag(">These answers as a link</a>");
        }
        html.tag("</p>");
    }

    private void asks() {
        if (!plan.asks().isEmpty()) {
            section("job-asks", "What you have to decide", list(plan.asks()));
        }
    }

    private static String list(List<String> words) {
        Html list = new Html().tag("<ul>");
        for (String each : words) {
            list.tag("<li>").text(each).tag("</li>");
        }
        return list.tag("</ul>").toString();
    }

    private void reasons() {
        Html list = new Html().tag("<ol class=\"reasons\">");
        for (Chosen chosen : plan.chosen()) {
            list.tag("<li><strong>").text(chosen.what()).tag("</strong> ").text(chosen.why());
            if (chosen.working() != null) {
                list.tag(" <a").attribute("href", links.calculator(chosen.working().calculatorKey(), chosen.working().carried()));
                list.tag(">Its working<span class=\"unseen\">: ").text(chosen.what()).tag("</span></a>");
            }
            list.tag(" <a").attribute("href", links.lesson(chosen.lesson())).tag(">Lesson<span class=\"unseen\"> on ").text(chosen.what()).tag("</span></a></li>");
        }
        section("job-why", "Why each part is what it is", list.tag("</ol>").toString());
    }

    private void taken() {
        List<String> words = new ArrayList<>();
        for (Taken taken : plan.taken()) {
            words.add(taken.words() + " (" + taken.standing() + ")");
        }
        if (!words.isEmpty()) {
            section("job-taken", "What was taken for you", list(words));
        }
    }

    private void shopping() {
        Html table = new Html().tag("<p>Battery and the things you fit are not on it. Lengths of cable count both conductors, so buy half of it in each of two colours; of a cable with two conductors in one sheath buy half the length. They have 0.25 m (10 in) at each end for terminals and a loop; a piece that no device protects has none. Counts of small things are common practice.</p>");
        open(table, "Shopping list", "What", "How many", "Where");
        for (Bought bought : Shopping.of(plan)) {
            row(table, bought.what(), bought.count(), bought.where());
        }
        table.tag("</tbody></table></div><h3 id=\"job-tools\">Tools</h3><p>").text(
                "A crimp tool with a ratchet for the colours above; wire stripper; cutter that cuts square; heat gun; drill with the hole saw of the outlets, pilot bit, depth stop and a deburring tool; "
                        + "insulated spanners; a multimeter with a fuse of its own; eye protection; a torch; tape and a pen for labels.").tag("</p>");
        section("job-shopping", "What to buy", table.toString());
    }

    private void lessons() {
        Html list = new Html().tag("<ol>");
        int minutes = 0;
        for (String key : LessonChoice.of(plan)) {
            for (LessonFact lesson : lessons) {
                if (lesson.key().equals(key)) {
                    minutes += lesson.minutes();
                    list.tag("<li><a").attribute("href", links.lesson(key)).tag(">").text(lesson.title()).tag("</a>, ").text(lesson.minutes() + " minutes").tag("</li>");
                }
            }
        }
        if (minutes > 0) {
            section("job-lessons", "The lessons that matter for this job", "<p>About " + minutes + " minutes in all.</p>" + list.tag("</ol>"));
        }
    }
}
