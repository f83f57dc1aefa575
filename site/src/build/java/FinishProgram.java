import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/**
 * Makes the compiled page program start by itself, and holds it to its budget.
 *
 * <p>Run by the build: {@code java FinishProgram.java COMPILED_FILE FINISHED_FILE BUDGET}, the budget in units of 1000 bytes, compressed. A
 * page may hold no script of its own, so the call that starts the program has to be in the file.
 */
final class FinishProgram {
    public static void main(String[] arguments) throws IOException {
        Path finished = Path.of(arguments[1]);
        long budget = 1000L * Integer.parseInt(arguments[2]);
        String program = "(function(){" + Files.readString(Path.of(arguments[0])) + "\nmain([]);})();\n";
        int compressed = compressedSize(program.getBytes("UTF-8"));
        System.out.println("[page program] " + program.length() + " bytes, " + compressed + " compressed; the budget is " + budget);
        if (compressed > budget) {
            System.err.println("The page program is over its budget by " + (compressed - budget) + " bytes, compressed. "
                    + "String.format, regular expressions and printing a double are the usual causes; the limit is in site/pom.xml.");
            System.exit(1);
        }
        Files.createDirectories(finished.getParent());
        Files.writeString(finished, program);
    }

    private static int compressedSize(byte[] bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out) {
            {
                def.setLevel(Deflater.BEST_COMPRESSION);
            }
        }) {
            gzip.write(bytes);
        }
        return out.size();
    }
}
