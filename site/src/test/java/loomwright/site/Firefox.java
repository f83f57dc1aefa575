package loomwright.site;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.TimeUnit;
import org.openqa.selenium.json.Json;

/** Firefox over WebDriver BiDi, which it speaks itself: no driver program is needed, and Debian carries none. */
final class Firefox implements OtherBrowser {
    private static final String LISTENING = "WebDriver BiDi listening on ";
    private static final String CONTROL = "\uE009";

    private final Path profile;
    private final Process process;
    private final WebSocket socket;
    private final BlockingQueue<Map<String, Object>> answers = new ArrayBlockingQueue<>(1000);
    private final String context;
    private int last;

    Firefox(Path program) throws IOException {
        profile = Files.createTempDirectory("firefox");
        process = new ProcessBuilder(
                        program.toString(), "--headless", "--no-remote", "--profile", profile.toString(),
                        "--remote-debugging-port=" + OtherBrowser.freePort(), "about:blank")
                .redirectErrorStream(true)
                .start();
        String address = listening();
        socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(URI.create(address + "/session"), new Answers())
                .join();
        command("session.new", Map.of("capabilities", Map.of()));
        // The window it starts with is behind all others: no page in it is told that a field is entered or left.
        context = (String) command("browsingContext.create", Map.of("type", "window")).get("context");
    }

    /** Reads what it says until it names the address; what it says later is read and dropped, so that it never waits for a reader. */
    private String listening() throws IOException {
        BufferedReader said = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            if (line.startsWith(LISTENING)) {
                Thread rest = new Thread(() -> said.lines().forEach(each -> {}));
                rest.setDaemon(true);
                rest.start();
                return line.substring(LISTENING.length());
            }
        }
        throw new IOException("Firefox ended before it listened.");
    }

    /** Gathers the parts of each message. */
    private final class Answers implements WebSocket.Listener {
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean isLast) {
            text.append(part);
            if (isLast) {
                answers.add(new Json().toType(text.toString(), Json.MAP_TYPE));
                text.setLength(0);
            }
            from.request(1);
            return null;
        }
    }

    private Map<?, ?> command(String method, Map<String, Object> parameters) {
        int id = ++last;
        socket.sendText(new Json().toJson(Map.of("id", id, "method", method, "params", parameters)), true).join();
        try {
            while (true) {
                Map<String, Object> answer = answers.poll(60, TimeUnit.SECONDS);
                if (answer == null) {
                    throw new AssertionError("no answer to " + method);
                }
                if (answer.get("id") instanceof Number number && number.intValue() == id) {
                    if (!"success".equals(answer.get("type"))) {
                        throw new AssertionError(method + ": " + answer.get("message"));
                    }
                    return (Map<?, ?>) answer.get("result");
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void go(String address) {
        command("browsingContext.navigate", Map.of("context", context, "url", address, "wait", "complete"));
    }

    @Override
    public Object run(String expression) {
        Map<?, ?> answer = command(
                "script.evaluate", Map.of("expression", expression, "target", Map.of("context", context), "awaitPromise", false));
        if (answer.containsKey("exceptionDetails")) {
            throw new AssertionError(expression + ": " + ((Map<?, ?>) answer.get("exceptionDetails")).get("text"));
        }
        return ((Map<?, ?>) answer.get("result")).get("value");
    }

    @Override
    public void press(String keys) {
        List<Object> actions = new ArrayList<>();
        keys.codePoints().mapToObj(Character::toString).forEach(key -> {
            actions.add(Map.of("type", "keyDown", "value", key));
            actions.add(Map.of("type", "keyUp", "value", key));
        });
        perform(actions);
    }

    @Override
    public void control(String letter) {
        perform(List.of(
                Map.of("type", "keyDown", "value", CONTROL),
                Map.of("type", "keyDown", "value", letter),
                Map.of("type", "keyUp", "value", letter),
                Map.of("type", "keyUp", "value", CONTROL)));
    }

    private void perform(List<Object> actions) {
        command(
                "input.performActions",
                Map.of("context", context, "actions", List.of(Map.of("type", "key", "id", "keys", "actions", actions))));
    }

    @Override
    public boolean prints() {
        return true;
    }

    @Override
    public byte[] print() {
        return Base64.getDecoder().decode((String) command("browsingContext.print", Map.of("context", context)).get("data"));
    }

    @Override
    public void close() {
        try {
            command("browser.close", Map.of());
            process.waitFor(10, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            process.destroyForcibly();
            OtherBrowser.delete(profile);
        }
    }

    static Firefox start(Path program) {
        try {
            return new Firefox(program);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
