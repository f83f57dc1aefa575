package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.ArrayList;
import java.util.List;
import loomwright.worked.Field;

/** Answers in a test, each {@code field=text}. */
final class Asked {
    private static final String[] SHORT = {"hours=0.5 h", "route=2 m", "place=inside", "beside=alone", "sheath=single"};

    private final List<String> job;
    private final List<List<String>> items = new ArrayList<>();

    private Asked(List<String> job) {
        this.job = job;
    }

    static Asked job(String... typed) {
        return new Asked(texts(PlanFields.JOB, typed));
    }

    /** Two lists of answers as one. */
    static String[] with(String[] some, String... more) {
        List<String> all = new ArrayList<>(List.of(some));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    /** A thing on a short run of its own, beside no other, on for half an hour. */
    static String[] thing(String... said) {
        return with(SHORT, said);
    }

    Asked item(String... typed) {
        items.add(texts(PlanFields.ITEM, typed));
        return this;
    }

    Answers.Read read() {
        return Answers.read(job, items);
    }

    Answers answers() {
        Answers.Read read = read();
        if (read.answers() == null) {
            throw new AssertionError(read.faults());
        }
        return read.answers();
    }

    Plan plan() {
        return Plan.of(answers());
    }

    /** A plan that ends in a circuit. */
    static Plan made(Asked asked) {
        Plan plan = asked.plan();
        assertNotNull(plan.circuit(), () -> String.valueOf(plan.obstacle()));
        return plan;
    }

    @Override
    public String toString() {
        return job + " " + items;
    }

    private static List<String> texts(List<Field> fields, String[] typed) {
        List<String> texts = new ArrayList<>();
        int found = 0;
        for (Field field : fields) {
            String text = "";
            for (String one : typed) {
                if (one.startsWith(field.key() + "=")) {
                    text = one.substring(field.key().length() + 1);
                    found++;
                }
            }
            texts.add(text);
        }
        if (found != typed.length) {
            throw new AssertionError("no such field among " + List.of(typed));
        }
        return texts;
    }
}
