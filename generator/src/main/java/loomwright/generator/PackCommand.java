package loomwright.generator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import loomwright.generator.build.PlaceLock;
import loomwright.generator.build.SiteBuild;
import loomwright.generator.pack.Stick;
import loomwright.generator.problem.UserMistake;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Builds the site into one zip that runs from a stick. */
@Command(
        name = "pack",
        description = "Builds the site into one zip that runs from a stick, with a word on how to start it.",
        mixinStandardHelpOptions = true)
final class PackCommand implements Callable<Integer> {
    private static final long MEGABYTE = 1_000_000;

    @Mixin
    private Inputs inputs;

    @Option(names = "--out", paramLabel = "FILE", defaultValue = "loomwright.zip", description = "where the zip goes (${DEFAULT-VALUE})")
    private Path out;

    @Override
    public Integer call() throws Exception {
        SiteBuild build = inputs.build();
        return PlaceLock.holding(out, () -> pack(build));
    }

    private Integer pack(SiteBuild build) throws IOException {
        UserMistake.unless(!Stick.isOther(out), "--out " + out + " is there already and is no zip of this program. Name another file.");
        Stick stick = new Stick();
        SiteBuild.Outcome outcome;
        try (Progress progress = Progress.of("pages")) {
            outcome = build.run(progress.counting(stick));
        }
        if (!outcome.problems().isEmpty()) {
            System.err.print(outcome.problems().text());
            System.err.println("Nothing was written; " + out + " is as it was.");
            return Loomwright.AUTHORS_MISTAKE;
        }
        stick.write(out, outcome.owner());
        System.out.println("Packed " + outcome.pages() + " pages from " + Counted.of(outcome) + ": " + out + ", " + tenths(Files.size(out))
                + " MB, unpacked " + tenths(stick.size()) + " MB");
        return Loomwright.FINE;
    }

    private static String tenths(long bytes) {
        long tenths = (bytes * 10 + MEGABYTE / 2) / MEGABYTE;
        return tenths / 10 + "." + tenths % 10;
    }
}
