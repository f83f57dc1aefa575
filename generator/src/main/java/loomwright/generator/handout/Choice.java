package loomwright.generator.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.UserMistake;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Question;
import loomwright.handout.Selection;

/** Finds the lessons and questions that were named on the command line. */
public final class Choice {
    /** A code on a sheet has one bit for each lesson. */
    private static final int MOST_LESSONS = 60;

    private final List<LessonQuestions> lessons;

    public Choice(List<LessonQuestions> lessons) {
        this.lessons = lessons;
    }

    /** The questions of the lessons of these keys, in the order of the site. */
    public Selection ofLessons(List<String> keys, int each, boolean alike) {
        List<String> known = lessons.stream().map(LessonQuestions::key).toList();
        TreeSet<Integer> places = new TreeSet<>();
        for (String key : keys) {
            int place = known.indexOf(key.strip());
            UserMistake.unless(place >= 0, "--lessons: no lesson is called \"" + key + "\". " + Nearest.remedy(key, known));
            UserMistake.unless(
                    !lessons.get(place).questions().isEmpty(),
                    "--lessons: the lesson \"" + key + "\" has no question for a sheet. Leave it out.");
            UserMistake.unless(
                    place < MOST_LESSONS,
                    "--lessons: the codes of the sheets reach the first " + MOST_LESSONS + " lessons only. Name the questions with --questions.");
            places.add(place);
        }
        return Selection.ofLessons(lessons, new ArrayList<>(places), each, alike);
    }

    /** The questions of these keys, in the order they were named. */
    public Selection ofQuestions(List<String> keys) {
        List<String> known = Selection.all(lessons).stream().map(Question::key).toList();
        List<Integer> places = new ArrayList<>();
        for (String key : keys) {
            int place = known.indexOf(key.strip());
            UserMistake.unless(
                    place >= 0,
                    "--questions: no question for a sheet is called \"" + key + "\". " + Nearest.remedy(key, known));
            UserMistake.unless(!places.contains(place), "--questions: \"" + key + "\" is named twice. Name it once.");
            places.add(place);
        }
        return Selection.ofQuestions(lessons, places);
    }

    /** The lessons of the workshop day: what is asked if nobody says otherwise. */
    public List<String> ofTheDay() {
        return lessons.stream().filter(lesson -> lesson.inDay() && !lesson.questions().isEmpty()).map(LessonQuestions::key).toList();
    }
}
