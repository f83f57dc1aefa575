package loomwright.generator.mistake;

import org.junit.jupiter.api.Test;

/** Mistakes in figures. */
class FigureErrorTest extends MistakeTest {
    @Test
    void rejectsPictureWithoutDescription() {
        site.lesson("""
                ```figure
                key: window
                drawing: supply-window
                title: The window
                description: ""
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:11:1: "description" is empty. Write its text after the colon.
                   description: ""
                   ^
                1 mistake
                """);
    }

    @Test
    void rejectsUnknownDrawing() {
        site.lesson("""
                ```figure
                key: window
                drawing: suply-window
                title: The window
                description: A scale.
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:9:10: no drawing is called "suply-window". Did you mean "supply-window"?
                   drawing: suply-window
                            ^
                1 mistake
                """);
    }

    @Test
    void rejectsDrawingWithoutItsValues() {
        site.lesson("""
                ```figure
                key: window
                drawing: supply-window
                title: The window
                description: A scale.
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:9:10: The drawing supply-window needs a value called "lowest". Correct "values" of this figure.
                   drawing: supply-window
                            ^
                1 mistake
                """);
    }
}
