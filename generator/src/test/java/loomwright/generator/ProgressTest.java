package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The line that says how far long work has come. */
class ProgressTest {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);

    private String after(boolean watched, long milliseconds) throws InterruptedException {
        try (Progress progress = new Progress(out, "pages", watched)) {
            Thread.sleep(milliseconds);
            progress.counting((address, file) -> { }).put("a.html", new byte[0]);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }

    @Test
    void saysNothingWhereNobodyLooksOn() throws InterruptedException {
        assertEquals("", after(false, 2_100));
    }

    /** What Java 22 and later give where there is no terminal; Java 17 gives nothing then, and a console without that question where there is one. */
    public static final class Console {
        private final boolean terminal;

        Console(boolean terminal) {
            this.terminal = terminal;
        }

        public boolean isTerminal() {
            return terminal;
        }
    }

    @Test
    void asksAConsoleWhetherSomebodySitsThere() {
        assertFalse(Progress.isWatched(null));
        assertTrue(Progress.isWatched(new Object()));
        assertTrue(Progress.isWatched(new Console(true)));
        assertFalse(Progress.isWatched(new Console(false)));
    }

    @Test
    void saysNothingOfShortWork() throws InterruptedException {
        assertEquals("", after(true, 0));
    }

    @Test
    void countsPagesAndWipesTheLineAtTheEnd() throws InterruptedException {
        String said = after(true, 2_100);
        assertTrue(said.startsWith("\r1 pages ..."), said);
        assertTrue(said.endsWith("\r           \r"), said);
    }
}
