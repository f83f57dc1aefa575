package loomwright.circuit.page;

import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.circuit.sheet.Designations;
import loomwright.markup.FieldMarkup;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.Place;
import loomwright.markup.Words;
import loomwright.units.Shown;
import loomwright.units.UnitSystem;
import loomwright.worked.Field;

/** The form of one part: what it is called, its figures, what feeds it, and what can be done with it. */
public final class PartFormMarkup {
    /** Where the form stands: every id in it begins with {@code part-}. */
    public static final Place PLACE = new Place("part", new Links(""), List.of());

    private final Circuit circuit;
    private final Part part;
    private final Map<String, String> drafts;
    private final Designations designations;
    private final UnitSystem units;
    private final Html html = new Html();

    private PartFormMarkup(Circuit circuit, Part part, Map<String, String> drafts, UnitSystem units) {
        this.units = units;
        this.circuit = circuit;
        this.part = part;
        this.drafts = drafts;
        this.designations = Designations.of(circuit);
    }

    /** The kind of part that usually comes behind one. */
    public static PartKind usualBehind(Circuit circuit, String id) {
        return NextStep.usualAfter(circuit.node(id));
    }

    /**
     * The form, filled with figures in the units of a reader; the circuit keeps them as they were typed.
     *
     * @param drafts what was typed and cannot be used, by {@code part/field}; it stands in its field as it was typed
     */
    public static String of(Circuit circuit, String id, Map<String, String> drafts, UnitSystem units) {
        return new PartFormMarkup(circuit, circuit.part(id), drafts, units).written();
    }

    /** What stands above the form: which part it is, and room for what was found for it. */
    public static String head(Circuit circuit, String id) {
        Html html = new Html().tag("<h2 id=\"part-title\" tabindex=\"-1\">").text(Designations.of(circuit).titled(id)).tag("</h2><p class=\"help\">");
        return html.text(circuit.part(id).kind().label()).tag("</p>").toString();
    }

    private String written() {
        html.tag("<p class=\"help hint\">An entry counts when you leave its field, or pause.</p>");
        html.tag("<div class=\"summary\" id=\"part-summary\" tabindex=\"-1\" hidden></div>");
        name();
        fields(true);
        if (hasMore()) {
            html.tag("<details id=\"part-more\"><summary>More figures of this part</summary>");
            fields(false);
            html.tag("</details>");
        }
        if (part.kind() != PartKind.SUPPLY) {
            choose("fed-by", "Fed by", "What stands before it on the way from the battery. All behind it moves along.", part.fedBy(), false);
        }
        if (part.kind().isTriggered() && !part.text("switching").equals("manual")) {
            choose("triggered-from", "Trigger taken from", "The part behind which its trigger wire is connected.", part.triggeredFrom(), true);
        }
        moves();
        return html.toString();
    }

    private void name() {
        String typed = draft("name", part.name());
        html.tag("<div class=\"field\" data-input=\"name\"><label for=\"part-name\">What you call it</label><p class=\"help\" id=\"part-name-help\">");
        html.tag("It stands in the drawing and on the labels.</p><div class=\"entry\"><input id=\"part-name\" name=\"name\" type=\"text\" class=\"long\"");
        html.tag(" autocomplete=\"off\" aria-describedby=\"part-name-help\"").attribute("value", typed).tag("></div></div>");
    }

    private String draft(String key, String otherwise) {
        String typed = drafts.get(part.id() + "/" + key);
        return typed == null ? otherwise : typed;
    }

    private void fields(boolean first) {
        for (Field field : part.kind().fields()) {
            if (PartFields.isAsked(part, field.key()) && PartFields.isFirst(part.kind(), field.key()) == first) {
                String text = draft(field.key(), Shown.text(units, field, part.text(field.key())));
                html.tag(FieldMarkup.of(PLACE, Shown.field(units, field, text), text));
            }
        }
    }

    private boolean hasMore() {
        for (Field field : part.kind().fields()) {
            if (PartFields.isAsked(part, field.key()) && !PartFields.isFirst(part.kind(), field.key())) {
                return true;
            }
        }
        return false;
    }

    private void choose(String key, String label, String help, String chosen, boolean orNone) {
        String id = "part-" + key;
        html.tag("<div class=\"field\"").attribute("data-input", key).tag("><label").attribute("for", id).tag(">").text(label).tag("</label>");
        html.tag("<p class=\"help\"").attribute("id", id + "-help").tag(">").text(help).tag("</p><div class=\"entry\"><select");
        html.attribute("id", id).attribute("name", key).attribute("aria-describedby", id + "-help").tag(">");
        if (orNone) {
            html.tag("<option value=\"\">nothing yet</option>");
        }
        for (Part other : circuit.parts()) {
            if (other.kind().feeds() && !other.id().equals(part.id())) {
                html.tag("<option").attribute("value", other.id()).tag(other.id().equals(chosen) ? " selected>" : ">");
                html.text(designations.titled(other.id())).tag("</option>");
            }
        }
        html.tag("</select></div></div>");
    }

    private void moves() {
        if (part.kind() == PartKind.CONDUCTOR || part.kind() == PartKind.PROTECTION) {
            html.tag("<p class=\"moves\"><button type=\"button\"").attribute("data-smallest", part.id());
            html.tag(">Smallest size that passes</button></p>");
        }
        next();
        html.tag("<div class=\"field\"><label for=\"part-kind\">Or another kind</label><div class=\"entry\"><select id=\"part-kind\">");
        PartKind usual = NextStep.usualAfter(circuit.node(part.id()));
        for (PartKind kind : PartKind.values()) {
            if (kind != PartKind.SUPPLY) {
                html.tag("<option").attribute("value", kind.key()).tag(kind == usual ? " selected>" : ">").text(kind.label()).tag("</option>");
            }
        }
        html.tag("</select></div></div><p class=\"moves\">");
        if (part.kind().feeds()) {
            button("add", "Add it behind this part");
        }
        if (part.kind() != PartKind.SUPPLY) {
            button("insert", "Put it in before this part");
            html.tag("</p><h3>Take out</h3><p class=\"moves\">");
            button("remove", "Take out this part");
            if (part.kind().feeds()) {
                button("prune", "Take it out with all behind it");
            }
        }
        html.tag("</p><p class=\"moves\">");
        button("back", "Back to the drawing");
        html.tag("</p>");
    }

    /** What usually comes next, as the first choice: the next part behind this one, or behind a load the next circuit of its panel. */
    private void next() {
        html.tag("<h3>Add the next part</h3><p class=\"moves\">");
        if (part.kind().feeds()) {
            String usual = NextStep.usualAfter(circuit.node(part.id())).label();
            html.tag("<button type=\"button\" data-does=\"next\">").text("Add behind it: " + Words.small(usual)).tag("</button> ");
            button("branch", "Add a branch behind it: fuse-link, run and load");
        } else {
            Node panel = NextStep.panelBefore(circuit.node(part.id()));
            if (panel != null) {
                html.tag("<button type=\"button\" data-does=\"branch\"").attribute("data-at", panel.id());
                html.tag(">").text("Add the next circuit at " + designations.titled(panel.id()) + ": fuse-link, run and load").tag("</button> ");
            }
        }
        html.tag("</p>");
    }

    private void button(String does, String words) {
        html.tag("<button type=\"button\" class=\"quiet\"").attribute("data-does", does).tag(">").text(words).tag("</button> ");
    }
}
