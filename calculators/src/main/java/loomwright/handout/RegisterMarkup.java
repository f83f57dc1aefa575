package loomwright.handout;

import java.util.List;
import loomwright.markup.Html;

/** The register: who has which sheet, and which questions stand on it. */
public final class RegisterMarkup {
    private RegisterMarkup() {}

    /** The page. */
    public static String of(Handout handout, List<Sheet> sheets, int seed, String house) {
        Html html = new Html().tag("<section class=\"handout register\" aria-label=\"Register\"><p class=\"house\">").text(house);
        html.tag("</p><h2>Register</h2><dl class=\"head\"><div class=\"wide\"><dt>Place</dt><dd class=\"blank\"></dd></div><div><dt>Date</dt>");
        html.tag("<dd class=\"blank\"></dd></div><div><dt>Set number</dt><dd class=\"code\">").text(Integer.toString(seed)).tag("</dd></div></dl>");
        html.tag("<table><thead><tr><th scope=\"col\">Sheet</th><th scope=\"col\">Name</th><th scope=\"col\">Code</th>");
        html.tag("<th scope=\"col\">Right, of ").text(Integer.toString(handout.asked().size())).tag("</th></tr></thead><tbody>");
        for (Sheet sheet : sheets) {
            html.tag("<tr><th scope=\"row\">").text(Integer.toString(sheet.person())).tag("</th><td class=\"room\"></td><td class=\"code\">");
            html.text(sheet.code()).tag("</td><td></td></tr>");
        }
        html.tag("</tbody></table><h3>On every sheet</h3><ol>");
        for (Question question : handout.asked()) {
            html.tag("<li>").text(name(question)).tag("</li>");
        }
        html.tag("</ol>");
        if (!handout.leftOut().isEmpty()) {
            html.tag("<h3>Left out</h3><p>No other round numbers give these questions another answer, so neighbours would share it.</p><ul>");
            for (Question question : handout.leftOut()) {
                html.tag("<li>").text(name(question)).tag("</li>");
            }
            html.tag("</ul>");
        }
        return html.tag("</section>\n").toString();
    }

    private static String name(Question question) {
        return Scene.filled(question.title(), question.given()) + ": " + question.asked().label();
    }
}
