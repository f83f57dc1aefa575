package loomwright.markup;

import java.util.List;
import java.util.Map;
import loomwright.worked.Description;
import loomwright.worked.EntryFault;
import loomwright.worked.Field;

/** The form that takes the reader's own figures. */
public final class FormMarkup {
    private FormMarkup() {}

    /** The form, filled with {@code entries} and with what is taken where there is none. */
    public static String of(Place place, Description description, Map<String, String> entries, Assumed assumed) {
        Html html = new Html().tag("<form class=\"try\" novalidate");
        html.attribute("aria-labelledby", place.id("try") + " " + place.id("title")).tag("><h4");
        html.attribute("id", place.id("try")).tag(">Put in your own figures</h4><div class=\"summary\"");
        html.attribute("id", place.id("summary")).tag(" tabindex=\"-1\" hidden></div>");
        fields(html, place, description.fields(), entries, assumed);
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

    /** All fields in order. Loads or ports that are not in use wait in a fold, so that the form is no longer than the example. */
    private static void fields(Html html, Place place, List<Field> fields, Map<String, String> entries, Assumed assumed) {
        boolean folded = false;
        FieldGroup group;
        for (int at = 0; at < fields.size(); at = group.to()) {
            group = FieldGroup.at(fields, at);
            boolean folds = group.isEmpty(fields, entries) && !group.isFirst();
            if (folds && !folded) {
                html.tag("<details class=\"unused\"><summary>").text(group.name()).tag(" and on, if you need it</summary>");
            } else if (!folds && folded) {
                html.tag("</details>");
            }
            folded = folds;
            for (int i = at; i < group.to(); i++) {
                Field field = fields.get(i);
                html.tag(FieldMarkup.of(place, field, Entered.text(field, entries), assumed.mark(field, entries)));
            }
        }
        html.tag(folded ? "</details>" : "");
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
