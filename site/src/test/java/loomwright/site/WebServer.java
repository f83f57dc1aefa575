package loomwright.site;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** A folder on a web server of this machine, which can be stopped and started again under the same address. */
final class WebServer implements AutoCloseable {
    private final int port;
    private HttpServer server;
    private ExecutorService threads;

    WebServer(Path folder) throws IOException {
        this(folder, 0);
    }

    private WebServer(Path folder, int port) throws IOException {
        start(folder, port);
        this.port = server.getAddress().getPort();
    }

    void start(Path folder) throws IOException {
        start(folder, port);
    }

    private void start(Path folder, int at) throws IOException {
        threads = Executors.newFixedThreadPool(4);
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), at), 0);
        server.setExecutor(threads);
        server.createContext("/", exchange -> serve(folder, exchange));
        server.start();
    }

    String address(String page) {
        return "http://localhost:" + port + "/course/" + page;
    }

    private static void serve(Path folder, HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath().replaceFirst("^/course/", "");
        Path file = folder.resolve(path.isEmpty() ? "index.html" : path);
        boolean there = Files.isRegularFile(file);
        byte[] body = there ? Files.readAllBytes(file) : new byte[0];
        exchange.getResponseHeaders().set("Content-Type", type(path));
        exchange.sendResponseHeaders(there ? 200 : 404, body.length == 0 ? -1 : body.length);
        exchange.getResponseBody().write(body);
        exchange.close();
    }

    private static String type(String path) {
        return switch (path.substring(path.lastIndexOf('.') + 1)) {
            case "css" -> "text/css";
            case "js" -> "text/javascript";
            case "png" -> "image/png";
            case "svg" -> "image/svg+xml";
            case "webmanifest" -> "application/manifest+json";
            default -> "text/html; charset=utf-8";
        };
    }

    void stop() {
        server.stop(0);
        threads.shutdownNow();
    }

    @Override
    public void close() {
        stop();
    }
}
