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
        return of(place, field, text, null, false);
    }

    /** The field filled with {@code text}, with a place beside it that says whether it is assumed; null for a form that does not say so. */
    static String of(Place place, Field field, String text, String mark, boolean isHidden) {
        String id = place.id(field.key());
        String described = described(id, field, mark != null);
        Html html = new Html().tag("<div class=\"field\"").attribute("data-input", field.key()).tag(isHidden ? " hidden><label" : "><label");
        html.attribute("for", id).tag(">").text(label(field)).tag("</label>");
        if (!field.help().isEmpty()) {
            html.tag("<p class=\"help\"").attribute("id", id + "-help").tag(">").text(field.help()).tag("</p>");
        }
        html.tag("<div class=\"entry\">");
        if (field instanceof QuantityField quantity) {
            quantity(html, id, quantity, text, described);
        } else if (field instanceof ChoiceField choice) {
            choice(html, id, choice, text, described);
        }
        if (mark != null) {
            html.tag("<span class=\"assumed\"").attribute("id", markId(id)).tag(">").text(mark).tag("</span>");
        }
        return html.tag("</div></div>").toString();
    }

    /** The message under a field that needs another look. */
    public static String error(String inputId, String message) {
        Html html = new Html().tag("<p class=\"error\"").attribute("id", inputId + "-error");
        return html.tag("><strong>Look again:</strong> ").text(Words.sentence(message)).tag("</p>").toString();
    }

    /** The id of the place beside a field that says whether it is assumed. */
    public static String markId(String inputId) {
        return inputId + "-assumed";
    }

    private static String label(Field field) {
        boolean oneUnit = field instanceof QuantityField quantity && quantity.units().size() == 1;
        if (!oneUnit) {
            return field.label();
        }
        String symbol = ((QuantityField) field).units().get(0).symbol();
        return symbol.isEmpty() ? field.label() : field.label() + ", in\u00a0" + symbol;
    }

    private static void quantity(Html html, String id, QuantityField field, String text, String described) {
        TypedQuantity typed = TypedQuantity.of(text);
        boolean apart = typed.unit() != null && (field.units().size() > 1 || field.units().contains(typed.unit()));
        boolean gauge = field.units().contains(Units.AWG);
        html.tag("<input").attribute("id", id).attribute("name", field.key());
        html.tag(" type=\"text\" inputmode=\"" + (gauge ? "text" : "decimal") + "\" autocomplete=\"off\" spellcheck=\"false\"");
        html.attribute("value", apart ? typed.number() : text);
        describedBy(html, described);
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

    private static void choice(Html html, String id, ChoiceField field, String text, String described) {
        html.tag("<select").attribute("id", id).attribute("name", field.key());
        describedBy(html, described);
        html.tag(">");
        for (Option option : field.options()) {
            html.tag("<option").attribute("value", option.key()).tag(option.key().equals(text) ? " selected>" : ">");
            html.text(option.label()).tag("</option>");
        }
        html.tag("</select>");
    }

    private static String described(String id, Field field, boolean marked) {
        String help = field.help().isEmpty() ? "" : id + "-help";
        return marked ? (help + " " + markId(id)).strip() : help;
    }

    private static void describedBy(Html html, String described) {
        if (!described.isEmpty()) {
            html.attribute("aria-describedby", described);
        }
    }
}
