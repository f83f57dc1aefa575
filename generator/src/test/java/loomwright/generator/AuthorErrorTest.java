package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One test for each mistake an author can make, comparing the whole message. */
class AuthorErrorTest {
    @TempDir
    Path folder;

    private TestSite site;

    @BeforeEach
    void begin() {
        site = new TestSite(folder);
    }

    private void rejects(String expected) {
        assertEquals(expected, site.problems());
    }

    private static final String GIVEN = "{ voltage: 12 V, resistance: 4 Ω }";
    private static final String PIN =
            "{ result: current, expect: 3 A, tolerance: 0.05 A, kind: printed, source: rod-book }";

    /** A lesson with an example; its {@code given} stands in line 14, its pin in line 16. */
    private TestSite example(String given, String pin) {
        return site.lesson("""
                ## Heat

                ```example
                key: heater
                title: A heater
                story: It is cold.
                calculator: resistor-current
                given: %s
                pins:
                  - %s
                ```
                """.formatted(given, pin));
    }

    /** A lesson with a sound example and a line of text, which is line 18. */
    private TestSite textBelowExample(String text) {
        example(GIVEN, PIN);
        return site.lesson(site.read(TestSite.LESSON).substring(TestSite.FRONT.length()) + text + "\n");
    }

    @Test
    void acceptsASoundLesson() {
        textBelowExample("It draws {{heater.current}} on {{heater.given.voltage}}, [ohms](term:ohm).");
        rejects("0 problems\n");
    }

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
                2 problems
                """);
    }

    @Test
    void rejectsUnknownKeyOfTheFrontMatter() {
        site.write(TestSite.LESSON, """
                ---
                title: First
                gaol: do it
                minutes: soon
                summary: A first lesson.
                ---
                """);
        rejects("""
                content/lessons/01-first/lesson.md:2:1: the front matter has no "goal". Add a line goal: with its text.
                   title: First
                   ^
                content/lessons/01-first/lesson.md:3:1: the front matter has an unknown key "gaol". Did you mean "goal"?
                   gaol: do it
                   ^
                content/lessons/01-first/lesson.md:4:10: "minutes" must be a whole number from 1 to 240 but is "soon". Write the number alone.
                   minutes: soon
                            ^
                3 problems
                """);
    }

    @Test
    void rejectsMissingFrontMatter() {
        site.write(TestSite.LESSON, "# First\n");
        rejects("""
                content/lessons/01-first/lesson.md:1:1: a heading with one # is the title of the page, and that is in the front matter. Begin a section with ##.
                   # First
                   ^
                content/lessons/01-first/lesson.md:1:1: the file does not begin with front matter. Begin it with a line ---, lines such as title: text, and a line ---.
                   # First
                   ^
                2 problems
                """);
    }

    @Test
    void rejectsDuplicateKey() {
        example("{ voltage: 12 V, resistance: 4 Ω, voltage: 13 V }", PIN);
        rejects("""
                content/lessons/01-first/lesson.md:14:42: the "given" of the example block has the key "voltage" twice. Keep one of the two lines.
                   given: { voltage: 12 V, resistance: 4 Ω, voltage: 13 V }
                                                            ^
                1 problem
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
                1 problem
                """);
    }

    @Test
    void rejectsUnknownCalculator() {
        example(GIVEN, PIN);
        site.write(TestSite.LESSON, site.read(TestSite.LESSON).replace("resistor-current", "resistor-curent"));
        rejects("""
                content/lessons/01-first/lesson.md:13:13: no calculator is called "resistor-curent". Did you mean "resistor-current"?
                   calculator: resistor-curent
                               ^
                1 problem
                """);
    }

    @Test
    void rejectsUnknownInput() {
        example("{ volts: 12 V, voltage: 12 V, resistance: 4 Ω }", PIN);
        rejects("""
                content/lessons/01-first/lesson.md:14:10: the calculator "resistor-current" has no input "volts". Use one of: voltage, resistance, kind.
                   given: { volts: 12 V, voltage: 12 V, resistance: 4 Ω }
                            ^
                1 problem
                """);
    }

    @Test
    void rejectsMissingInput() {
        example("{ voltage: 12 V }", PIN);
        rejects("""
                content/lessons/01-first/lesson.md:14:1: Resistance is empty: enter a number between 0.1 Ω and 1000 Ω. This is the input "resistance" of "given".
                   given: { voltage: 12 V }
                   ^
                1 problem
                """);
    }

    @Test
    void rejectsBadQuantity() {
        example("{ voltage: twelve, resistance: 4 Ω }", PIN);
        rejects("""
                content/lessons/01-first/lesson.md:14:19: Voltage has no number. Enter a number between 0.1 V and 100 V.
                   given: { voltage: twelve, resistance: 4 Ω }
                                     ^
                1 problem
                """);
    }

    @Test
    void rejectsQuantityOutOfRange() {
        example("{ voltage: 12 V, resistance: 4000 Ω }", PIN);
        rejects("""
                content/lessons/01-first/lesson.md:14:37: Resistance must be between 0.1 Ω and 1000 Ω, but is 4000 Ω. This is the input "resistance" of "given".
                   given: { voltage: 12 V, resistance: 4000 Ω }
                                                       ^
                1 problem
                """);
    }

    @Test
    void rejectsEntriesTheCalculatorRefuses() {
        example("{ voltage: 100 V, resistance: 0.1 Ω }", PIN);
        rejects("""
                content/lessons/01-first/lesson.md:14:38: Resistance is too small here: more than 500 A would flow. This is the input "resistance" of "given".
                   given: { voltage: 100 V, resistance: 0.1 Ω }
                                                        ^
                1 problem
                """);
    }

    @Test
    void rejectsPinOutOfTolerance() {
        example(GIVEN, "{ result: current, expect: 2.9 A, tolerance: 0.05 A, kind: printed, source: rod-book }");
        rejects("""
                content/lessons/01-first/lesson.md:16:32: "current" of example "heater" comes out as 3 A, but the pin expects 2.9 A within 0.05 A; the difference is 0.1 A. Look for the slip in the entries, in the source or in the calculator; do not widen the tolerance to hide it.
                     - { result: current, expect: 2.9 A, tolerance: 0.05 A, kind: printed, source: rod-book }
                                                  ^
                1 problem
                """);
    }

    @Test
    void acceptsPinExactlyAtItsTolerance() {
        example(GIVEN, "{ result: current, expect: 2.95 A, tolerance: 50 mA, kind: printed, source: rod-book }");
        rejects("0 problems\n");
    }

    @Test
    void rejectsPinInAnotherUnit() {
        example(GIVEN, "{ result: current, expect: 3 V, tolerance: 0.05 A, kind: printed, source: rod-book }");
        rejects("""
                content/lessons/01-first/lesson.md:16:32: "3 V" is not in a unit of "current". Write it in A.
                     - { result: current, expect: 3 V, tolerance: 0.05 A, kind: printed, source: rod-book }
                                                  ^
                1 problem
                """);
    }

    @Test
    void rejectsPinOfUnknownResult() {
        example(GIVEN, "{ result: curent, expect: 3 A, tolerance: 0.05 A, kind: printed, source: rod-book }");
        rejects("""
                content/lessons/01-first/lesson.md:16:15: the calculator "resistor-current" gives no result "curent". Did you mean "current"?
                     - { result: curent, expect: 3 A, tolerance: 0.05 A, kind: printed, source: rod-book }
                                 ^
                1 problem
                """);
    }

    @Test
    void rejectsPinOfUnknownKind() {
        example(GIVEN, "{ result: current, expect: 3 A, tolerance: 0.05 A, kind: print, source: rod-book }");
        rejects("""
                content/lessons/01-first/lesson.md:16:62: no kind of pin is called "print". Did you mean "printed"?
                     - { result: current, expect: 3 A, tolerance: 0.05 A, kind: print, source: rod-book }
                                                                                ^
                1 problem
                """);
    }

    @Test
    void rejectsPinFromATableWithoutArithmetic() {
        example(GIVEN, "{ result: current, expect: 3 A, tolerance: 0.05 A, kind: from-table, source: rod-book }");
        rejects("""
                content/lessons/01-first/lesson.md:16:5: a pin of kind "from-table" has no "arithmetic". Add a line arithmetic: with the working by hand.
                     - { result: current, expect: 3 A, tolerance: 0.05 A, kind: from-table, source: rod-book }
                       ^
                1 problem
                """);
    }

    @Test
    void rejectsArithmeticThatEndsInAnotherFigure() {
        example(GIVEN, "{ result: current, expect: 3 A, tolerance: 0.05 A, kind: from-table, source: rod-book, arithmetic: 12 V ÷ 4 Ω = 2 A }");
        rejects("""
                content/lessons/01-first/lesson.md:16:92: the arithmetic ends in 2 A, but the pin expects 3 A within 0.05 A. Correct the one that is wrong.
                   …t: current, expect: 3 A, tolerance: 0.05 A, kind: from-table, source: rod-book, arithmetic: 12 V ÷ 4 Ω = 2 A }
                                                                                                    ^
                1 problem
                """);
    }

    @Test
    void rejectsTableThatChangedSinceTheCalculatorsWereBuilt() {
        site.write("tables/rods.csv", site.read("tables/rods.csv").replace("2,9,", "2,8,"));
        site.lesson("""
                ## Rods

                ```example
                key: rod
                title: A rod
                story: A rod of 2 mm².
                calculator: rod-resistance
                given: { size: 2 mm2 }
                pins:
                  - { result: resistance, expect: 9 mΩ/m, tolerance: 0.5 mΩ/m, kind: printed, source: rod-book }
                ```
                """);
        rejects("""
                content/tables/rods.csv:5:1: the calculators were built with another row "2 mm²" of this table. Build them again with mvn -q package.
                   2,8,
                   ^
                1 problem
                """);
    }

    @Test
    void rejectsPrintedPinWithoutPublication() {
        example(GIVEN, "{ result: current, expect: 3 A, tolerance: 0.05 A, kind: printed, source: from-memory }");
        rejects("""
                content/lessons/01-first/lesson.md:16:71: a pin of kind "printed" needs a published source, but "from-memory" is from memory. Name the publication, or make the kind common-practice.
                     - { result: current, expect: 3 A, tolerance: 0.05 A, kind: printed, source: from-memory }
                                                                                         ^
                1 problem
                """);
    }

    @Test
    void rejectsMissingSource() {
        example(GIVEN, "{ result: current, expect: 3 A, tolerance: 0.05 A, kind: printed, source: rodbook }");
        rejects("""
                content/lessons/01-first/lesson.md:16:79: no source is called "rodbook". Did you mean "rod-book"?
                     - { result: current, expect: 3 A, tolerance: 0.05 A, kind: printed, source: rodbook }
                                                                                                 ^
                1 problem
                """);
    }

    @Test
    void rejectsExampleWithoutPin() {
        site.lesson("""
                ## Heat

                ```example
                key: heater
                title: A heater
                story: It is cold.
                calculator: resistor-current
                given: { voltage: 12 V, resistance: 4 Ω }
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:10:1: the example has no pin. Add under "pins" a figure from elsewhere that one of its results is held against.
                   key: heater
                   ^
                1 problem
                """);
    }

    @Test
    void rejectsTwoExamplesOfOneKey() {
        example(GIVEN, PIN);
        site.write("lessons/02-second/lesson.md", site.read(TestSite.LESSON));
        rejects("""
                content/lessons/02-second/lesson.md:10:6: the key "heater" is taken by the example in content/lessons/01-first/lesson.md:10. Choose another key.
                   key: heater
                        ^
                1 problem
                """);
    }

    @Test
    void rejectsUnknownValueNameAndSuggestsOne() {
        textBelowExample("It draws {{heater.curent}} on a cold day.");
        rejects("""
                content/lessons/01-first/lesson.md:18:19: no value named "curent" in example "heater". Did you mean "current"?
                   It draws {{heater.curent}} on a cold day.
                                     ^
                1 problem
                """);
    }

    @Test
    void rejectsValueOfUnknownExample() {
        textBelowExample("It draws {{heatr.current}}.");
        rejects("""
                content/lessons/01-first/lesson.md:18:12: no example is called "heatr". Did you mean "heater"?
                   It draws {{heatr.current}}.
                              ^
                1 problem
                """);
    }

    @Test
    void rejectsUnknownFactOfTheScenario() {
        site.lesson("It is {{scenario.bench-rout}} away.\n");
        rejects("""
                content/lessons/01-first/lesson.md:7:18: no figure of the scenario is called "bench-rout". Did you mean "bench-route"?
                   It is {{scenario.bench-rout}} away.
                                    ^
                1 problem
                """);
    }

    @Test
    void rejectsValueThatIsNotClosed() {
        site.lesson("It is {{scenario.bench-route} away.\n");
        rejects("""
                content/lessons/01-first/lesson.md:7:7: the name of a value is opened and not closed. Write {{name}} on one line.
                   It is {{scenario.bench-route} away.
                         ^
                1 problem
                """);
    }

    @Test
    void rejectsValueInsideAStoryAtItsOwnLine() {
        site.lesson("""
                ```question
                key: why
                ask: >-
                  How far is it? It is
                  {{scenario.bench-rout}} away.
                answer: Far.
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:11:14: no figure of the scenario is called "bench-rout". Did you mean "bench-route"?
                     {{scenario.bench-rout}} away.
                                ^
                1 problem
                """);
    }

    @Test
    void rejectsDeadLinks() {
        site.lesson("""
                Read [this](lesson:02-second), [that](term:ohms), [it](source:rods), [them](table:rod) and [more](../x.html).
                """);
        rejects("""
                content/lessons/01-first/lesson.md:7:20: no lesson is called "02-second". Use one of: 01-first.
                   Read [this](lesson:02-second), [that](term:ohms), [it](source:rods), [them](table:rod) and [more](../x.html).
                                      ^
                content/lessons/01-first/lesson.md:7:44: no term is called "ohms". Did you mean "ohm"?
                   Read [this](lesson:02-second), [that](term:ohms), [it](source:rods), [them](table:rod) and [more](../x.html).
                                                              ^
                content/lessons/01-first/lesson.md:7:63: no source is called "rods". Add it to sources.csv.
                   Read [this](lesson:02-second), [that](term:ohms), [it](source:rods), [them](table:rod) and [more](../x.html).
                                                                                 ^
                content/lessons/01-first/lesson.md:7:83: no table is called "rod". Did you mean "rods"?
                   Read [this](lesson:02-second), [that](term:ohms), [it](source:rods), [them](table:rod) and [more](../x.html).
                                                                                                     ^
                content/lessons/01-first/lesson.md:7:99: no link can lead to "../x.html". Begin it with one of lesson: term: source: calculator: table: page: https: or #.
                   Read [this](lesson:02-second), [that](term:ohms), [it](source:rods), [them](table:rod) and [more](../x.html).
                                                                                                                     ^
                5 problems
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
                2 problems
                """);
    }

    @Test
    void rejectsLinkWithoutWords() {
        site.lesson("See [](term:ohm).\n");
        rejects("""
                content/lessons/01-first/lesson.md:7:8: a link has no words. Write what it leads to.
                   See [](term:ohm).
                          ^
                1 problem
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
                1 problem
                """);
    }

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
                1 problem
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
                1 problem
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
                1 problem
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
                1 problem
                """);
    }

    @Test
    void rejectsUnknownRowsAndColumns() {
        site.lesson("""
                ```table
                key: rods
                columns: [size, resistence]
                rows: ["3"]
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:9:17: the table "rods" has no column "resistence". Did you mean "resistance"?
                   columns: [size, resistence]
                                   ^
                content/lessons/01-first/lesson.md:10:8: the table "rods" has no row "3". Did you mean "1"?
                   rows: ["3"]
                          ^
                2 problems
                """);
    }

    @Test
    void rejectsShowingATableUnderCopyrightWhole() {
        site.lesson("""
                ```table
                key: rods
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:8:6: the table "rods" may not be shown whole. Name the rows you need under "rows".
                   key: rods
                        ^
                1 problem
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
                3 problems
                """);
    }

    @Test
    void rejectsPictureFiles() {
        site.lesson("![a lamp](lamp.png)\n");
        rejects("""
                content/lessons/01-first/lesson.md:7:1: a picture cannot be put into the text as a file. Use a figure block, which has a title and a description.
                   ![a lamp](lamp.png)
                   ^
                1 problem
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
                1 problem
                """);
    }

    @Test
    void rejectsBlockThatIsNotClosed() {
        site.lesson("""
                ```caution Hot
                It is hot.
                """);
        rejects("""
                content/lessons/01-first/lesson.md:7:4: this block is not closed. Add a line of ``` after it.
                   ```caution Hot
                      ^
                1 problem
                """);
    }

    @Test
    void rejectsBlockInsideAList() {
        site.lesson("""
                - a list

                     ```caution Hot
                     It is hot.
                     ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:9:9: a block "caution" stands inside a list or another block. Move it to the left edge, with an empty line around it.
                        ```caution Hot
                           ^
                1 problem
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
                content/lessons/01-first/lesson.md:7:4: the caution has no title. Write it on the same line, after the word caution.
                   ```caution
                      ^
                1 problem
                """);
    }

    @Test
    void rejectsExampleBeforeTheFirstSection() {
        example(GIVEN, PIN);
        site.write(TestSite.LESSON, site.read(TestSite.LESSON).replace("## Heat\n", "Heat.\n"));
        rejects("""
                content/lessons/01-first/lesson.md:9:4: the heading "A heater" is of level 3 and follows one of level 1. Put a heading with ## above it.
                   ```example
                      ^
                1 problem
                """);
    }

    @Test
    void rejectsLessonThatNeedsALaterOne() {
        site.write(TestSite.LESSON, site.read(TestSite.LESSON).replace("minutes: 20", "minutes: 20\nneeds: [02-second, 03-third]"));
        site.write("lessons/02-second/lesson.md", TestSite.FRONT);
        rejects("""
                content/lessons/01-first/lesson.md:5:9: the lesson "02-second" does not come before this one. Name an earlier lesson.
                   needs: [02-second, 03-third]
                           ^
                content/lessons/01-first/lesson.md:5:20: no lesson is called "03-third". Use one of: 01-first, 02-second.
                   needs: [02-second, 03-third]
                                      ^
                2 problems
                """);
    }

    @Test
    void rejectsLessonFolderWithoutLesson() {
        site.write("lessons/02-second/notes.txt", "later");
        rejects("""
                content/lessons/02-second/lesson.md: the file is missing. Add it, or check how its name is spelt.
                1 problem
                """);
    }

    @Test
    void rejectsMistakesInTables() {
        site.write("tables/short.csv", "# title: Short\n# source: rod-book\nsize (mm²),resistance (mΩ/m)\n1\n");
        site.write("tables/word.csv", "# title: Word\n# source: rod-book\nsize (mm²)\n1.5.2\n");
        site.write("tables/lost.csv", "# title: Lost\n# source: rodbook\nsize (mm²)\n1\n");
        rejects("""
                content/tables/lost.csv:2:1: no document has the key "rodbook". Add it to content/sources.csv.
                   # source: rodbook
                   ^
                content/tables/short.csv:4:1: the row has 1 cells but there are 2 columns. Check the commas.
                   1
                   ^
                content/tables/word.csv:4:1: column size has two decimal points: "1.5.2". Write one number.
                   1.5.2
                   ^
                3 problems
                """);
    }

    @Test
    void rejectsMistakesInTheListOfSources() {
        site.write("sources.csv", site.read("sources.csv") + "rod-book,again,Again,,published,,\n");
        rejects("""
                content/sources.csv:5:1: the document "rod-book" is listed twice. Keep one of the two lines.
                   rod-book,again,Again,,published,,
                   ^
                1 problem
                """);
    }

    @Test
    void rejectsTermExplainedTwice() {
        site.write("glossary.md", "## ohm\n\nThe unit.\n\n## Ohm\n\nAgain.\n");
        rejects("""
                content/glossary.md:5:1: the term "Ohm" is explained twice. Keep one of the two.
                   ## Ohm
                   ^
                1 problem
                """);
    }
}
