package loomwright.generator.mistake;

import org.junit.jupiter.api.Test;

/** Mistakes in links, anchors and keys. */
class LinkErrorTest extends MistakeTest {
    @Test
    void rejectsDeadLinks() {
        site.lesson("""
                Read [this](lesson:02-second), [that](word:ohms), [it](source:rods), [them](table:rod) and [more](../x.html).
                """);
        rejects("""
                content/lessons/01-first/lesson.md:7:20: no lesson is called "02-second". Use one of: 01-first.
                   Read [this](lesson:02-second), [that](word:ohms), [it](source:rods), [them](table:rod) and [more](../x.html).
                                      ^
                content/lessons/01-first/lesson.md:7:44: no word is called "ohms". Did you mean "ohm"?
                   Read [this](lesson:02-second), [that](word:ohms), [it](source:rods), [them](table:rod) and [more](../x.html).
                                                              ^
                content/lessons/01-first/lesson.md:7:63: no source is called "rods". Add it to content/sources.csv.
                   Read [this](lesson:02-second), [that](word:ohms), [it](source:rods), [them](table:rod) and [more](../x.html).
                                                                                 ^
                content/lessons/01-first/lesson.md:7:83: no table is called "rod". Did you mean "rods"?
                   Read [this](lesson:02-second), [that](word:ohms), [it](source:rods), [them](table:rod) and [more](../x.html).
                                                                                                     ^
                content/lessons/01-first/lesson.md:7:99: no link can lead to "../x.html". Begin it with one of lesson: word: source: calculator: table: page: schema: https: or #.
                   Read [this](lesson:02-second), [that](word:ohms), [it](source:rods), [them](table:rod) and [more](../x.html).
                                                                                                                     ^
                5 mistakes
                """);
    }

    @Test
    void rejectsDeadAnchors() {
        site.lesson("""
                ## Out and back

                See [above](#out-and-bakc) and [there](lesson:01-first#nowhere).
                """);
        rejects("""
                content/lessons/01-first/lesson.md:9:13: the page "lessons/01-first.html" has no place called "out-and-bakc". Did you mean "out-and-back"?
                   See [above](#out-and-bakc) and [there](lesson:01-first#nowhere).
                               ^
                content/lessons/01-first/lesson.md:9:40: the page "lessons/01-first.html" has no place called "nowhere". Name a heading of that page in small letters with dashes.
                   See [above](#out-and-bakc) and [there](lesson:01-first#nowhere).
                                                          ^
                2 mistakes
                """);
    }

    @Test
    void rejectsAnswersOfSearchThatLeadNowhere() {
        site.lesson("## Heat\n\nIt is warm.\n");
        site.write("pages/search.md", """
                ---
                title: Search
                summary: Find it.
                asked:
                  - {to: "lesson:01-first#cold", words: "frost"}
                  - {to: "lesson:01-first#heat", words: "hot"}
                  - {to: "lesson:01-first#heat", words: "warm"}
                ---
                """);
        rejects("""
                content/pages/search.md:5:10: search finds nothing at "lesson:01-first#cold". Name a page, a word, or a lesson's section by its heading.
                     - {to: "lesson:01-first#cold", words: "frost"}
                            ^
                content/pages/search.md:7:10: "lesson:01-first#heat" stands here twice. Put all its words into one line.
                     - {to: "lesson:01-first#heat", words: "warm"}
                            ^
                2 mistakes
                """);
    }

    @Test
    void rejectsLinkWithoutWords() {
        site.lesson("See [](word:ohm).\n");
        rejects("""
                content/lessons/01-first/lesson.md:7:8: a link has no words. Write what it leads to.
                   See [](word:ohm).
                          ^
                1 mistake
                """);
    }

    @Test
    void rejectsSameKeyTwiceInAPage() {
        site.lesson("""
                ## why

                ```question
                key: why
                ask: Why?
                answer: Because.
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:10:6: the id "why" is given twice in the page. Change the key of a block, or the words of a heading.
                   key: why
                        ^
                1 mistake
                """);
    }
}
