package loomwright.circuit.file;

/**
 * Why a file cannot be taken.
 *
 * @param path the place in the file, such as {@code parts[3].size}; empty for the file as a whole
 * @param line the line, from 1; 0 if there is none, as in a link
 * @param column the column, from 1
 * @param message what is wrong and what to do
 */
public record FileFault(String path, int line, int column, String message) {
    /** The fault on one line. */
    public String text() {
        String place = line == 0 ? "" : "line " + line + ", column " + column + ": ";
        return place + (path.isEmpty() ? "" : path + ": ") + message;
    }
}
