import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;
import org.teavm.backend.javascript.JSModuleType;
import org.teavm.diagnostics.Problem;
import org.teavm.tooling.EmptyTeaVMToolLog;
import org.teavm.tooling.TeaVMTargetType;
import org.teavm.tooling.TeaVMTool;
import org.teavm.vm.TeaVMOptimizationLevel;

/**
 * Compiles the page programs to JavaScript, makes each start by itself, and holds it to its budget.
 *
 * <p>Run by the build: {@code java CompilePrograms.java OUTPUT_FOLDER BUDGET NAME...}, the budget in units of 1000 bytes, compressed; a
 * program with a budget of its own is written NAME:BUDGET. The program NAME begins in {@code loomwright.browser.NameProgram} and goes to {@code NAME.js}. All are compiled in one Java
 * machine, several at a time, which takes a third of the time of one after the other in machines of their own. Nothing is compiled if no
 * class has changed since the last time.
 */
final class CompilePrograms {
    private final Path output;
    private final long budget;
    private final List<File> classPath = new ArrayList<>();

    private CompilePrograms(Path output, long budget) {
        this.output = output;
        this.budget = budget;
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            classPath.add(new File(entry));
        }
    }

    public static void main(String[] arguments) throws Exception {
        CompilePrograms programs = new CompilePrograms(Path.of(arguments[0]), 1000L * Integer.parseInt(arguments[1]));
        List<String> names = List.of(arguments).subList(2, arguments.length);
        if (!programs.run(names)) {
            System.exit(1);
        }
    }

    private boolean run(List<String> names) throws Exception {
        Path mark = output.resolve("compiled-from");
        String fingerprint = names + " " + budget + " " + fingerprint();
        if (Files.exists(mark) && Files.readString(mark).equals(fingerprint)) {
            return true;
        }
        Files.createDirectories(output);
        Files.deleteIfExists(mark);
        deleteOldPrograms();
        ExecutorService workers = Executors.newFixedThreadPool(Math.min(names.size(), Runtime.getRuntime().availableProcessors()));
        List<Future<Boolean>> results = new ArrayList<>();
        for (String name : names) {
            int colon = name.indexOf(':');
            long own = colon < 0 ? budget : 1000L * Integer.parseInt(name.substring(colon + 1));
            results.add(workers.submit(() -> compile(colon < 0 ? name : name.substring(0, colon), own)));
        }
        boolean fine = true;
        for (Future<Boolean> result : results) {
            fine &= result.get();
        }
        workers.shutdown();
        if (fine) {
            Files.writeString(mark, fingerprint);
        }
        return fine;
    }

    /** A program that is no longer built would still be put into the site. */
    private void deleteOldPrograms() throws IOException {
        try (Stream<Path> files = Files.list(output)) {
            for (Path file : files.filter(file -> file.toString().endsWith(".js")).toList()) {
                Files.delete(file);
            }
        }
    }

    private boolean compile(String name, long allowed) throws Exception {
        String file = name + ".js";
        TeaVMTool tool = new TeaVMTool();
        URL[] urls = new URL[classPath.size()];
        for (int i = 0; i < urls.length; i++) {
            urls[i] = classPath.get(i).toURI().toURL();
        }
        tool.setClassLoader(new URLClassLoader(urls, CompilePrograms.class.getClassLoader()));
        tool.setClassPath(classPath);
        tool.setMainClass("loomwright.browser." + inCapitals(name) + "Program");
        tool.setTargetType(TeaVMTargetType.JAVASCRIPT);
        tool.setJsModuleType(JSModuleType.NONE);
        tool.setOptimizationLevel(TeaVMOptimizationLevel.ADVANCED);
        tool.setObfuscated(true);
        // No checks for null, index and cast in the compiled code: the tests show that none ever fails, and they cost 7 %.
        tool.setStrict(false);
        tool.setTargetDirectory(output.toFile());
        tool.setTargetFileName(file);
        tool.setLog(new EmptyTeaVMToolLog());
        tool.generate();
        List<Problem> problems = tool.getProblemProvider().getSevereProblems();
        for (Problem problem : problems) {
            System.err.println(file + ": " + problem.getText() + " " + List.of(problem.getParams()) + " " + problem.getLocation());
        }
        return problems.isEmpty() && finish(output.resolve(file), allowed);
    }

    /** {@code practice-runs} begins in the class {@code PracticeRunsProgram}. */
    private static String inCapitals(String name) {
        StringBuilder capitals = new StringBuilder();
        for (String word : name.split("-")) {
            capitals.append(Character.toUpperCase(word.charAt(0))).append(word.substring(1));
        }
        return capitals.toString();
    }

    /** A page may hold no script of its own, so the call that starts the program has to be in the file. */
    private static boolean finish(Path file, long allowed) throws IOException {
        String program = "(function(){" + Files.readString(file) + "\nmain([]);})();\n";
        byte[] bytes = program.getBytes(StandardCharsets.UTF_8);
        Files.write(file, bytes);
        int compressed = compressedSize(bytes);
        System.out.println("[page program] " + file.getFileName() + ": " + bytes.length + " bytes, " + compressed + " compressed");
        if (compressed > allowed) {
            System.err.println(file.getFileName() + " is over its budget of " + allowed + " bytes, compressed, by " + (compressed - allowed)
                    + ". String.format, regular expressions and printing a double are the usual causes; a subject that has grown too large can be cut in two. The limit is in site/pom.xml.");
        }
        return compressed <= allowed;
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

    /** Changes when a class of ours changes, or the version of a library. */
    private String fingerprint() throws Exception {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        for (File entry : classPath) {
            digest.update(entry.getName().getBytes(StandardCharsets.UTF_8));
            if (entry.isDirectory()) {
                for (Path file : classes(entry.toPath())) {
                    digest.update(file.toString().getBytes(StandardCharsets.UTF_8));
                    digest.update(Files.readAllBytes(file));
                }
            } else if (entry.getName().startsWith("loomwright")) {
                digest.update(Files.readAllBytes(entry.toPath()));
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static List<Path> classes(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }
}
