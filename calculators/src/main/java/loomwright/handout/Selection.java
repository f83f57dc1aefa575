package loomwright.handout;

import java.util.ArrayList;
import java.util.List;

/**
 * The questions chosen for a day, and what a code has to say of them.
 *
 * @param lessons the lessons they are taken from, in order; one without a name if questions were chosen one by one
 * @param each how many with numbers of each lesson at most; {@link #SINGLE} if questions were chosen one by one
 * @param alike whether each lesson also asks one question that everyone gets alike, if it has one: in words, or about a check that ends in a stop
 * @param places the places of the lessons in the site, or of the questions if they were chosen one by one, counted from 0
 */
public record Selection(List<LessonQuestions> lessons, int each, boolean alike, List<Integer> places) {
    /** Stands in the place of a number of questions if they were chosen one by one. */
    public static final int SINGLE = 0;
    /** More than any lesson has. */
    public static final int ALL = 30;
    /** What command and page ask of each lesson if nobody says otherwise. */
    public static final int USUAL = 1;

    /** Another number each time the numbers of a sheet are drawn in another way. */
    private static final int DRAWING = 8;

    /** At most so many questions of each of these lessons. */
    public static Selection ofLessons(List<LessonQuestions> lessons, List<Integer> places, int each, boolean alike) {
        List<LessonQuestions> chosen = new ArrayList<>();
        for (int place : places) {
            chosen.add(lessons.get(place));
        }
        return new Selection(List.copyOf(chosen), each, alike, List.copyOf(places));
    }

    /** Single questions, by their place among all questions of the site. */
    public static Selection ofQuestions(List<LessonQuestions> lessons, List<Integer> places) {
        List<Question> all = all(lessons);
        List<Question> questions = new ArrayList<>();
        for (int place : places) {
            questions.add(all.get(place));
        }
        return new Selection(List.of(new LessonQuestions("", "", false, List.copyOf(questions))), SINGLE, true, List.copyOf(places));
    }

    /** Every question of the site that can stand on a sheet, in order. */
    public static List<Question> all(List<LessonQuestions> lessons) {
        List<Question> all = new ArrayList<>();
        for (LessonQuestions lesson : lessons) {
            all.addAll(lesson.questions());
        }
        return all;
    }

    /** Whether questions were chosen one by one: then each of them is asked. */
    boolean isSingle() {
        return each == SINGLE;
    }

    /** How many questions with numbers a lesson is asked at most. */
    int mostVarying() {
        return each == SINGLE ? Integer.MAX_VALUE : each;
    }

    /** How many questions that are alike for everyone a lesson is asked at most. */
    int mostAlike() {
        return each == SINGLE ? Integer.MAX_VALUE : alike ? 1 : 0;
    }

    /** Changes when a question that could be asked changes, so that a code of another edition of the site is noticed. */
    int fingerprint() {
        int print = DRAWING;
        for (Question question : all(lessons)) {
            print = mixed(print, question.key());
            print = mixed(print, question.words());
            print = mixed(print, String.join(" ", question.keep()));
            if (!question.isInWords()) {
                for (var output : question.asked()) {
                    print = mixed(print, output.key());
                }
                for (var field : question.calculator().description().fields()) {
                    String entry = question.given().get(field.key());
                    print = mixed(print, entry == null ? "" : entry);
                }
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
