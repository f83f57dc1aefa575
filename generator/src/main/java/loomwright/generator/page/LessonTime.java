package loomwright.generator.page;

import loomwright.generator.content.Block;
import loomwright.generator.content.Lesson;
import loomwright.generator.example.Example;
import loomwright.generator.example.ExampleBook;

/**
 * How long a lesson takes to read: its words at 180 a minute, a worked example with its story and its steps, and without the examples that
 * can be passed over. The time to do the task with one's hands comes on top; nobody can count it from here.
 */
final class LessonTime {
    private static final int WORDS_A_MINUTE = 180;

    private LessonTime() {}

    /** Whole minutes, rounded up. */
    static int minutes(Lesson lesson, ExampleBook book) {
        int words = lesson.words();
        for (Block block : lesson.article().blocks()) {
            Example example = block.kind().equals("example") ? book.at(block.info()) : null;
            words += example == null || example.further() ? 0 : example.words();
        }
        return (words + WORDS_A_MINUTE - 1) / WORDS_A_MINUTE;
    }
}
