package loomwright.generator.content;

import java.util.Map;
import java.util.TreeMap;
import loomwright.generator.problem.Problem;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;

/** Finds the drawings that stand in the content as files. */
final class DrawingFolder {
    static final String NAME = "drawings";
    private static final String ENDING = ".svg";

    private DrawingFolder() {}

    /** The files by the name a lesson calls them. */
    static Map<String, SourceFile> read(Folder folder, Problems problems) {
        Map<String, SourceFile> files = new TreeMap<>();
        for (String name : folder.names(NAME)) {
            String path = NAME + "/" + name;
            if (!name.matches("[a-z0-9][a-z0-9-]*\\.svg")) {
                problems.add(Problem.ofFile(
                        folder.name() + "/" + path, "a drawing is not called so", "Use small letters, digits and hyphens, and end it in " + ENDING + "."));
                continue;
            }
            SourceFile file = folder.read(path);
            if (file != null) {
                files.put(name.substring(0, name.length() - ENDING.length()), file);
            }
        }
        return files;
    }
}
