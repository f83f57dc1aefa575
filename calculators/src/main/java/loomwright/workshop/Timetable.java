package loomwright.workshop;

import java.util.ArrayList;
import java.util.List;

/** The hours of a day: what fits is held, from what nobody may leave out to what is good to have; time that is left lengthens what is short. */
public final class Timetable {
    /** Least hours: what may not be left out fits into them. */
    public static final int LEAST_HOURS = 3;
    /** Most hours; hands and heads are tired after them. */
    public static final int MOST_HOURS = 9;

    private static final int START = 9 * 60;
    private static final int SHORT_BREAK = 15;
    private static final int LUNCH = 50;
    private static final int SLICE = 5;
    /** From so many hours on there is a lunch and a second break. */
    private static final int LUNCH_FROM = 6;

    /**
     * One line of the plan.
     *
     * @param from minutes after midnight
     * @param minutes how long it takes
     * @param words what is done
     * @param lesson the end of the key of the lesson it belongs to, or an empty text
     * @param how who does it with whom
     */
    public record Line(int from, int minutes, String words, String lesson, String how) {
        /** The time of the day it begins, such as {@code 09:10}. */
        public String time() {
            return twoDigits(from / 60) + ":" + twoDigits(from % 60);
        }

        private static String twoDigits(int number) {
            return (number < 10 ? "0" : "") + number;
        }
    }

    private Timetable() {}

    /** The plan of so many hours, breaks included, from nine o'clock on. */
    public static List<Line> of(int hours) {
        boolean lunch = hours >= LUNCH_FROM;
        int left = hours * 60 - (lunch ? LUNCH + 2 * SHORT_BREAK : SHORT_BREAK);
        Activity[] all = Activity.values();
        int[] minutes = new int[all.length];
        for (int rank = 1; rank <= 6; rank++) {
            for (Activity activity : all) {
                if (activity.rank == rank && left >= activity.least) {
                    minutes[activity.ordinal()] = activity.least;
                    left -= activity.least;
                }
            }
        }
        left = lengthened(all, minutes, left);
        return lines(all, minutes, left, lunch);
    }

    /** Gives a few minutes to each in turn, up to what it usually takes; says what is left then. */
    private static int lengthened(Activity[] all, int[] minutes, int spare) {
        int left = spare;
        boolean given = true;
        while (given && left >= SLICE) {
            given = false;
            for (Activity activity : all) {
                int has = minutes[activity.ordinal()];
                if (has > 0 && has < activity.usual && left >= SLICE) {
                    minutes[activity.ordinal()] += SLICE;
                    left -= SLICE;
                    given = true;
                }
            }
        }
        return left;
    }

    private static List<Line> lines(Activity[] all, int[] minutes, int left, boolean lunch) {
        List<Line> lines = new ArrayList<>();
        int at = START;
        for (Activity activity : all) {
            int takes = minutes[activity.ordinal()];
            if (activity == Activity.CLOSE && left > 0) {
                lines.add(new Line(at, left, "Time in hand: for what took longer, and for questions", "", "all"));
                at += left;
            }
            if (takes > 0) {
                lines.add(new Line(at, takes, activity.words, activity.lesson, activity.how));
                at += takes;
            }
            String pause = pause(activity, lunch);
            if (!pause.isEmpty()) {
                int length = pause.startsWith("Lunch") ? LUNCH : SHORT_BREAK;
                lines.add(new Line(at, length, pause, "", ""));
                at += length;
            }
        }
        return lines;
    }

    /** The break behind an activity, or an empty text. */
    private static String pause(Activity activity, boolean lunch) {
        if (activity == Activity.FUSE) {
            return lunch ? "Lunch. Supplies off, key with the leader" : "Break; wash hands";
        }
        if (lunch && activity == Activity.AMPERES) {
            return "Break; wash hands";
        }
        return lunch && activity == Activity.JOINTS ? "Break; sweep up strands and filings" : "";
    }
}
