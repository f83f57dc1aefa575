package loomwright.generator;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loomwright.catalogue.Catalogue;
import loomwright.generator.build.Parts;
import loomwright.generator.build.SiteBuild;
import picocli.CommandLine.Option;

/** The folders every command reads from. */
final class Inputs {
    @Option(
            names = "--content",
            paramLabel = "FOLDER",
            defaultValue = "content",
            description = "lessons, tables and pages (${DEFAULT-VALUE})")
    private Path content;

    @Option(
            names = "--parts",
            paramLabel = "FOLDER",
            defaultValue = "site/src/main",
            description = "templates, style and scripts (${DEFAULT-VALUE})")
    private Path parts;

    @Option(names = "--program", paramLabel = "FOLDER", description = "more script files, such as the compiled page program")
    private List<Path> programs = new ArrayList<>();

    SiteBuild build() {
        return new SiteBuild(content, new Parts(parts, programs), Catalogue.all());
    }

    /** The style sheet, for paper that lies outside the site. */
    byte[] style() {
        return new Parts(parts, programs).files().getOrDefault("loomwright.css", new byte[0]);
    }

    /** Every folder a change in which changes the site. */
    List<Path> folders() {
        List<Path> folders = new ArrayList<>(List.of(content, parts));
        folders.addAll(programs);
        return folders;
    }
}
