package loomwright.markup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.worked.Field;

/**
 * The fields of a form in the order in which they are looked at: the figures of the story; then, folded under their count, what is taken
 * where nobody said anything; then, folded too, loads or ports that are not in use. What does not belong to the way chosen is hidden.
 */
final class FormFields {
    private final Place place;
    private final Map<String, String> entries;
    private final Assumed assumed;
    private final Absent absent;

    FormFields(Place place, Map<String, String> entries, Assumed assumed, Absent absent) {
        this.place = place;
        this.entries = entries;
        this.assumed = assumed;
        this.absent = absent;
    }

    void write(Html html, List<Field> fields) {
        List<Field> others = new ArrayList<>();
        List<Field> unused = new ArrayList<>();
        String unusedName = "";
        FieldGroup group;
        for (int at = 0; at < fields.size(); at = group.to()) {
            group = FieldGroup.at(fields, at);
            boolean isUnused = group.isEmpty(fields, entries) && !group.isFirst();
            unusedName = isUnused && unusedName.isEmpty() ? group.name() : unusedName;
            for (int i = at; i < group.to(); i++) {
                if (isUnused) {
                    unused.add(fields.get(i));
                } else if (isFirst(fields.get(i))) {
                    field(html, fields.get(i));
                } else {
                    others.add(fields.get(i));
                }
            }
        }
        fold(html, "others", FormMarkup.more(count(others)), others);
        fold(html, "unused", unusedName + " and on, if you need it", unused);
    }

    /** Whether the story says it; of lent figures those that are not the usual ones. A calculator by itself has no story: there all stand first. */
    private boolean isFirst(Field field) {
        boolean isLentAsUsual = !assumed.lender().isEmpty() && Entered.text(field, entries).equals(field.usual());
        return entries.isEmpty() || !Assumed.isUnsaid(field, entries) && !isLentAsUsual;
    }

    private int count(List<Field> fields) {
        int count = 0;
        for (Field field : fields) {
            count += absent.has(field.key()) ? 0 : 1;
        }
        return count;
    }

    private void fold(Html html, String name, String summary, List<Field> fields) {
        if (!fields.isEmpty()) {
            html.tag("<details class=\"" + name + "\"" + (count(fields) == 0 ? " hidden" : "") + "><summary>").text(summary).tag("</summary>");
            for (Field field : fields) {
                field(html, field);
            }
            html.tag("</details>");
        }
    }

    private void field(Html html, Field field) {
        html.tag(FieldMarkup.of(place, field, Entered.text(field, entries), assumed.mark(field, entries), absent.has(field.key())));
    }
}
