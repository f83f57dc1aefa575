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
        for (Slip slip : working.slips()) {
            html.tag("<li class=\"slip\">").value(slip.value()).tag(" for ").text(Words.small(slip.output().label()));
            html.tag(": <strong>").text(Words.sentence(slip.name())).tag("</strong> ").text(Words.sentence(slip.words())).tag("</li>");
        }
        return html.tag("</ul></details>").toString();
    }
}
