package loomwright.markup;

import java.util.List;
import java.util.Map;
import loomwright.worked.Description;
import loomwright.worked.EntryFault;
import loomwright.worked.Field;

/** The form that takes the reader's own figures. */
public final class FormMarkup {
    private FormMarkup() {}

    /** The form, filled with {@code entries} and with what is taken where there is none. The figures of the story come first. */
    public static String of(Place place, Description description, Map<String, String> entries, Assumed assumed, Absent absent) {
        Html html = new Html().tag("<form class=\"try\" novalidate");
        html.attribute("aria-labelledby", place.id("try") + " " + place.id("title")).tag("><h4");
        html.attribute("id", place.id("try")).tag(">Put in your own figures</h4><div class=\"summary\"");
        html.attribute("id", place.id("summary")).tag(" tabindex=\"-1\" hidden></div>");
        new FormFields(place, entries, assumed, absent).write(html, description.fields());
        html.tag("<p class=\"actions\"><button type=\"button\" class=\"quiet\" data-empties").tag(
                isAnyAssumed(description.fields(), entries, assumed) ? "" : " hidden").tag(">Empty what is assumed</button>");
        html.tag(" <button type=\"reset\" class=\"quiet\">Back to the printed example</button></p>");
        html.tag("<p class=\"unseen\" role=\"status\"").attribute("id", place.id("status")).tag("></p>");
        return html.tag("</form>").toString();
    }

    private static boolean isAnyAssumed(List<Field> fields, Map<String, String> entries, Assumed assumed) {
        for (Field field : fields) {
            if (!assumed.mark(field, entries).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** What the fold of further figures is called. */
    public static String more(int count) {
        return count == 1 ? "One more figure" : count + " more figures";
    }

    /** The inside of the summary of what needs another look: a link to each field. */
    public static String summary(Place place, List<EntryFault> faults) {
        Html html = new Html().tag("<p><strong>");
        html.tag(faults.size() == 1 ? "One entry needs another look" : faults.size() + " entries need another look");
        html.tag("</strong></p><ul>");
        for (EntryFault fault : faults) {
            html.tag("<li><a").attribute("href", "#" + place.id(fault.fieldKey())).tag(">").text(fault.message()).tag("</a></li>");
        }
        return html.tag("</ul>").toString();
    }
}
