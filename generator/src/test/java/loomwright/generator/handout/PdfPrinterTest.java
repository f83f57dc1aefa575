package loomwright.generator.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PdfPrinterTest {
    @TempDir
    Path folder;

    private Path program(String name, String script) throws IOException {
        Path file = Files.writeString(folder.resolve(name), "#!/bin/sh\n" + script + "\n");
        assertTrue(file.toFile().setExecutable(true));
        return file;
    }

    @Test
    void findsTheFirstBrowserOnThePath() throws IOException {
        assertNull(PdfPrinter.find(folder.toString()));
        assertNull(PdfPrinter.find(null));
        Path browser = program("chromium", "exit 0");
        assertEquals(browser, PdfPrinter.find(folder.resolve("none") + File.pathSeparator + folder));
    }

    @Test
    void saysSoIfNoPdfCameOfIt() throws IOException {
        Path page = Files.writeString(folder.resolve("whole.html"), "page");
        PdfPrinter.Printed printed = new PdfPrinter(program("chromium", "exit 0"), words -> { }).print(page, folder.resolve("out.pdf"), folder.resolve("out.pdf"));
        assertTrue(!printed.done() && printed.words().startsWith("No PDF: "), printed.words());
        assertTrue(printed.words().endsWith("Open the pages in any browser and print them, or name another browser with --browser."), printed.words());
        assertTrue(Files.notExists(page));
    }
}
