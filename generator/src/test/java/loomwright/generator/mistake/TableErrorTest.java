package loomwright.generator.mistake;

import org.junit.jupiter.api.Test;

/** Mistakes in tables, sources and terms. */
class TableErrorTest extends MistakeTest {
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
                2 mistakes
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
                1 mistake
                """);
    }

    @Test
    void rejectsMistakesInTables() {
        site.write("tables/short.csv", "# title: Short\n# source: rod-book\nsize (mm²),resistance (mΩ/m)\n1\n");
        site.write("tables/word.csv", "# title: Word\n# source: rod-book\nsize (mm²)\n1.5.2\n");
        site.write("tables/lost.csv", "# title: Lost\n# source: rodbook\nsize (mm²)\n1\n");
        site.write("tables/hole.csv", "# title: Hole\n# source: rod-book\n# shown: hole\nsize (mm²)\n1\n");
        site.write("tables/own.csv", "# title: Own\n# source: rod-book\nsize (mm²),standing\n1,\n2,from memory\n");
        rejects("""
                content/tables/hole.csv:3:1: a table is not shown "hole". Write whole, or rows if only single rows may be shown.
                   # shown: hole
                   ^
                content/tables/lost.csv:2:1: no document has the key "rodbook". Add it to content/sources.csv.
                   # source: rodbook
                   ^
                content/tables/own.csv:5:1: no standing is called "from memory". Use published, published-second-hand, common-practice, from-memory, invented or computed.
                   2,from memory
                   ^
                content/tables/short.csv:4:1: the row has 1 cells but there are 2 columns. Check the commas.
                   1
                   ^
                content/tables/word.csv:4:1: column size has two decimal marks: "1.5.2". Write one number.
                   1.5.2
                   ^
                5 mistakes
                """);
    }

    @Test
    void rejectsMistakesInTheListOfSources() {
        site.write("sources.csv", site.read("sources.csv") + "rod-book,again,Again,,published,,\n");
        rejects("""
                content/sources.csv:5:1: the document "rod-book" is listed twice. Keep one of the two lines.
                   rod-book,again,Again,,published,,
                   ^
                1 mistake
                """);
    }

    @Test
    void rejectsTermExplainedTwice() {
        site.write("glossary.md", "## ohm\n\nThe unit.\n\n## Ohm\n\nAgain.\n");
        rejects("""
                content/glossary.md:5:1: the term "Ohm" is explained twice. Keep one of the two.
                   ## Ohm
                   ^
                1 mistake
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
                1 mistake
                """);
    }
}
