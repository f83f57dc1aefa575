package loomwright.generator.preview;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.util.Set;

/** One question of a browser, and the answer to it. */
final class Reply {
    private static final int NO_BODY = -1;

    private final HttpExchange exchange;

    Reply(HttpExchange exchange) {
        this.exchange = exchange;
    }

    /** Whether the question names this machine: the page of somebody else could have its own name lead here, and read a draft. */
    boolean isAskedOf(int port) {
        String host = exchange.getRequestHeaders().getFirst("Host");
        return host != null && Set.of("localhost:" + port, "127.0.0.1:" + port, "[::1]:" + port).contains(host);
    }

    /** Whether the question is one for reading. */
    boolean isReading() {
        return exchange.getRequestMethod().equals("GET") || isForHeadOnly();
    }

    private boolean isForHeadOnly() {
        return exchange.getRequestMethod().equals("HEAD");
    }

    void refuseMethod() throws IOException {
        exchange.getResponseHeaders().set("Allow", "GET, HEAD");
        exchange.sendResponseHeaders(405, NO_BODY);
        exchange.close();
    }

    void send(int status, String type, byte[] body) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", type);
        exchange.getResponseHeaders().set("X-Content-Type-Options", "nosniff");
        exchange.getResponseHeaders().set("Cache-Control", "no-store");
        if (isForHeadOnly()) {
            exchange.getResponseHeaders().set("Content-Length", Integer.toString(body.length));
            exchange.sendResponseHeaders(status, NO_BODY);
        } else if (body.length == 0) {
            exchange.sendResponseHeaders(status, NO_BODY);
        } else {
            exchange.sendResponseHeaders(status, body.length);
            exchange.getResponseBody().write(body);
        }
        exchange.close();
    }
}
