package loomwright.generator.content;

import java.util.List;

/**
 * What an author writes on a page that the generator fills: {@code pages/lessons.md}, {@code pages/glossary.md} and so on.
 *
 * @param article its title and the text above the list
 * @param summary one sentence for search
 * @param ways the ways in; only on the start page
 * @param paths the paths through the lessons; only on the page of lessons
 * @param groups the calculators in groups; only on the page of calculators
 * @param alike words that mean the same to a reader, a list for each group; only on the page of search
 * @param asked what readers ask for, and the place that answers; only on the page of search
 */
public record Front(
        Article article, String summary, List<Way> ways, List<LessonPath> paths, List<CalculatorGroup> groups,
        List<List<String>> alike, List<Asked> asked) {
    /** The pages that the generator fills, by key. */
    public static final List<String> PAGES =
            List.of("index", "lessons", "calculators", "tables", "glossary", "numbers", "search", "workshop", "your-circuit", "first-job");

    /**
     * A way in.
     *
     * @param title what the reader is after
     * @param to where to go, as a link address
     * @param words what they find there
     */
    public record Way(String title, Scalar to, String words) {}

    /**
     * A path through the lessons.
     *
     * @param key its anchor
     * @param title its name
     * @param words for whom it is
     * @param lessons the lessons in order; empty means all
     */
    public record LessonPath(String key, String title, String words, List<Scalar> lessons) {}

    /**
     * What readers ask for.
     *
     * @param to the place that answers, as a link address
     * @param words words of their own that do not stand in that place
     */
    public record Asked(Scalar to, String words) {}

    /**
     * Calculators for one part of the job.
     *
     * @param key its anchor
     * @param title what the reader is after
     * @param calculators the calculators in order
     */
    public record CalculatorGroup(Scalar key, String title, List<Scalar> calculators) {}
}
