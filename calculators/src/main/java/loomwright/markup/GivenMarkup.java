package loomwright.markup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.quantity.QuantityText;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Field;
import loomwright.worked.Option;
import loomwright.worked.Pairs;
import loomwright.worked.QuantityField;

/**
 * What a worked example starts from. What is taken without being written is shown too, so that nothing is hidden; only a load or a port
 * that is not in use is left out.
 */
public final class GivenMarkup {
    private GivenMarkup() {}

    /** The block {@code div.given} of an example with a story of its own. */
    public static String of(Description description, Map<String, String> given) {
        return of(description, given, Assumed.OWN_STORY, Absent.NONE);
    }

    /** The block {@code div.given}, without what does not belong to the way chosen. */
    public static String of(Description description, Map<String, String> given, Assumed assumed, Absent absent) {
        return "<div class=\"given\">" + inside("Given", description, given, Pairs.of(), assumed, absent) + "</div>";
    }

    /**
     * The inside of the block.
     *
     * @param own what the reader typed, of {@code given}
     */
    public static String inside(
            String heading, Description description, Map<String, String> given, Map<String, String> own, Assumed assumed, Absent absent) {
        Html html = new Html().tag("<h4>").text(heading).tag("</h4><dl>");
        List<Field> fields = description.fields();
        FieldGroup group;
        for (int at = 0; at < fields.size(); at = group.to()) {
            group = FieldGroup.at(fields, at);
            if (!group.isEmpty(fields, given)) {
                for (int i = at; i < group.to(); i++) {
                    if (absent.has(fields.get(i).key()) && Assumed.isUnsaid(fields.get(i), given)) {
                        continue;
                    }
                    line(fields.get(i), given, own.containsKey(fields.get(i).key()) ? Assumed.OWN_STORY : assumed, html);
                }
            }
        }
        return html.tag("</dl>").toString();
    }

    /** The lines of the block as plain text: label and entry. */
    public static List<String> lines(Description description, Map<String, String> given, Absent absent) {
        List<String> lines = new ArrayList<>();
        List<Field> fields = description.fields();
        FieldGroup group;
        for (int at = 0; at < fields.size(); at = group.to()) {
            group = FieldGroup.at(fields, at);
            for (int i = at; i < group.to() && !group.isEmpty(fields, given); i++) {
                String text = Entered.text(fields.get(i), given);
                Option option = fields.get(i) instanceof ChoiceField choice ? choice.option(text) : null;
                if (!text.isEmpty() && !(absent.has(fields.get(i).key()) && Assumed.isUnsaid(fields.get(i), given))) {
                    lines.add(fields.get(i).label() + " " + (option == null ? text : option.label()));
                }
            }
        }
        return lines;
    }

    private static void line(Field field, Map<String, String> given, Assumed assumed, Html html) {
        String text = Entered.text(field, given);
        if (!text.isEmpty()) {
            String mark = assumed.mark(field, given);
            html.tag("<div").attribute("data-input", field.key()).attribute("data-given", text);
            html.tag(Assumed.isUnsaid(field, given) ? " data-unsaid" : "").tag("><dt>").text(field.label()).tag("</dt><dd>");
            entry(field, text, html);
            html.tag(mark.isEmpty() ? "" : " <span class=\"assumed\">").text(mark).tag(mark.isEmpty() ? "" : "</span>");
            html.tag("</dd></div>");
        }
    }

    private static void entry(Field field, String text, Html html) {
        if (field instanceof QuantityField quantityField) {
            QuantityText.Reading reading = QuantityText.read(text, quantityField.units().get(0));
            html.tag("<span class=\"value\">");
            html.text(reading.quantity() == null ? text : reading.quantity().text()).tag("</span>");
        } else if (field instanceof ChoiceField choice) {
            Option option = choice.option(text);
            html.text(option == null ? text : option.label());
        }
    }
}
