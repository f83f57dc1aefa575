package loomwright.generator.page;

import java.util.Map;
import loomwright.generator.content.Content;
import loomwright.generator.content.Lesson;
import loomwright.generator.drawing.Drawings;
import loomwright.generator.example.ExampleBook;
import loomwright.generator.example.ValueFinder;
import loomwright.generator.problem.Problems;
import loomwright.worked.Calculator;

/**
 * What every page may draw on.
 *
 * @param content the content folder
 * @param calculators the calculators by key
 * @param drawings the drawings a figure can show
 * @param book the worked examples
 * @param values values by name
 * @param reliance filled as pages are written
 * @param problems where problems go
 */
record Site(
        Content content,
        Map<String, Calculator> calculators,
        Drawings drawings,
        ExampleBook book,
        ValueFinder values,
        Reliance reliance,
        Problems problems) {

    /** The same site for a page that is written beside others; what it relies on is gathered apart. */
    Site apart() {
        return new Site(content, calculators, drawings, book, values, new Reliance(), problems);
    }

    /** The number and title of a lesson, as other pages call it. */
    static String numbered(Lesson lesson) {
        return (lesson.number() + " " + lesson.title()).strip();
    }
}
