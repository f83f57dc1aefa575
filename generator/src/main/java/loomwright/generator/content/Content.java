package loomwright.generator.content;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loomwright.generator.problem.SourceFile;
import loomwright.source.Document;
import loomwright.units.UnitSystem;

/**
 * Everything in the content folder, and in that of a club.
 *
 * @param name the folder as it was given
 * @param documents the documents of {@code sources.csv} by key, in order
 * @param tables the tables by key, in order
 * @param terms the glossary by key, in order of the alphabet
 * @param scenario the figures of the scenario by key
 * @param circuits the circuits by key; one with a mistake has no examination
 * @param drawings the files of drawings by the name a lesson calls them
 * @param schemas the JSON schemas of files that people exchange, by the name without {@code .schema.json}
 * @param pictures the photos by the name of their file
 * @param lessons the lessons in order
 * @param pages the plain pages by name
 * @param fronts what authors write on the pages the generator fills, by name
 * @param settings what stands at the foot of every page
 * @param club the club whose folder was added, or null
 */
public record Content(
        String name,
        Map<String, Document> documents,
        Map<String, TableFile> tables,
        Map<String, Term> terms,
        Map<String, Fact> scenario,
        Map<String, CircuitText> circuits,
        Map<String, SourceFile> drawings,
        Map<String, SourceFile> schemas,
        Map<String, PictureFile> pictures,
        List<Lesson> lessons,
        List<PlainPage> pages,
        Map<String, Front> fronts,
        Settings settings,
        Club club) {
    /** What the names of schemas end in. */
    public static final String SCHEMA = ".schema.json";

    /** What stands at the top of printed sheets: the club, or the name of the site. */
    public String house() {
        return owner().isEmpty() ? "Loomwright" : owner();
    }

    /** The units in which pages are written and open: those of the club, or metric. */
    public UnitSystem units() {
        return club == null ? UnitSystem.METRIC : club.units();
    }

    /** Whose copy of the site it is: the club, or an empty text. */
    public String owner() {
        return club != null && club.isNamed() ? club.house() : "";
    }

    /** The file an author wrote the page of that address in; an empty text if the generator made it. */
    public String fileOf(String address) {
        return Stream.concat(lessons.stream().map(Lesson::article), pages.stream().map(PlainPage::article))
                .filter(article -> article.address().equals(address))
                .map(article -> article.file().name())
                .findFirst()
                .orElse("");
    }

    /** Whether a lesson is the club's own. */
    public boolean isOfClub(Lesson lesson) {
        return club != null && club.lessons().contains(lesson.key());
    }
}
