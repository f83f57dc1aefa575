package loomwright.generator;

import java.io.IOException;
import loomwright.generator.problem.Mishap;
import loomwright.generator.problem.UserMistake;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line. Ends with 0 if all is well, 1 if an author's file or a wish has a mistake, 2 if the machine or the program failed. */
@Command(
        name = "loomwright",
        description = "Builds the site from lessons, tables and calculators.",
        mixinStandardHelpOptions = true,
        version = Edition.VERSION + ", " + Edition.DATE,
        subcommands = {BuildCommand.class, PackCommand.class, CheckCommand.class, PreviewCommand.class, NamesCommand.class, HandoutCommand.class, CircuitCommand.class})
public final class Loomwright {
    static final int FINE = 0;
    static final int AUTHORS_MISTAKE = 1;
    static final int OUR_FAULT = 2;

    private Loomwright() {}

    public static void main(String[] arguments) {
        int result;
        try {
            result = Restart.pays(arguments) ? Restart.run(arguments) : run(arguments);
        } catch (IOException | InterruptedException notStarted) {
            result = run(arguments);
        } catch (NoClassDefFoundError missing) {
            System.err.println("The folder \"lib\" is missing beside loomwright.jar, or not whole. Copy the two together.");
            result = OUR_FAULT;
        }
        System.exit(result);
    }

    static int run(String... arguments) {
        CommandLine commandLine = new CommandLine(new Loomwright());
        commandLine.setExecutionExceptionHandler((exception, command, result) -> failed(exception));
        try {
            return commandLine.execute(arguments);
        } catch (OutOfMemoryError | StackOverflowError thrown) {
            return failed(thrown);
        }
    }

    private static int failed(Throwable thrown) {
        if (thrown instanceof UserMistake mistake) {
            System.err.println(mistake.getMessage());
            return AUTHORS_MISTAKE;
        }
        System.err.println(Mishap.words(thrown));
        if (Boolean.getBoolean("loomwright.trace")) {
            thrown.printStackTrace();
        }
        return OUR_FAULT;
    }
}
