package loomwright.generator;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import loomwright.generator.build.SiteBuild;
import loomwright.generator.build.SiteFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Builds the site into a folder. If anything is wrong the folder stays as it was. */
@Command(
        name = "build",
        description = "Builds the site into a folder. If anything is wrong the folder stays as it was.",
        mixinStandardHelpOptions = true)
final class BuildCommand implements Callable<Integer> {
    @Mixin
    private Inputs inputs;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            defaultValue = "site/target/site",
            description = "where the site goes (${DEFAULT-VALUE})")
    private Path out;

    @Override
    public Integer call() {
        SiteBuild build = inputs.build();
        try (SiteFolder folder = new SiteFolder(out); Progress progress = Progress.of("pages")) {
            SiteBuild.Outcome outcome = build.run(progress.counting(folder));
            if (!outcome.problems().isEmpty()) {
                return refuse(outcome, System.err);
            }
            folder.finish();
            System.out.println("Built " + outcome.pages() + " pages from " + Counted.of(outcome) + ": " + out.resolve("index.html"));
            return Loomwright.FINE;
        }
    }

    private Integer refuse(SiteBuild.Outcome outcome, PrintStream err) {
        err.print(outcome.problems().text());
        err.println("Nothing was written; " + out + " is as it was.");
        return Loomwright.AUTHORS_MISTAKE;
    }
}
