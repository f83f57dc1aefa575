package loomwright.handout;

import java.util.List;

/**
 * The questions of a lesson that have a number for an answer.
 *
 * @param key the lesson
 * @param title its number and title
 * @param questions its questions: those at the end of the lesson first, then its worked examples
 * @param prose how many questions of the lesson are answered in words and stand on no sheet
 */
public record LessonQuestions(String key, String title, List<Question> questions, int prose) {}
