package loomwright.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.markup.Fragment;
import loomwright.units.UnitSystem;
import loomwright.worked.Field;

/** The answers as they were typed, whether they can be used or not. They change while a reader types, and are kept and linked to as one text. */
public final class JobTexts {
    private static final int LONGEST = 60;

    private final Map<String, String> job = new HashMap<>();
    private final List<Map<String, String>> items = new ArrayList<>();

    private JobTexts() {}

    /** Nothing answered: one thing to fit, with cable as it is sold in the world of a reader. */
    public static JobTexts fresh(UnitSystem units) {
        JobTexts texts = new JobTexts();
        texts.items.add(new HashMap<>());
        texts.sold(units);
        return texts;
    }

    /** Cable is asked for as it is sold there. */
    public void sold(UnitSystem units) {
        put(Answers.JOB, "cable", units == UnitSystem.AMERICAN ? "awg" : "mm2");
    }

    /** How many things there are. */
    public int items() {
        return items.size();
    }

    /** What was typed; what is usual of a choice that nobody made. */
    public String text(int item, Field field) {
        String text = (item == Answers.JOB ? job : items.get(item)).get(field.key());
        return text != null ? text : field.usual() == null ? "" : field.usual();
    }

    public void put(int item, String key, String text) {
        (item == Answers.JOB ? job : items.get(item)).put(key, text);
    }

    /** One more thing to fit, at the end. */
    public void add() {
        items.add(new HashMap<>());
    }

    /** One thing less; the last one stays, emptied. */
    public void remove(int item) {
        items.remove(item);
        if (items.isEmpty()) {
            add();
        }
    }

    public Answers.Read answers() {
        List<List<String>> all = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            all.add(texts(i, PlanFields.ITEM));
        }
        return Answers.read(texts(Answers.JOB, PlanFields.JOB), all);
    }

    private List<String> texts(int item, List<Field> fields) {
        List<String> texts = new ArrayList<>();
        for (Field field : fields) {
            texts.add(text(item, field));
        }
        return texts;
    }

    /** As one text for a link or to be kept: {@code feed=panel} of the job, {@code 0.draws=12 W} of the first thing. What is as usual is left out. */
    public String written() {
        Map<String, String> entries = new HashMap<>();
        put(entries, Answers.JOB, PlanFields.JOB, "");
        for (int i = 0; i < items.size(); i++) {
            put(entries, i, PlanFields.ITEM, i + ".");
            // A thing of which nothing was said is there nevertheless.
            entries.put(i + ".kind", text(i, PlanFields.ITEM.get(0)));
        }
        return Fragment.write(entries);
    }

    private void put(Map<String, String> entries, int item, List<Field> fields, String opening) {
        for (Field field : fields) {
            String text = text(item, field);
            if (!text.equals(field.usual() == null ? "" : field.usual())) {
                entries.put(opening + field.key(), text);
            }
        }
    }

    /** The answers in a text; whatever is no answer to a question here is left out. Null if there is none at all. */
    public static JobTexts read(String written) {
        Map<String, String> entries = Fragment.read(written);
        JobTexts texts = new JobTexts();
        for (int i = 0; i < Answers.MOST_ITEMS && entries.containsKey(i + ".kind"); i++) {
            texts.items.add(new HashMap<>());
            texts.take(entries, i, PlanFields.ITEM, i + ".");
        }
        texts.take(entries, Answers.JOB, PlanFields.JOB, "");
        return texts.items.isEmpty() ? null : texts;
    }

    private void take(Map<String, String> entries, int item, List<Field> fields, String opening) {
        for (Field field : fields) {
            String text = entries.get(opening + field.key());
            if (text != null && text.length() <= LONGEST) {
                put(item, field.key(), text);
            }
        }
    }
}
