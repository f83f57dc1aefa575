package loomwright.plan;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.worked.Entries;

/**
 * The whole job as answered, with careful values for what was left open.
 *
 * @param needs the loads, each with its run
 * @param panel the panel that is there already; null if nothing is put on it
 * @param cables what it may be wired with
 * @param taken the careful values
 */
record Job(
        Answers answers, List<Need> needs, Battery battery, Feeding panel, Cables cables, boolean switched, Quantity boxRoute, Quantity switchRoute,
        List<Taken> taken) {
    static final int MOST_BRANCHES = 12;

    static Job of(Answers answers) {
        List<Taken> taken = new ArrayList<>();
        Entries job = answers.job();
        List<Need> needs = Wanted.of(answers, taken);
        taken.replaceAll(each -> each.of(answers));
        Battery battery = Battery.of(job, taken);
        boolean switched = job.choice("switched").equals("yes");
        Feeding panel = Feeding.of(job);
        noteFeed(job, taken);
        if (job.choice("switched").equals(PlanFields.NOT_KNOWN)) {
            taken.add(new Taken(Answers.JOB, "switched", "Nobody asked for a switch of its own: the isolating switch near the battery makes it dead.", "common practice"));
        }
        Quantity box = length(job, "box-route", Careful.boxRoute(job), panel == null && needs.size() > 1, taken);
        Quantity toSwitch = length(job, "switch-route", Careful.switchRoute(job), switched, taken);
        return new Job(answers, needs, battery, panel, new Cables(job.choice("cable").equals("awg")), switched, box, toSwitch, List.copyOf(taken));
    }

    private static void noteFeed(Entries job, List<Taken> taken) {
        String feed = job.choice("feed");
        String missing = Feeding.missing(job);
        if (feed.equals(PlanFields.NOT_KNOWN)) {
            taken.add(new Taken(Answers.JOB, "feed", "Nobody said where it is fed from: it gets a circuit of its own from the battery, which asks nothing of what is there.", "common practice"));
        } else if (feed.equals("panel") && missing != null) {
            taken.add(new Taken(
                    Answers.JOB, missing, "Not all is known of the panel and its feed, so nothing more is put on it: it gets a circuit of its own from the battery.",
                    "common practice"));
        }
    }

    private static Quantity length(Entries job, String key, Quantity careful, boolean matters, List<Taken> taken) {
        if (job.has(key)) {
            return job.quantity(key);
        }
        if (matters) {
            String what = key.equals("box-route") ? "how far the new fuse box is from the battery" : "how far the switch is";
            taken.add(new Taken(Answers.JOB, key, "Nobody said " + what + ": " + careful.text() + " is taken. Measure before you buy.", "invented"));
        }
        return careful;
    }

    /** The same job with a circuit of its own from the battery. */
    Job withoutPanel() {
        List<Taken> more = new ArrayList<>(taken);
        Quantity box = length(answers.job(), "box-route", Careful.boxRoute(answers.job()), needs.size() > 1, more);
        return new Job(answers, needs, battery, null, cables, switched, box, switchRoute, List.copyOf(more));
    }

    /** How far the first device is from the battery. */
    Quantity lead() {
        return Careful.lead(answers.job());
    }

    boolean byGauge() {
        return cables.byGauge();
    }

    /** The largest currents of all loads added up, in amperes. */
    double amperes() {
        double all = 0;
        for (Need need : needs) {
            all += need.amperes();
        }
        return all;
    }

    /** What all loads draw at least when they draw most, added up, in amperes. */
    double keptAmperes() {
        double all = 0;
        for (Need need : needs) {
            all += need.keptAmperes();
        }
        return all;
    }

    /** The least that may be lost on the way to any of them, in volts. */
    double strictestVolts() {
        double least = Double.POSITIVE_INFINITY;
        for (Need need : needs) {
            least = Math.min(least, need.allowedVolts());
        }
        return least;
    }
}
