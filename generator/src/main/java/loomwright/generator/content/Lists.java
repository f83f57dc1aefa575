package loomwright.generator.content;

import loomwright.generator.problem.SourceFile;

/** Where an author adds what a text names: in the folder the text is in, be it ours or a club's. */
public final class Lists {
    private Lists() {}

    /** What to do about a name that is not in a list, such as {@code sources.csv}. */
    public static String add(SourceFile file, String list) {
        return "Add it to " + folder(file.name()) + list + ".";
    }

    /** The content folder of a file, with a slash, or an empty text if it is the list itself. */
    private static String folder(String file) {
        for (String part : new String[] {"/lessons/", "/pages/", "/tables/", "/circuits/", "/glossary.md"}) {
            int at = file.lastIndexOf(part);
            if (at >= 0) {
                return file.substring(0, at + 1);
            }
        }
        return "";
    }
}
