package loomwright.browser;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import loomwright.markup.Assumed;
import loomwright.markup.FieldMarkup;
import loomwright.markup.Place;
import loomwright.worked.Description;
import loomwright.worked.Field;
import org.teavm.jso.dom.html.HTMLDocument;

/** Which entries of an example neither its story nor the reader gave. They are marked beside their fields and can be emptied together. */
final class AssumedEntries {
    private final HTMLDocument document;
    private final Place place;
    private final Description description;
    private final Assumed assumed;
    /** What the example was printed with; what is missing there was its usual value. */
    private final Map<String, String> said;
    private final Set<String> typed = new HashSet<>();
    private final Set<String> emptied = new HashSet<>();

    AssumedEntries(HTMLDocument document, Place place, Description description, Assumed assumed, Map<String, String> said) {
        this.document = document;
        this.place = place;
        this.description = description;
        this.assumed = assumed;
        this.said = said;
    }

    /** From now on the entry is the reader's. */
    void typed(Field field, String text) {
        typed.add(field.key());
        mark(field, text);
    }

    /** A word beside a field, until the field changes. */
    void note(Field field, String words) {
        document.getElementById(FieldMarkup.markId(place.id(field.key()))).setTextContent(words);
    }

    /** From now on all entries are as they were printed. */
    void asPrinted(Map<String, String> texts) {
        typed.clear();
        emptied.clear();
        for (Field field : description.fields()) {
            mark(field, texts.get(field.key()));
        }
    }

    /** Whether the reader would have to give the entry, were it not assumed. */
    boolean isAssumed(Field field) {
        return !typed.contains(field.key()) && (isUsual(field) || !assumed.lender().isEmpty());
    }

    /** From now on the entry is what is taken when nobody says anything; {@code text} is what its field shows of that. */
    void emptied(Field field, String text) {
        emptied.add(field.key());
        mark(field, text);
    }

    /** What the calculator is to read: nothing where the usual value only stands in the field so that it can be seen. */
    String read(Field field, String text) {
        return !typed.contains(field.key()) && isUsual(field) ? "" : text;
    }

    /** The reader's own of these entries. */
    Map<String, String> own(Map<String, String> entries) {
        Map<String, String> own = new HashMap<>();
        for (String key : typed) {
            own.put(key, entries.get(key));
        }
        return own;
    }

    private boolean isUsual(Field field) {
        return emptied.contains(field.key()) || !said.containsKey(field.key());
    }

    private void mark(Field field, String text) {
        String words;
        if (text.isBlank()) {
            words = Assumed.empty(field);
        } else if (typed.contains(field.key())) {
            words = "";
        } else {
            words = isUsual(field) ? Assumed.usual(field) : assumed.lent();
        }
        document.getElementById(FieldMarkup.markId(place.id(field.key()))).setTextContent(words);
    }
}
