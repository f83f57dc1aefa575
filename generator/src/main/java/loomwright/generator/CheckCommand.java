package loomwright.generator;

import java.util.concurrent.Callable;
import loomwright.generator.build.SiteBuild;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Checks everything and writes nothing. */
@Command(name = "check", description = "Checks everything and writes nothing.", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private Inputs inputs;

    @Override
    public Integer call() {
        SiteBuild.Outcome outcome = inputs.build().run((address, bytes) -> { });
        if (!outcome.problems().isEmpty()) {
            System.err.print(outcome.problems().text());
            return Loomwright.AUTHORS_MISTAKE;
        }
        System.out.println("No problem in " + Counted.of(outcome) + ".");
        return Loomwright.FINE;
    }
}
