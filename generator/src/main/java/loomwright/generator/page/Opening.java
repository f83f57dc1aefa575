package loomwright.generator.page;

import java.util.List;
import loomwright.markup.Absent;
import loomwright.markup.Html;
import loomwright.worked.Description;
import loomwright.worked.Working;

/** The start and the end of a worked example. A further one is folded; its title stands on the fold. */
record Opening(String key, Description description, Working working, String check, String title) {

    /** What stands before the section of the example. */
    String before(boolean further, String shows) {
        return further
                ? "<details class=\"further\"><summary><span class=\"about\"><span class=\"label\">Further example</span>" + heading()
                        + "<span class=\"shows\">Shows " + Html.escape(shows) + "</span></span></summary>\n"
                : "";
    }

    /** The start of the section, up to the story; without the title if that stands on the fold. */
    String section(boolean further, List<String> keep, String lender) {
        StringBuilder out = new StringBuilder("<section class=\"example\" id=\"").append(id());
        attribute(out, "data-calculator", description.key());
        attribute(out, "data-key", key);
        attribute(out, "data-check", check);
        attribute(out, "data-keep", String.join(" ", keep));
        attribute(out, "data-lender", lender);
        attribute(out, "data-further", further ? "yes" : "");
        attribute(out, "data-absent", Absent.of(description, working.entries()).keys().strip());
        out.append("\" aria-labelledby=\"").append(id()).append("-title\">\n");
        out.append(further ? "" : "<p class=\"label\">Worked example</p>\n" + heading() + "\n");
        return out.append("<a class=\"past\" href=\"#").append(id()).append("-end\">Past this example</a>\n").toString();
    }

    /** The end of the section, where the link past it leads. */
    String end(boolean further) {
        return "<p class=\"unseen\" id=\"" + id() + "-end\" tabindex=\"-1\">End of this example</p>\n</section>\n" + (further ? "</details>\n" : "");
    }

    private String heading() {
        return "<h3 class=\"title\" id=\"" + id() + "-title\">" + Html.escape(title) + "</h3>";
    }

    private String id() {
        return Html.escape(key);
    }

    private static void attribute(StringBuilder out, String name, String value) {
        if (!value.isEmpty()) {
            out.append("\" ").append(name).append("=\"").append(Html.escape(value));
        }
    }
}
