package loomwright.generator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Short work is done by a second Java with the options for it. A program that ends after two seconds gains nothing from the second
 * compiler: it takes more of the processors than the work itself. A jar cannot ask for options, so this one starts itself again, with the
 * classes as the build of the site left them beside the jar, if they are there and fit this Java (if not, Java goes on without a word).
 */
final class Restart {
    private static final List<String> QUICK = List.of(
            "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Xlog:cds=off", "-Xlog:cds+dynamic=off");
    private static final Set<String> SHORT = Set.of("build", "proof", "pack", "handout", "names", "circuit");
    /** With more lessons than this the second compiler pays. */
    private static final int MANY_LESSONS = 500;

    private Restart() {}

    /** Whether it was started as {@code java -jar loomwright.jar ...}, with no options of the user's own, for short work. */
    static boolean pays(String[] arguments) {
        String jar = System.getProperty("java.class.path");
        String[] given = ProcessHandle.current().info().arguments().orElse(new String[0]);
        return jar.endsWith(".jar")
                && given.length > 2
                && given[0].equals("-jar")
                && arguments.length > 0
                && SHORT.contains(arguments[0])
                && lessons(arguments) < MANY_LESSONS;
    }

    /** Runs the second Java and gives the number it ends with. */
    static int run(String[] arguments) throws IOException, InterruptedException {
        Path jar = Path.of(System.getProperty("java.class.path")).toAbsolutePath().normalize();
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(QUICK);
        Path classes = jar.resolveSibling("loomwright.jsa");
        if (Files.isRegularFile(classes)) {
            command.add("-XX:SharedArchiveFile=" + classes);
        }
        command.addAll(List.of("-cp", jar.toString(), Loomwright.class.getName()));
        command.addAll(List.of(arguments));
        Process second = new ProcessBuilder(command).inheritIO().start();
        Runtime.getRuntime().addShutdownHook(new Thread(second::destroy));
        return second.waitFor();
    }

    private static long lessons(String[] arguments) {
        long lessons = 0;
        for (int i = 1; i < arguments.length; i++) {
            String value = arguments[i].startsWith("--club=") ? arguments[i].substring("--club=".length())
                    : arguments[i - 1].equals("--club") ? arguments[i] : null;
            lessons += value == null ? 0 : lessons(Path.of(value));
        }
        return lessons;
    }

    private static long lessons(Path club) {
        try (Stream<Path> lessons = Files.list(club.resolve("lessons"))) {
            return lessons.count();
        } catch (IOException none) {
            return 0;
        }
    }
}
