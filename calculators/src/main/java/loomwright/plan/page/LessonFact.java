package loomwright.plan.page;

/**
 * What a page knows of a lesson.
 *
 * @param key its key, the end of its address
 */
public record LessonFact(String key, String title, int minutes) {}
