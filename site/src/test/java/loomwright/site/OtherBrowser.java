package loomwright.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** A browser of another family than the one that all other tests use: as much of it as a smoke journey needs. */
interface OtherBrowser extends AutoCloseable {
    /** Goes to an address and waits until the page is loaded. */
    void go(String address);

    /** What an expression is worth in the page: a text, a number, a truth value. */
    Object run(String expression);

    /** Presses keys one after the other; they go to whatever has the focus. Special keys are those of Selenium's {@code Keys}. */
    void press(String keys);

    /** Presses a letter while Control is held. */
    void control(String letter);

    /** Whether it can be asked for a print. */
    boolean prints();

    /** The page as it would be printed: a PDF. */
    byte[] print();

    @Override
    void close();

    /** Waits until something is so. */
    default void until(String what, BooleanSupplier condition) {
        long end = System.nanoTime() + 30_000_000_000L;
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("not within 30 s: " + what);
            }
            pause();
        }
    }

    static void pause() {
        try {
            Thread.sleep(50);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** A port that is free now. */
    static int freePort() {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void delete(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).forEach(each -> each.toFile().delete());
        } catch (IOException | UncheckedIOException gone) {
            // A browser that is still ending may be writing there; the folder is one for temporary files.
        }
    }
}
