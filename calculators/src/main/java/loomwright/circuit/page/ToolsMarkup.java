package loomwright.circuit.page;

import java.util.List;
import loomwright.markup.Html;

/** What can be done with the circuit as a whole: folds in a row above the bench. */
public final class ToolsMarkup {
    private ToolsMarkup() {}

    /** The tools, put above the drawing. */
    public static String tools() {
        Html html = new Html().tag("<section id=\"circuit-tools\" aria-label=\"Your work\">");
        begin(html);
        exchange(html);
        shelf(html);
        print(html);
        html.tag("<p class=\"help\" id=\"circuit-kept\"></p>");
        return html.tag("</section><div id=\"circuit-notice\" role=\"status\"></div>").toString();
    }

    private static void begin(Html html) {
        html.tag("<details id=\"circuit-begin\"><summary>Name, new circuit</summary>");
        field(html, "circuit-name", "Name of the circuit", "<input id=\"circuit-name\" type=\"text\" class=\"long\" autocomplete=\"off\" spellcheck=\"false\""
                + " aria-describedby=\"circuit-name-fault\">", "<p class=\"error\" id=\"circuit-name-fault\" hidden></p>");
        html.tag("<p>Begin with:</p><p class=\"moves\">");
        button(html, "trailer", "The field trailer");
        button(html, "punt", "The punt");
        button(html, "empty", "A battery alone");
        html.tag("</p><p class=\"help\">Undo brings back what stood here.</p></details>");
    }

    private static void print(Html html) {
        html.tag("<details id=\"circuit-paper\"><summary>Print</summary><fieldset id=\"circuit-print\"><legend>Sheets to print</legend>");
        for (Sheet sheet : Sheet.values()) {
            html.tag("<label><input type=\"checkbox\" checked").attribute("value", sheet.key()).tag("> ").text(sheet.title()).tag("</label>");
        }
        html.tag("</fieldset><p class=\"moves\">");
        button(html, "print", "Print the sheets ticked");
        button(html, "tick-all", "Tick all");
        button(html, "tick-none", "Tick none");
        html.tag("</p></details>");
    }

    private static void exchange(Html html) {
        html.tag("<details id=\"circuit-files\"><summary>File and link</summary><p class=\"moves\">");
        button(html, "download", "Download as a file");
        html.tag("</p>");
        field(html, "circuit-upload", "Open a circuit file", "<input id=\"circuit-upload\" type=\"file\" accept=\".json,application/json\">", "");
        html.tag("<p class=\"moves\">");
        button(html, "link", "Make a link");
        html.tag("</p><div class=\"field\" hidden><label for=\"circuit-link\">Link to this circuit: copy it</label><div class=\"entry\">");
        html.tag("<input id=\"circuit-link\" type=\"text\" class=\"long\" readonly></div></div></details>");
    }

    private static void shelf(Html html) {
        html.tag("<details id=\"circuit-others\"><summary>Several circuits</summary>");
        field(html, "circuit-shelf", "Circuit on the desk", "<select id=\"circuit-shelf\"></select>", "");
        html.tag("<p class=\"moves\">");
        button(html, "beside", "Put a copy beside it");
        button(html, "discard", "Remove this circuit");
        html.tag("</p>");
        field(html, "circuit-upload-beside", "Put a circuit file beside it",
                "<input id=\"circuit-upload-beside\" type=\"file\" accept=\".json,application/json\">", "");
        html.tag("<div id=\"circuit-beside\"></div></details>");
    }

    private static void field(Html html, String id, String label, String control, String after) {
        html.tag("<div class=\"field\"><label").attribute("for", id).tag(">").text(label).tag("</label><div class=\"entry\">");
        html.tag(control).tag("</div>").tag(after).tag("</div>");
    }

    private static void button(Html html, String does, String words) {
        html.tag("<button type=\"button\" class=\"quiet\"").attribute("data-does", does).tag(">").text(words).tag("</button> ");
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
