package loomwright.plan.page;

import java.util.List;
import loomwright.markup.Html;
import loomwright.markup.Words;
import loomwright.plan.Answers;
import loomwright.plan.JobTexts;
import loomwright.plan.Obstacle;

/** What stands in the way of a plan, with the way back to the answer. */
public final class ObstacleMarkup {
    private ObstacleMarkup() {}

    /** An answer for which there is no circuit. */
    public static String of(Obstacle obstacle) {
        Html html = new Html().tag("<div class=\"findings\"><ul><li class=\"finding\" data-verdict=\"stop\"><p><strong>No circuit for these answers.</strong> ");
        html.text(obstacle.words()).tag("</p><p>What would help: ").text(obstacle.help()).tag("</p><p>");
        return html.tag(go(obstacle.item(), obstacle.fieldKey())).tag("</p></li></ul></div>").toString();
    }

    /** Answers that cannot be used. */
    public static String of(List<Answers.Fault> faults) {
        Html html = new Html().tag("<p><strong>Before there is a plan, this needs another look:</strong></p><ul>");
        for (Answers.Fault fault : faults) {
            html.tag("<li>").text(Words.sentence(fault.message())).tag(" ").tag(go(fault.item(), fault.fieldKey())).tag("</li>");
        }
        return html.tag("</ul>").toString();
    }

    private static String go(int item, String key) {
        return "<button type=\"button\" class=\"quiet\" data-item=\"" + item + "\" data-asks=\"" + Html.escape(key) + "\">Go to that answer</button>";
    }

    /**
     * What can be done with the plan, and folded away a button for each screen, to change what was answered.
     *
     * @param open whether an answer has to be changed
     */
    public static String changes(JobTexts texts, boolean open) {
        Html html = new Html().tag("<p class=\"actions on-screen\"><button type=\"button\" data-does=\"print\">Print the plan</button> ");
        html.tag("<button type=\"button\" class=\"quiet\" data-does=\"fresh\">Begin a new job</button></p>");
        html.tag("<details id=\"job-change\" class=\"on-screen\"" + (open ? " open" : "") + "><summary>Change an answer</summary><p class=\"actions\">");
        List<Screen> screens = Screen.of(texts);
        for (int i = 0; i < screens.size() - 1; i++) {
            html.tag("<button type=\"button\" class=\"quiet\" data-screen=\"" + i + "\">Change: ").text(screens.get(i).title(texts)).tag("</button> ");
        }
        return html.tag("</p></details>").toString();
    }
}
