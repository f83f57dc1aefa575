package loomwright.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.placing.CutOutLayout;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.Outcome;

/**
 * The panel the outlets go into: what was typed for the calculator of cut-outs. Whether it makes sense is for that calculator to say; here
 * it only has to be text that can be kept.
 *
 * @param texts what was typed, in the order of {@link #FIELDS}; empty for what is usual
 */
public record DrilledPanel(List<String> texts) {
    /** What is asked for a panel. */
    public static final List<Field> FIELDS = new CutOutLayout().description().fields();

    /** No panel is drilled. */
    public static final DrilledPanel NONE = of();

    private static final int LONGEST = 60;

    /** @throws CircuitRefusal if a text cannot be kept */
    public DrilledPanel {
        texts = settled(texts);
        for (int i = 0; i < FIELDS.size(); i++) {
            String fault = fault(FIELDS.get(i), texts.get(i));
            if (fault != null) {
                throw new CircuitRefusal("", FIELDS.get(i).label() + " " + fault);
            }
        }
    }

    /** A panel from texts such as {@code count=2}. */
    static DrilledPanel of(String... typed) {
        List<String> texts = new ArrayList<>();
        for (Field field : FIELDS) {
            texts.add(Typed.among(typed, field.key()));
        }
        return new DrilledPanel(texts);
    }

    /** Without what is usual, so that the same panel is always kept in the same way. */
    private static List<String> settled(List<String> typed) {
        List<String> settled = new ArrayList<>();
        for (int i = 0; i < FIELDS.size(); i++) {
            String text = Typed.settled(FIELDS.get(i), typed.get(i));
            settled.add(text.equals(FIELDS.get(i).usual()) ? "" : text);
        }
        return List.copyOf(settled);
    }

    private static String fault(Field field, String text) {
        boolean isShort = text.length() <= LONGEST;
        if (isShort && field instanceof ChoiceField choice && !text.isEmpty() && choice.option(text) == null) {
            return "is none of its choices: take one of them";
        }
        return Names.textFault(text, LONGEST);
    }

    /** Whether nothing was typed. */
    public boolean isEmpty() {
        return equals(NONE);
    }

    /** What was typed into a field, or what is usual. */
    public String text(String fieldKey) {
        int at = Typed.indexOf(FIELDS, fieldKey);
        if (at < 0) {
            return "";
        }
        String usual = FIELDS.get(at).usual();
        return !texts.get(at).isEmpty() || usual == null ? texts.get(at) : usual;
    }

    /**
     * The panel with another text in one field.
     *
     * @throws CircuitRefusal if the text cannot be kept
     */
    public DrilledPanel with(String fieldKey, String text) {
        List<String> changed = new ArrayList<>(texts);
        int at = Typed.indexOf(FIELDS, fieldKey);
        if (at >= 0) {
            changed.set(at, text);
        }
        return new DrilledPanel(changed);
    }

    /** The cut-outs worked out, or what stands in the way. */
    public Outcome outcome() {
        Map<String, String> typed = new HashMap<>();
        for (Field field : FIELDS) {
            typed.put(field.key(), text(field.key()));
        }
        return Outcome.of(new CutOutLayout(), typed);
    }
}
