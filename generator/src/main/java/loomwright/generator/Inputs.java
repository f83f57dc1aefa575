package loomwright.generator;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loomwright.catalogue.Catalogue;
import loomwright.generator.build.Parts;
import loomwright.generator.build.SiteBuild;
import loomwright.generator.content.ContentReader;
import loomwright.generator.drawing.Drawings;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.UserMistake;
import picocli.CommandLine.Option;

/** The folders every command reads from. */
final class Inputs {
    private static final Path COMPILED = Path.of("site/target/programs");

    @Option(
            names = "--content",
            paramLabel = "FOLDER",
            defaultValue = "content",
            description = "lessons, tables and pages (${DEFAULT-VALUE})")
    private Path content;

    @Option(names = "--club", paramLabel = "FOLDER", description = "a club's own lessons and pages, added to ours")
    private Path club;

    @Option(
            names = "--parts",
            paramLabel = "FOLDER",
            defaultValue = "site/src/main",
            description = "templates, style and scripts (${DEFAULT-VALUE})")
    private Path parts;

    @Option(
            names = "--program",
            paramLabel = "FOLDER",
            description = "more script files: the compiled page programs (site/target/programs, if it is there)")
    private List<Path> named = new ArrayList<>();

    SiteBuild build() {
        refuseMissing("--content", content);
        refuseMissing("--parts", parts.resolve("templates"));
        named.forEach(folder -> refuseMissing("--program", folder));
        return new SiteBuild(content, parts(), Catalogue.all()).withClub(club);
    }

    private static void refuseMissing(String option, Path folder) {
        UserMistake.unless(
                Files.isDirectory(folder),
                "There is no folder " + folder + " here. Run this in the folder of the project, or name the folder with " + option + ".");
    }

    /** The drawings a figure can show. */
    Drawings drawings() {
        Problems problems = new Problems();
        return Drawings.with(ContentReader.drawings(content, club, problems), problems);
    }

    /** The style sheet, for paper that lies outside the site. */
    byte[] style() {
        return parts().files().getOrDefault("loomwright.css", new byte[0]);
    }

    /** Every folder a change in which changes the site. */
    List<Path> folders() {
        List<Path> folders = new ArrayList<>(List.of(content, parts));
        folders.addAll(programs());
        if (club != null) {
            folders.add(club);
        }
        return folders;
    }

    private Parts parts() {
        return new Parts(parts, programs());
    }

    private List<Path> programs() {
        return named.isEmpty() && Files.isDirectory(COMPILED) ? List.of(COMPILED) : named;
    }
}
