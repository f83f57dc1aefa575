package loomwright.markup;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.Option;
import loomwright.worked.QuantityField;

/** One field of the form. */
public final class FieldMarkup {
    private FieldMarkup() {}

    /** The field filled with {@code text}. */
    public static String of(Place place, Field field, String text) {
        String id = place.id(field.key());
        Html html = new Html().tag("<div class=\"field\"").attribute("data-input", field.key()).tag("><label");
        html.attribute("for", id).tag(">").text(label(field)).tag("</label>");
        if (!field.help().isEmpty()) {
            html.tag("<p class=\"help\"").attribute("id", id + "-help").tag(">").text(field.help()).tag("</p>");
        }
        html.tag("<div class=\"entry\">");
        if (field instanceof QuantityField quantity) {
            quantity(html, id, quantity, text);
        } else if (field instanceof ChoiceField choice) {
            choice(html, id, choice, text);
        }
        return html.tag("</div></div>").toString();
    }

    /** The message under a field that needs another look. */
    public static String error(String inputId, String message) {
        Html html = new Html().tag("<p class=\"error\"").attribute("id", inputId + "-error");
        return html.tag("><strong>Look again:</strong> ").text(Words.sentence(message)).tag("</p>").toString();
    }

    private static String label(Field field) {
        boolean oneUnit = field instanceof QuantityField quantity && quantity.units().size() == 1;
        if (!oneUnit) {
            return field.label();
        }
        String symbol = ((QuantityField) field).units().get(0).symbol();
        return symbol.isEmpty() ? field.label() : field.label() + ", in " + symbol;
    }

    private static void quantity(Html html, String id, QuantityField field, String text) {
        TypedQuantity typed = TypedQuantity.of(text);
        boolean apart = typed.unit() != null && (field.units().size() > 1 || field.units().contains(typed.unit()));
        boolean gauge = field.units().contains(Units.AWG);
        html.tag("<input").attribute("id", id).attribute("name", field.key());
        html.tag(" type=\"text\" inputmode=\"" + (gauge ? "text" : "decimal") + "\" autocomplete=\"off\" spellcheck=\"false\"");
        html.attribute("value", apart ? typed.number() : text);
        describedBy(html, id, field);
        html.tag(">");
        if (field.units().size() > 1) {
            unitSelect(html, id + "-unit", "Unit of " + Words.small(field.label()), field.units(), typed.unit());
        }
    }

    static void unitSelect(Html html, String id, String label, List<Unit> offered, Unit chosen) {
        List<Unit> units = new ArrayList<>(offered);
        if (chosen != null && isSameKind(chosen, offered) && !units.contains(chosen)) {
            units.add(chosen);
        }
        html.tag("<select").attribute("id", id).attribute("aria-label", label).tag(">");
        for (Unit unit : units) {
            html.tag(unit == chosen ? "<option selected>" : "<option>").text(unit.symbol()).tag("</option>");
        }
        html.tag("</select>");
    }

    private static boolean isSameKind(Unit chosen, List<Unit> offered) {
        for (Unit unit : offered) {
            if (unit.dimension().equals(chosen.dimension())) {
                return true;
            }
        }
        return false;
    }

    private static void choice(Html html, String id, ChoiceField field, String text) {
        html.tag("<select").attribute("id", id).attribute("name", field.key());
        describedBy(html, id, field);
        html.tag(">");
        for (Option option : field.options()) {
            html.tag("<option").attribute("value", option.key()).tag(option.key().equals(text) ? " selected>" : ">");
            html.text(option.label()).tag("</option>");
        }
        html.tag("</select>");
    }

    private static void describedBy(Html html, String id, Field field) {
        if (!field.help().isEmpty()) {
            html.attribute("aria-describedby", id + "-help");
        }
    }
}
