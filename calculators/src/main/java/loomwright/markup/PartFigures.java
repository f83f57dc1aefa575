package loomwright.markup;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.worked.Description;
import loomwright.worked.Field;

/**
 * Figures of one part of the reader's circuit, to be put into an example.
 *
 * @param name what the reader calls the part
 * @param entries its figures by the key of the field
 */
public record PartFigures(String name, Map<String, String> entries) {
    /** The name under which a browser keeps them for all pages of the site. */
    public static final String KEPT_AS = "loomwright-circuit-figures";

    /** The area of copper of its size: where a calculator does not ask for the kind of conductor, SAE gauge would be taken for AWG. */
    public static final String COPPER = "copper";

    private static final String NAME = "name";
    private static final String SIZE = "size";

    /** One line a part. */
    public static String write(List<PartFigures> all) {
        StringBuilder text = new StringBuilder();
        for (PartFigures each : all) {
            Map<String, String> line = new HashMap<>(each.entries);
            line.put(NAME, each.name);
            text.append(text.length() == 0 ? "" : "\n").append(Fragment.write(line));
        }
        return text.toString();
    }

    /** Reads what {@link #write} wrote, as far as it can be read. */
    public static List<PartFigures> read(String text) {
        List<PartFigures> all = new ArrayList<>();
        int from = 0;
        while (from < text.length()) {
            int end = text.indexOf('\n', from);
            int to = end < 0 ? text.length() : end;
            Map<String, String> line = new HashMap<>(Fragment.read("#" + text.substring(from, to)));
            String name = line.remove(NAME);
            if (name != null && !line.isEmpty()) {
                all.add(new PartFigures(name, line));
            }
            from = to + 1;
        }
        return all;
    }

    /** Those of its figures that a calculator asks for. */
    public Map<String, String> forFieldsOf(Description description) {
        Map<String, String> taken = new HashMap<>();
        boolean byKind = false;
        for (Field field : description.fields()) {
            byKind |= field.key().equals("conductor");
            String text = entries.get(field.key());
            if (text != null) {
                taken.put(field.key(), text);
            }
        }
        if (!byKind && taken.containsKey(SIZE) && entries.containsKey(COPPER)) {
            taken.put(SIZE, entries.get(COPPER));
        }
        return taken;
    }

    /** The choice of a part, which also says whose figures are shown; empty if no part has a figure for it. */
    public static String choice(Place place, Description description, List<PartFigures> all) {
        Html html = new Html().tag("<p class=\"own-figures\"><label").attribute("for", place.id("figures-of"));
        html.tag(">Work it with the figures of</label> <select").attribute("id", place.id("figures-of")).tag("><option value=\"\">the printed example</option>");
        boolean any = false;
        for (PartFigures each : all) {
            if (!each.forFieldsOf(description).isEmpty()) {
                any = true;
                html.tag("<option").attribute("value", each.name).tag(">").text(each.name + ", from your circuit").tag("</option>");
            }
        }
        return any ? html.tag("</select></p>").toString() : "";
    }
}
