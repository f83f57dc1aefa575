package loomwright.markup;

import java.util.Map;
import loomwright.quantity.QuantityText;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Field;
import loomwright.worked.Option;
import loomwright.worked.QuantityField;

/** What a worked example starts from. What is taken without being written is shown too, so that nothing is hidden. */
public final class GivenMarkup {
    private GivenMarkup() {}

    /** The block {@code div.given}. */
    public static String of(Description description, Map<String, String> given) {
        return "<div class=\"given\">" + inside("Given", description, given) + "</div>";
    }

    /** The inside of the block. */
    public static String inside(String heading, Description description, Map<String, String> given) {
        Html html = new Html().tag("<h4>").text(heading).tag("</h4><dl>");
        for (Field field : description.fields()) {
            String text = Entered.text(field, given);
            if (!text.isEmpty()) {
                html.tag("<div").attribute("data-input", field.key()).attribute("data-given", text);
                html.tag("><dt>").text(field.label()).tag("</dt><dd>");
                entry(field, text, html);
                html.tag("</dd></div>");
            }
        }
        return html.tag("</dl>").toString();
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
