package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AllProblemsTest {
    @TempDir
    Path folder;

    /** Nothing is more tiresome than to mend one mistake and be told of the next. */
    @Test
    void listsTheMistakesOfAllFilesInOneRun() {
        TestSite site = new TestSite(folder);
        site.write("lessons/02-second/lesson.md", TestSite.FRONT.replace(TestSite.CARD, "card: Only this.") + "[x](word:amp)\n");
        site.write("tables/rods.csv", "# title: Rods\nsize (mm²)\n1\n");
        site.write("glossary.md", "## ohm\n\n## volt\n\nA <i>unit</i>.\n");
        site.write("scenario.yaml", "bench-route: {value: \"4.2 m\"}\n");
        site.lesson("A [link](lesson:03) and {{nothing.at-all}}.\n\n```figure\nkey: x\n```\n");
        assertEquals("""
                content/glossary.md:1:1: the term "ohm" has no meaning below it. Write one or two plain sentences.
                   ## ohm
                   ^
                content/glossary.md:5:3: raw HTML is not taken: "<i>". Use Markdown or one of the blocks; for the sign itself write \\<.
                   A <i>unit</i>.
                     ^
                content/glossary.md:5:10: raw HTML is not taken: "</i>". Use Markdown or one of the blocks; for the sign itself write \\<.
                   A <i>unit</i>.
                            ^
                content/lessons/01-first/lesson.md:7:17: no lesson is called "03". Use one of: 01-first, 02-second.
                   A [link](lesson:03) and {{nothing.at-all}}.
                                   ^
                content/lessons/01-first/lesson.md:7:27: no example is called "nothing". Write the key of an example, a dot and a result.
                   A [link](lesson:03) and {{nothing.at-all}}.
                                             ^
                content/lessons/01-first/lesson.md:10:1: the figure block has no "description". Add a line description: with its text.
                   key: x
                   ^
                content/lessons/01-first/lesson.md:10:1: the figure block has no "drawing". Add a line drawing: with its text.
                   key: x
                   ^
                content/lessons/01-first/lesson.md:10:1: the figure block has no "title". Add a line title: with its text.
                   key: x
                   ^
                content/lessons/02-second/lesson.md:4:1: the card has 1 line. It fits one screen with 5 to 8.
                   card: Only this.
                   ^
                content/lessons/02-second/lesson.md:7:10: no word is called "amp". Add it to content/glossary.md.
                   [x](word:amp)
                            ^
                content/scenario.yaml:1:14: the "bench-route" of the scenario has no "says". Add a line says: with its text.
                   bench-route: {value: "4.2 m"}
                                ^
                content/tables/rods.csv:2:1: the table has no source. Add a line such as # title: ... at the top.
                   size (mm²)
                   ^
                12 mistakes
                """, site.problems());
    }
}
