package loomwright.circuit.page;

import java.util.List;
import loomwright.markup.Html;

/** What can be done with the circuit as a whole. */
public final class ToolsMarkup {
    private ToolsMarkup() {}

    /** The tools, put above the drawing. */
    public static String tools() {
        return "<section id=\"circuit-tools\" aria-labelledby=\"tools\"><h2 id=\"tools\">Your work</h2><div id=\"circuit-notice\" role=\"status\"></div>"
                + "<div class=\"field\"><label for=\"circuit-name\">Name of the circuit</label><div class=\"entry\"><input id=\"circuit-name\" type=\"text\""
                + " class=\"long\" autocomplete=\"off\" aria-describedby=\"circuit-name-fault\"></div><p class=\"error\" id=\"circuit-name-fault\" hidden></p></div>"
                + "<p class=\"moves\"><button type=\"button\" class=\"quiet\" data-does=\"undo\">Undo</button>"
                + " <button type=\"button\" class=\"quiet\" data-does=\"redo\">Redo</button>"
                + " <button type=\"button\" class=\"quiet\" data-does=\"print\">Print all sheets</button></p><p class=\"help\" id=\"circuit-kept\"></p>"
                + "<details id=\"circuit-files\"><summary>Begin with another circuit, keep a file, make a link</summary>"
                + "<h3>Begin with</h3><p class=\"moves\"><button type=\"button\" class=\"quiet\" data-does=\"trailer\">The field trailer</button>"
                + " <button type=\"button\" class=\"quiet\" data-does=\"punt\">The punt</button>"
                + " <button type=\"button\" class=\"quiet\" data-does=\"empty\">A battery alone</button></p><p class=\"help\">Undo brings back what stood here.</p>"
                + "<h3>File</h3><p class=\"moves\"><button type=\"button\" class=\"quiet\" data-does=\"download\">Download as a file</button></p>"
                + "<div class=\"field\"><label for=\"circuit-upload\">Open a circuit file</label><div class=\"entry\"><input id=\"circuit-upload\" type=\"file\""
                + " accept=\".json,application/json\"></div></div>"
                + "<h3>Link</h3><p class=\"moves\"><button type=\"button\" class=\"quiet\" data-does=\"link\">Make a link</button></p><div class=\"field\" hidden>"
                + "<label for=\"circuit-link\">Link to this circuit: copy it</label><div class=\"entry\"><input id=\"circuit-link\" type=\"text\" class=\"long\" readonly>"
                + "</div></div></details></section>";
    }

    /** The bar that says what was done; it stays until the next change. */
    public static String said() {
        return "<div id=\"circuit-said\"><p role=\"status\"></p><button type=\"button\" class=\"quiet\" data-does=\"hush\">Close</button></div>";
    }

    /** Something to be decided, in words, with its two answers. */
    public static String question(String words, String take, String keep) {
        Html html = new Html().tag("<div class=\"summary\"><p><strong>").text(words).tag("</strong></p><p class=\"moves\">");
        html.tag("<button type=\"button\" data-does=\"take\">").text(take).tag("</button> <button type=\"button\" class=\"quiet\" data-does=\"keep\">");
        return html.text(keep).tag("</button></p></div>").toString();
    }

    /** Something refused, with its reasons. */
    public static String refusal(String words, List<String> reasons) {
        Html html = new Html().tag("<div class=\"summary\"><p><strong>").text(words).tag("</strong></p><ul>");
        for (String reason : reasons) {
            html.tag("<li>").text(reason).tag("</li>");
        }
        return html.tag("</ul><p class=\"moves\"><button type=\"button\" class=\"quiet\" data-does=\"dismiss\">Close</button></p></div>").toString();
    }
}
