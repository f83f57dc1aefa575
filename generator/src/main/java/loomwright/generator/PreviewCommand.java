package loomwright.generator;

import java.io.IOException;
import java.net.BindException;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import loomwright.generator.preview.Preview;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows the site on this machine and reloads it after each save. */
@Command(
        name = "show",
        description = "Shows the site on this machine and reloads it after each save. Stop it with Ctrl+C.",
        mixinStandardHelpOptions = true)
final class PreviewCommand implements Callable<Integer> {
    @Mixin
    private Inputs inputs;

    @Option(names = "--port", paramLabel = "NUMBER", defaultValue = "8012", description = "where to show it (${DEFAULT-VALUE})")
    private int port;

    @Override
    public Integer call() throws IOException, InterruptedException {
        try (Preview preview = new Preview(inputs.build(), inputs.folders(), port, System.out::println)) {
            System.out.println("Open " + preview.address());
            new CountDownLatch(1).await();
            return Loomwright.FINE;
        } catch (BindException e) {
            System.err.println("Port " + port + " is taken. Name another with --port.");
            return Loomwright.AUTHORS_MISTAKE;
        }
    }
}
