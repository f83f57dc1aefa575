package loomwright.generator.preview;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** The open pages that wait for the next build. */
final class EventStreams {
    private static final String BUILT = "event: built\ndata: now\n\n";
    private static final String STILL_HERE = ": still here\n\n";
    private static final int STILL_HERE_SECONDS = 15;

    private final Set<BlockingQueue<String>> pages = ConcurrentHashMap.newKeySet();

    /** Tells every open page that the site was built. */
    void built() {
        pages.forEach(page -> page.add(BUILT));
    }

    /** Keeps a page informed until it is closed. Runs in a thread of its own. */
    void serve(HttpExchange exchange) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
        exchange.getResponseHeaders().set("Cache-Control", "no-store");
        exchange.sendResponseHeaders(200, 0);
        BlockingQueue<String> page = new LinkedBlockingQueue<>();
        pages.add(page);
        try (OutputStream out = exchange.getResponseBody()) {
            write(out, STILL_HERE);
            while (!Thread.currentThread().isInterrupted()) {
                String event = page.poll(STILL_HERE_SECONDS, TimeUnit.SECONDS);
                write(out, event == null ? STILL_HERE : event);
            }
        } catch (IOException closed) {
            // the reader left the page: the only way to learn it is that writing fails
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            pages.remove(page);
        }
    }

    private static void write(OutputStream out, String event) throws IOException {
        out.write(event.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }
}
