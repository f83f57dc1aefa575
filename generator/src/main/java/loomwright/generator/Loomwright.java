package loomwright.generator;

import picocli.CommandLine.Command;
import picocli.CommandLine;

/** The command line. Ends with 0 if all is well, 1 if an author's file has a mistake, 2 if the fault is ours. */
@Command(
        name = "loomwright",
        description = "Builds the site from lessons, tables and calculators.",
        mixinStandardHelpOptions = true,
        version = "0.1.0",
        subcommands = {BuildCommand.class, PackCommand.class, CheckCommand.class, PreviewCommand.class, NamesCommand.class, HandoutCommand.class, CircuitCommand.class})
public final class Loomwright {
    static final int FINE = 0;
    static final int AUTHORS_MISTAKE = 1;
    static final int OUR_FAULT = 2;

    private Loomwright() {}

    public static void main(String[] arguments) {
        System.exit(run(arguments));
    }

    static int run(String... arguments) {
        CommandLine commandLine = new CommandLine(new Loomwright());
        commandLine.setExecutionExceptionHandler((exception, command, result) -> {
            exception.printStackTrace(command.getErr());
            return OUR_FAULT;
        });
        return commandLine.execute(arguments);
    }
}
