package loomwright.generator;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import loomwright.generator.circuit.CircuitJson;
import loomwright.generator.circuit.CircuitPaths;
import loomwright.generator.circuit.CircuitReport;
import loomwright.generator.circuit.ExaminedFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks circuit files, so that a club can look through its members' files in one go. */
@Command(
        name = "circuit",
        description = "Checks circuit files of the page \"Your circuit\" and prints what to change, what to decide and which figures to get, worst first.",
        mixinStandardHelpOptions = true,
        footer = "Ends with 1 if a file is refused, cannot be checked, or has something to change.")
final class CircuitCommand implements Callable<Integer> {
    @Parameters(arity = "1..*", paramLabel = "FILE", description = "circuit files, or folders: every .json file in them")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--passed", description = "lists the checks that passed as well")
    private boolean passed;

    @Option(names = "--json", description = "writes one JSON document for a script, with all findings; circuit-report.schema.json of the site describes it")
    private boolean json;

    @Override
    public Integer call() {
        List<ExaminedFile> examined = new ArrayList<>();
        for (Path path : CircuitPaths.of(files)) {
            ExaminedFile file = ExaminedFile.of(path);
            examined.add(file);
            if (!json) {
                System.out.println(CircuitReport.of(file, passed));
            }
        }
        if (examined.isEmpty()) {
            System.err.println("There is no circuit file here: name a file, or a folder with files that end in .json.");
            return Loomwright.AUTHORS_MISTAKE;
        }
        System.out.print(json ? CircuitJson.of(examined) : CircuitReport.last(examined));
        boolean bad = examined.stream().anyMatch(file -> file.isRefused() || file.isFaulty() || file.hasStop());
        return bad ? Loomwright.AUTHORS_MISTAKE : Loomwright.FINE;
    }
}
