package loomwright.handout;

import java.util.ArrayList;
import java.util.List;

/**
 * The questions chosen for a day, and what a code has to say of them.
 *
 * @param questions the questions, in the order of the lessons
 * @param each how many of each lesson at most; {@link #SINGLE} if questions were chosen one by one
 * @param places the places of the lessons in the site, or of the questions if they were chosen one by one, counted from 0
 */
public record Selection(List<Question> questions, int each, List<Integer> places) {
    /** Stands in the place of a number of questions if they were chosen one by one. */
    public static final int SINGLE = 0;
    /** More than any lesson has. */
    public static final int ALL = 30;

    /** At most so many questions of each of these lessons. */
    public static Selection ofLessons(List<LessonQuestions> lessons, List<Integer> places, int each) {
        List<Question> questions = new ArrayList<>();
        for (int place : places) {
            List<Question> all = lessons.get(place).questions();
            questions.addAll(all.subList(0, Math.min(each, all.size())));
        }
        return new Selection(List.copyOf(questions), each, List.copyOf(places));
    }

    /** Single questions, by their place among all questions of the site. */
    public static Selection ofQuestions(List<LessonQuestions> lessons, List<Integer> places) {
        List<Question> all = all(lessons);
        List<Question> questions = new ArrayList<>();
        for (int place : places) {
            questions.add(all.get(place));
        }
        return new Selection(List.copyOf(questions), SINGLE, List.copyOf(places));
    }

    /** Every question of the site that can stand on a sheet, in order. */
    public static List<Question> all(List<LessonQuestions> lessons) {
        List<Question> all = new ArrayList<>();
        for (LessonQuestions lesson : lessons) {
            all.addAll(lesson.questions());
        }
        return all;
    }

    /** Changes when a question of the selection changes, so that a code of another edition of the site is noticed. */
    int fingerprint() {
        int print = 7;
        for (Question question : questions) {
            print = mixed(print, question.key());
            print = mixed(print, question.asked().key());
            for (var field : question.calculator().description().fields()) {
                String entry = question.given().get(field.key());
                print = mixed(print, entry == null ? "" : entry);
            }
        }
        return print & 0x7fffffff;
    }

    private static int mixed(int print, String text) {
        int mixed = print;
        for (int i = 0; i < text.length(); i++) {
            mixed = mixed * 31 + text.charAt(i);
        }
        return mixed * 17 + 1;
    }
}
