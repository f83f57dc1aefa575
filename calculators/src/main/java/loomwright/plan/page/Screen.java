package loomwright.plan.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.plan.Answers;
import loomwright.plan.JobTexts;
import loomwright.plan.PlanFields;
import loomwright.worked.Field;

/**
 * One screen of questions, or the plan at the end.
 *
 * @param kind what it is about
 * @param item the thing it asks about, counted from 0; {@link Answers#JOB} if it is about all
 */
public record Screen(Kind kind, int item) {
    /** What a screen is about. */
    public enum Kind {
        THING("What do you fit?", "kind", "how-many"),
        TAKES("What does it take?", "draws", "hours", "start", "most-device"),
        WAY("Which way does its cable go?", "route", "place", "beside", "sheath"),
        FEED("Where is it fed from?", "feed", "free-ways", "panel-limit", "present-load", "feed-rating", "feed-size", "feed-route", "box-route"),
        BATTERY("Which battery?", "chemistry", "capacity", "short-circuit-current", "battery-limit"),
        SUN("What charges it, and how long must it last?", "panel-power", "peak-sun-hours", "days-wanted"),
        REST("What is it, and must it have a switch?", "craft", "cable", "switched", "switch-route"),
        PLAN("Your plan");

        private final String title;
        private final List<String> keys;

        Kind(String title, String... keys) {
            this.title = title;
            this.keys = List.of(keys);
        }
    }

    /** All screens of a job, in order. */
    public static List<Screen> of(JobTexts texts) {
        List<Screen> screens = new ArrayList<>();
        for (int i = 0; i < texts.items(); i++) {
            screens.add(new Screen(Kind.THING, i));
            screens.add(new Screen(Kind.TAKES, i));
            screens.add(new Screen(Kind.WAY, i));
        }
        screens.add(new Screen(Kind.FEED, Answers.JOB));
        screens.add(new Screen(Kind.BATTERY, Answers.JOB));
        screens.add(new Screen(Kind.SUN, Answers.JOB));
        screens.add(new Screen(Kind.REST, Answers.JOB));
        screens.add(new Screen(Kind.PLAN, Answers.JOB));
        return screens;
    }

    /** The screen of a question; the first of them if there is none. */
    public static Screen asking(JobTexts texts, int item, String key) {
        int about = item == Answers.JOB && field(PlanFields.JOB, key) == null ? 0 : item;
        for (Screen screen : of(texts)) {
            if (screen.item == about && screen.kind.keys.contains(key)) {
                return screen;
            }
        }
        return of(texts).get(0);
    }

    private static Field field(List<Field> fields, String key) {
        for (Field field : fields) {
            if (field.key().equals(key)) {
                return field;
            }
        }
        return null;
    }

    /** Its heading; of several things it says which. */
    public String title(JobTexts texts) {
        boolean several = texts.items() > 1 && item != Answers.JOB;
        return several ? kind.title + " Thing " + (item + 1) + " of " + texts.items() : kind.title;
    }

    /** The questions that apply, by what was answered before. */
    public List<Field> fields(JobTexts texts) {
        List<Field> all = item == Answers.JOB ? PlanFields.JOB : PlanFields.ITEM;
        List<Field> fields = new ArrayList<>();
        for (String key : kind.keys) {
            if (applies(texts, key)) {
                fields.add(field(all, key));
            }
        }
        return fields;
    }

    private boolean applies(JobTexts texts, String key) {
        return switch (key) {
            case "start" -> PlanFields.mayStart(texts.text(item, field(PlanFields.ITEM, "kind")));
            case "free-ways", "panel-limit", "present-load", "feed-rating", "feed-size", "feed-route" -> job(texts, "feed").equals("panel");
            case "box-route" -> !job(texts, "feed").equals("panel") && (texts.items() > 1 || !count(texts).equals("1"));
            case "switch-route" -> job(texts, "switched").equals("yes");
            default -> true;
        };
    }

    private static String job(JobTexts texts, String key) {
        return texts.text(Answers.JOB, field(PlanFields.JOB, key));
    }

    private static String count(JobTexts texts) {
        return texts.text(0, field(PlanFields.ITEM, "how-many"));
    }
}
