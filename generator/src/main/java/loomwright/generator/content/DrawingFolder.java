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
            if (!name.endsWith(ENDING)) {
                problems.add(Problem.ofFile(
                        folder.name() + "/" + NAME + "/" + name, "this is not the place of such a file", "Drawings end in " + ENDING + "; photos go into the folder \"pictures\"."));
            }
        }
        for (String key : folder.keys(NAME, ENDING)) {
            SourceFile file = folder.read(NAME + "/" + key + ENDING);
            if (file != null) {
                files.put(key, file);
            }
        }
        return files;
    }
}
