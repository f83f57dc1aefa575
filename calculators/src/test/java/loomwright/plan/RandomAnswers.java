package loomwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;

/** Answers of many kinds from a seed: sensible ones, bold ones, and questions left open. */
final class RandomAnswers {
    private final Random random;

    private RandomAnswers(long seed) {
        this.random = new Random(seed);
    }

    static Asked of(long seed) {
        return new RandomAnswers(seed).asked();
    }

    private Asked asked() {
        boolean panel = random.nextInt(3) == 0;
        List<String> job = new ArrayList<>();
        choices(PlanFields.JOB, job);
        if (panel) {
            job.removeIf(text -> text.startsWith("feed="));
            job.add("feed=panel");
        }
        maybe(job, "free-ways", random.nextInt(8) + "", panel ? 95 : 30);
        maybe(job, "panel-limit", one("20 A", "30 A", "50 A", "100 A"), panel ? 95 : 30);
        maybe(job, "present-load", one("0 A", "2 A", "5 A", "9.5 A", "20 A"), panel ? 95 : 30);
        maybe(job, "feed-rating", one("10 A", "20 A", "30 A", "40 A", "60 A"), panel ? 95 : 30);
        maybe(job, "feed-size", one("2.5 mm²", "4 mm²", "6 mm²", "10 mm²", "16 mm²", "5 mm²", "10 AWG", "6 AWG", "25 mm²"), panel ? 95 : 30);
        maybe(job, "feed-route", length(5), panel ? 95 : 30);
        maybe(job, "box-route", length(6), 60);
        maybe(job, "capacity", one("7 Ah", "20 Ah", "60 Ah", "100 Ah", "200 Ah", "400 Ah"), 80);
        maybe(job, "short-circuit-current", one("300 A", "1200 A", "2400 A", "5000 A", "15 kA", "30 kA"), 25);
        maybe(job, "battery-limit", one("10 A", "30 A", "50 A", "100 A"), 25);
        maybe(job, "panel-power", one("20 W", "100 W", "400 W"), 40);
        maybe(job, "peak-sun-hours", one("1 h", "3 h", "5 h"), 40);
        maybe(job, "days-wanted", one("1 d", "2 d", "5 d"), 40);
        maybe(job, "switch-route", length(8), 50);
        Asked asked = Asked.job(job.toArray(new String[0]));
        int items = 1 + random.nextInt(random.nextInt(4) == 0 ? 6 : 3);
        for (int i = 0; i < items; i++) {
            asked.item(item());
        }
        return asked;
    }

    private String[] item() {
        List<String> item = new ArrayList<>();
        choices(PlanFields.ITEM, item);
        boolean usb = item.contains("kind=usb");
        maybe(item, "how-many", 1 + random.nextInt(random.nextInt(4) == 0 ? 4 : 2) + "", 60);
        String watts = bold() ? one("150 W", "240 W", "500 W") : one("0.5 W", "5 W", "12 W", "24 W", "36 W", "60 W", "90 W");
        maybe(item, "draws", usb || random.nextBoolean() ? watts : bold() ? one("12 A", "20 A", "45 A") : one("0.1 A", "1 A", "2.2 A", "3.3 A", "5 A", "8 A"), 80);
        maybe(item, "hours", one("0 h", "0.5 h", "2 h", "3 h", "8 h", "24 h"), 60);
        maybe(item, "start", one("2 A", "15 A", "40 A", "120 A"), 15);
        maybe(item, "most-device", bold() ? one("2 A", "5 A") : one("10 A", "15 A", "20 A"), 30);
        maybe(item, "route", length(random.nextInt(6) == 0 ? 40 : 8), 85);
        return item.toArray(new String[0]);
    }

    private boolean bold() {
        return random.nextInt(8) == 0;
    }

    private void choices(List<Field> fields, List<String> texts) {
        for (Field field : fields) {
            if (field instanceof ChoiceField choice) {
                texts.add(field.key() + "=" + choice.options().get(random.nextInt(choice.options().size())).key());
            }
        }
    }

    private void maybe(List<String> texts, String key, String text, int percent) {
        if (random.nextInt(100) < percent) {
            texts.add(key + "=" + text);
        }
    }

    private String one(String... texts) {
        return texts[random.nextInt(texts.length)];
    }

    /** Up to about so many metres, sometimes in feet. */
    private String length(int most) {
        int tenths = 3 + random.nextInt(10 * most);
        return random.nextInt(5) == 0 ? tenths / 3 + 1 + " ft" : tenths / 10 + "." + tenths % 10 + " m";
    }
}
