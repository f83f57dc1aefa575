package loomwright.handout;

import java.util.List;

/**
 * The questions of a lesson that can stand on a sheet.
 *
 * @param key the lesson
 * @param title its number and title
 * @param inDay whether it belongs to the workshop day
 * @param questions its questions: those whose numbers vary first, then those that everyone gets alike
 */
public record LessonQuestions(String key, String title, boolean inDay, List<Question> questions) {
    /** How many of them have numbers that vary. */
    public int varying() {
        int count = 0;
        for (Question question : questions) {
            count += question.varies() ? 1 : 0;
        }
        return count;
    }
}
