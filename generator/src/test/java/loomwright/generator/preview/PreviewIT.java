package loomwright.generator.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.HttpURLConnection;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import loomwright.generator.TestSite;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class PreviewIT {
    private static final int HALF_A_SECOND = 500;
    private static final int MOST_SAVES = 40;

    @TempDir
    Path folder;

    private TestSite site;
    private Preview preview;

    @BeforeEach
    void begin() throws IOException {
        site = new TestSite(folder);
        preview = new Preview(site.build(), List.of(folder), 0, line -> { });
    }

    @AfterEach
    void end() {
        preview.close();
    }

    private HttpURLConnection open(String path) throws IOException {
        return (HttpURLConnection) URI.create(preview.address() + path).toURL().openConnection();
    }

    private String page(String path) throws IOException {
        return new String(open(path).getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    /** What a page in the browser holds open. */
    private BufferedReader events() throws IOException {
        BufferedReader reader =
                new BufferedReader(new InputStreamReader(open(".preview/events").getInputStream(), StandardCharsets.UTF_8));
        assertEquals(": still here", reader.readLine());
        return reader;
    }

    private static void awaitBuilt(BufferedReader events) throws IOException {
        String line = events.readLine();
        while (!line.equals("event: built")) {
            line = events.readLine();
        }
    }

    @Test
    void servesPagesThatReloadThemselves() throws IOException {
        assertTrue(page("").contains("/.preview/reload.js"));
        assertTrue(page("lessons/01-first.html").contains("Some text."));
        assertEquals("body { color: black; }\n", page("plain.css"));
        assertEquals(404, open("nothing.html").getResponseCode());
        assertEquals(404, open("../../etc/passwd").getResponseCode());
    }

    /** The machine may be busy with something else, so the quickest of many saves counts. */
    @Test
    void showsTheNewTextWithinHalfASecondOfSaving() throws IOException {
        BufferedReader events = events();
        long quickest = Long.MAX_VALUE;
        for (int save = 0; save < MOST_SAVES && quickest >= HALF_A_SECOND; save++) {
            long start = System.nanoTime();
            site.lesson("Save " + save + ".\n");
            awaitBuilt(events);
            quickest = Math.min(quickest, (System.nanoTime() - start) / 1_000_000);
            while (!page("lessons/01-first.html").contains("Save " + save + ".")) {
                awaitBuilt(events);
            }
        }
        assertTrue(quickest < HALF_A_SECOND, "milliseconds from saving to reloading: " + quickest);
    }

    @Test
    void showsProblemsInPlaceOfThePageUntilTheyAreMended() throws IOException {
        BufferedReader events = events();
        site.lesson("It is {{scenario.nothing}}.\n");
        awaitBuilt(events);
        String shown = page("lessons/01-first.html");
        assertTrue(shown.contains("no figure of the scenario is called &quot;nothing&quot;"), shown);
        assertTrue(shown.contains("/.preview/reload.js"));
        site.lesson("Mended.\n");
        awaitBuilt(events);
        assertTrue(page("lessons/01-first.html").contains("Mended."));
    }

    @Test
    void noticesANewLesson() throws IOException {
        BufferedReader events = events();
        site.write("lessons/02-second/lesson.md", TestSite.FRONT + "Second.\n");
        for (int tries = 0; tries < 5 && open("lessons/02-second.html").getResponseCode() != 200; tries++) {
            awaitBuilt(events);
        }
        assertTrue(page("lessons/02-second.html").contains("Second."));
        site.write("lessons/02-second/lesson.md", TestSite.FRONT + "Changed.\n");
        while (!page("lessons/02-second.html").contains("Changed.")) {
            awaitBuilt(events);
        }
    }

    @Test
    void isThereForThisMachineOnly() throws IOException {
        int port = URI.create(preview.address()).getPort();
        for (InetAddress other : InetAddress.getAllByName(InetAddress.getLocalHost().getHostName())) {
            if (!other.isLoopbackAddress()) {
                assertFalse(answers(other, port), "answers at " + other);
            }
        }
    }

    private static boolean answers(InetAddress address, int port) {
        try (Socket socket = new Socket(address, port)) {
            return socket.isConnected();
        } catch (IOException refused) {
            return false;
        }
    }
}
