package loomwright.generator.mistake;

import org.junit.jupiter.api.Test;

/** Mistakes in blocks and in Markdown. */
class BlockErrorTest extends MistakeTest {
    @Test
    void rejectsUnknownKeyOfABlock() {
        site.lesson("""
                ```question
                key: why
                ask: Why?
                anser: Because.
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:8:1: the question block has no "answer". Add a line answer: with its text.
                   key: why
                   ^
                content/lessons/01-first/lesson.md:10:1: the question block has an unknown key "anser". Did you mean "answer"?
                   anser: Because.
                   ^
                2 mistakes
                """);
    }

    @Test
    void rejectsBadYaml() {
        site.lesson("""
                ```question
                key: why
                ask: Say it: why?
                answer: Because.
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:9:12: the question block cannot be read as YAML: mapping values are not allowed here. Put a text that contains a colon and a space between double quotes.
                   ask: Say it: why?
                              ^
                1 mistake
                """);
    }

    @Test
    void rejectsUnknownFormula() {
        site.lesson("""
                ```formula
                key: resistor-current/power
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:8:6: the calculator "resistor-current" has no formula "power". Use one of: current.
                   key: resistor-current/power
                        ^
                1 mistake
                """);
    }

    @Test
    void rejectsRawHtml() {
        site.lesson("""
                Press <b>here</b>.

                <div class="x">
                Hm.
                </div>
                """);
        rejects("""
                content/lessons/01-first/lesson.md:7:7: raw HTML is not taken: "<b>". Use Markdown or one of the blocks; for the sign itself write \\<.
                   Press <b>here</b>.
                         ^
                content/lessons/01-first/lesson.md:7:14: raw HTML is not taken: "</b>". Use Markdown or one of the blocks; for the sign itself write \\<.
                   Press <b>here</b>.
                                ^
                content/lessons/01-first/lesson.md:9:1: raw HTML is not taken: "<div class="x">". Use Markdown or one of the blocks; for the sign itself write \\<.
                   <div class="x">
                   ^
                3 mistakes
                """);
    }

    @Test
    void rejectsPictureFiles() {
        site.lesson("![a lamp](lamp.png)\n");
        rejects("""
                content/lessons/01-first/lesson.md:7:1: a picture cannot be put into the text as a file. Put the file into the folder "pictures" and name it in a figure block: picture: NAME, with title and description.
                   ![a lamp](lamp.png)
                   ^
                1 mistake
                """);
    }

    @Test
    void rejectsUnknownBlock() {
        site.lesson("""
                ```exmaple
                key: heater
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:7:4: no block is called "exmaple". Did you mean "example"?
                   ```exmaple
                      ^
                1 mistake
                """);
    }

    @Test
    void rejectsBlockThatIsNotClosed() {
        site.lesson("""
                ```caution
                title: Hot
                It is hot.
                """);
        rejects("""
                content/lessons/01-first/lesson.md:7:4: the block "caution" is not closed. Add a line of ``` after it.
                   ```caution
                      ^
                1 mistake
                """);
    }

    /** What stands after it is not judged: it cannot be told what was meant. */
    @Test
    void namesTheBlockThatIsOpenWhereTheNextBegins() {
        site.lesson("""
                ```caution
                title: Hot
                It is hot.

                ```question
                key: why
                ask: Why?
                answer: Because.
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:7:4: the block "caution" is not closed. Add a line of ``` before line 11, where the next block begins.
                   ```caution
                      ^
                1 mistake
                """);
    }

    /** A link of another page to what stands behind the open block is right: it is no second mistake. */
    @Test
    void aPlaceBehindABlockThatIsOpenIsNotMissed() {
        site.write("pages/more.md", "---\ntitle: More\nsummary: More.\n---\nSee [there](lesson:01-first#behind-it).\n");
        site.lesson("""
                ```caution
                title: Hot
                It is hot.

                ## Behind it
                """);
        rejects("""
                content/lessons/01-first/lesson.md:7:4: the block "caution" is not closed. Add a line of ``` after it.
                   ```caution
                      ^
                1 mistake
                """);
    }

    /** The lines behind it are no YAML, but that is no second mistake. */
    @Test
    void saysOnceThatABlockOfKeysIsNotClosed() {
        site.lesson("""
                ```question
                key: why
                ask: Why?
                answer: Because.

                ## What comes next

                Words, and more: words.

                ```task
                title: Look
                1. Look at it.
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:7:4: the block "question" is not closed. Add a line of ``` before line 16, where the next block begins.
                   ```question
                      ^
                1 mistake
                """);
    }

    @Test
    void takesABlockInsideACautionWithALongerFence() {
        site.lesson("""
                ````caution
                title: Hot
                ```text
                It is hot.
                ```
                ````
                """);
        rejects("0 mistakes\n");
    }

    @Test
    void rejectsBlockInsideAList() {
        site.lesson("""
                - a list

                     ```caution
                     title: Hot
                     It is hot.
                     ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:9:9: a block "caution" stands inside a list or another block. Move it to the left edge, with an empty line around it.
                        ```caution
                           ^
                1 mistake
                """);
    }

    @Test
    void rejectsCautionWithoutTitle() {
        site.lesson("""
                ```caution
                It is hot.
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:7:4: the caution has no title. Write it as the first line of the block: title: ...
                   ```caution
                      ^
                1 mistake
                """);
    }

    @Test
    void rejectsWordsBesideTheNameOfABlock() {
        site.lesson("""
                ```caution Hot
                title: Hot
                It is hot.
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:7:12: words stand beside "caution". Only the word of the block stands there; a title is its first line: title: ...
                   ```caution Hot
                              ^
                1 mistake
                """);
    }
}
