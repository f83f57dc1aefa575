package loomwright.markup;

import loomwright.worked.Slip;
import loomwright.worked.Working;

/** Known mistakes with the present numbers, folded away. */
final class SlipsMarkup {
    private SlipsMarkup() {}

    static String of(Working working) {
        if (working.slips().isEmpty()) {
            return "";
        }
        Html html = new Html().tag("<details class=\"slips\"><summary>Mistakes that give another number</summary><ul>");
        String before = "";
        for (Slip slip : working.slips()) {
            String said = new Html().tag(": <strong>").text(Words.sentence(slip.name())).tag("</strong> ").text(Words.sentence(slip.words())).tag("</li>").toString();
            if (!before.contains(said)) {
                html.tag("<li class=\"slip\">");
                values(html, working, slip);
                html.tag(said);
                before += said;
            }
        }
        return html.tag("</ul></details>").toString();
    }

    /** What the mistake gives, for each result that it can happen to: it is told once. */
    private static void values(Html html, Working working, Slip told) {
        String between = "";
        for (Slip slip : working.slips()) {
            if (slip.name().equals(told.name()) && slip.words().equals(told.words())) {
                html.tag(between).value(slip.value()).tag(" for ").text(Words.small(slip.output().label()));
                between = "; ";
            }
        }
    }
}
