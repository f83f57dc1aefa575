package loomwright.generator;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import loomwright.generator.build.SiteBuild;
import loomwright.generator.check.Reading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Checks everything and writes nothing; says how long each lesson is and how easily it reads. */
@Command(name = "proof", description = "Checks everything and writes nothing.", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    private static final String LESSONS = "lessons/";

    @Mixin
    private Inputs inputs;

    @Override
    public Integer call() {
        Map<String, Reading> readings = new TreeMap<>();
        SiteBuild.Outcome outcome;
        try (Progress progress = Progress.of("pages")) {
            outcome = inputs.build().run(progress.counting((address, bytes) -> {
                if (address.startsWith(LESSONS)) {
                    String name = address.substring(LESSONS.length()).replace(".html", "");
                    readings.put(name, Reading.of(new String(bytes, StandardCharsets.UTF_8)));
                }
            }));
        }
        if (!outcome.problems().isEmpty()) {
            System.err.print(outcome.problems().text());
            return Loomwright.AUTHORS_MISTAKE;
        }
        readings.forEach((lesson, reading) -> System.out.printf(
                Locale.ROOT, "%-32s %5d words, reading ease %.0f%n", lesson, reading.words(), reading.ease()));
        System.out.println("No mistake in " + Counted.of(outcome) + ".");
        return Loomwright.FINE;
    }
}
