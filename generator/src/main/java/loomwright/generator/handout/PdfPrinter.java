package loomwright.generator.handout;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Stream;
import loomwright.generator.problem.UserMistake;

/** Prints a page to PDF by a Chromium browser of this machine. Without one the pages are still there. */
public final class PdfPrinter {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome", "chrome", "msedge", "chrome.exe", "msedge.exe");
    private static final int LONGEST_SECONDS = 300;

    private final Path browser;
    private final Consumer<String> progress;

    /**
     * A printer.
     *
     * @param named the browser that was named, or null to look for one
     * @param progress takes a word on how far it is, again and again
     */
    public PdfPrinter(Path named, Consumer<String> progress) {
        this.progress = progress;
        UserMistake.unless(
                named == null || Files.isExecutable(named),
                "--browser " + named + " is not a program. Name the program file of a Chromium browser, or leave it out.");
        this.browser = named == null ? find(System.getenv("PATH")) : named;
    }

    /** The first browser in these folders, or null. */
    static Path find(String folders) {
        for (String folder : (folders == null ? "" : folders).split(File.pathSeparator)) {
            for (String name : NAMES) {
                Path file = Path.of(folder).resolve(name);
                if (!folder.isEmpty() && Files.isExecutable(file)) {
                    return file;
                }
            }
        }
        return null;
    }

    /**
     * What came of printing.
     *
     * @param done whether there is a PDF
     * @param words a sentence about it
     */
    public record Printed(boolean done, String words) {}

    /**
     * Prints, and says what came of it.
     *
     * @param shown where the PDF will be found in the end
     */
    public Printed print(Path page, Path pdf, Path shown) {
        try {
            if (browser == null) {
                return new Printed(
                        false, "No PDF: no Chromium browser was found on this machine. Open the pages in any browser and print them, or name one with --browser.");
            }
            Files.deleteIfExists(pdf);
            run(page, pdf);
            boolean done = Files.exists(pdf) && Files.size(pdf) > 0;
            return new Printed(
                    done,
                    done
                            ? "One PDF with everything: " + shown
                            : "No PDF: " + browser + " did not print one. Open the pages in any browser and print them, or name another browser with --browser.");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            page.toFile().delete();
        }
    }

    private void run(Path page, Path pdf) throws IOException {
        Path profile = Files.createTempDirectory("handout-browser");
        try {
            Process process = new ProcessBuilder(
                            browser.toString(), "--headless=new", "--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking",
                            "--disable-component-update", "--disable-sync", "--disable-dev-shm-usage", "--user-data-dir=" + profile,
                            "--no-pdf-header-footer", "--print-to-pdf=" + pdf.toAbsolutePath(), page.toUri().toString())
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            int seconds = 0;
            while (!process.waitFor(1, TimeUnit.SECONDS) && seconds < LONGEST_SECONDS) {
                seconds++;
                progress.accept("Printing the PDF: " + seconds + " s ...");
            }
            process.destroyForcibly();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            remove(profile);
        }
    }

    /** A browser may still write into its folder as it ends; what is left then lies in the folder for temporary files. */
    private static void remove(Path folder) {
        try (Stream<Path> tree = Files.walk(folder)) {
            tree.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        } catch (IOException | UncheckedIOException e) {
            folder.toFile().deleteOnExit();
        }
    }
}
