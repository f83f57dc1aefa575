package loomwright.site;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where the browser and its driver are on this machine. */
final class Chromium {
    private static final String REMEDY = "The browser tests need Chromium with ChromeDriver. Install Debian's packages chromium and"
            + " chromium-driver, or say where they are with -Dchromium=FILE and -Dchromedriver=FILE, or leave these tests out with"
            + " -Dbrowser=none.";

    private Chromium() {}

    static Path browser() {
        return program("chromium");
    }

    static Path driver() {
        return program("chromedriver");
    }

    private static Path program(String name) {
        String named = System.getProperty(name);
        if (named != null) {
            return required(Path.of(named));
        }
        for (String folder : System.getenv("PATH").split(File.pathSeparator)) {
            Path file = Path.of(folder, name);
            if (Files.isExecutable(file)) {
                return file;
            }
        }
        throw new AssertionError("There is no " + name + " on this machine. " + REMEDY);
    }

    private static Path required(Path file) {
        if (!Files.isExecutable(file)) {
            throw new AssertionError(file + " is not there or is not a program. " + REMEDY);
        }
        return file;
    }
}
