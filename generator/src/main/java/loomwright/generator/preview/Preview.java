package loomwright.generator.preview;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import loomwright.generator.build.SiteBuild;

/** Serves the site from memory, and builds it again whenever a file is saved. */
public final class Preview implements AutoCloseable {
    /** Before the address is told: then the first save, however soon, is no slower than an author puts up with. */
    private static final int BUILDS_BEFORE_OPENING = 4;
    /** While the author reads. */
    private static final int BUILDS_AFTER_OPENING = 10;

    private final LiveSite site;
    private final FolderWatch watch;
    private final EventStreams pages = new EventStreams();
    private final Consumer<String> log;
    private final HttpServer server;
    private final ExecutorService threads = Executors.newCachedThreadPool(task -> {
        Thread thread = new Thread(task, "preview");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * Builds the site and begins to serve it to this machine.
     *
     * @param folders what to watch
     * @param port where to serve; 0 takes any free port
     * @param log takes a line or more after each build
     * @throws IOException if the port is taken
     */
    public Preview(SiteBuild build, List<Path> folders, int port, Consumer<String> log) throws IOException {
        this.server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        this.site = new LiveSite(build);
        this.log = log;
        this.watch = new FolderWatch(folders);
        rebuild();
        site.warmUp(BUILDS_BEFORE_OPENING, watch::hasChanged);
        server.createContext("/", this::serve);
        server.setExecutor(threads);
        server.start();
        threads.execute(this::follow);
    }

    /** The address of the start page. */
    public String address() {
        return "http://localhost:" + server.getAddress().getPort() + "/";
    }

    private void follow() {
        site.warmUp(BUILDS_AFTER_OPENING, watch::hasChanged);
        try {
            while (watch.awaitChange()) {
                rebuild();
                pages.built();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void rebuild() {
        site.rebuild();
        log.accept(site.problems().isEmpty() ? "The pages are as you saved them." : site.problems());
    }

    private void serve(HttpExchange exchange) throws IOException {
        Reply reply = new Reply(exchange);
        if (!reply.isAskedOf(server.getAddress().getPort())) {
            reply.send(421, MediaType.HTML, PreviewPage.ofProblems("This is the preview of " + address() + " and answers to that name only."));
        } else if (!reply.isReading()) {
            reply.refuseMethod();
        } else {
            answer(exchange, reply);
        }
    }

    private void answer(HttpExchange exchange, Reply reply) throws IOException {
        String path = exchange.getRequestURI().getPath();
        String address = path.equals("/") ? "index.html" : path.substring(Math.min(1, path.length()));
        byte[] file = site.file(address);
        if (path.equals(PreviewPage.EVENTS)) {
            pages.serve(exchange);
        } else if (path.equals(PreviewPage.OFFLINE)) {
            // a browser that keeps the site would show the author an old page
            reply.send(200, MediaType.of(path), new byte[0]);
        } else if (path.equals(PreviewPage.SCRIPT)) {
            reply.send(200, MediaType.of(path), PreviewPage.script().getBytes(StandardCharsets.UTF_8));
        } else if (address.endsWith(".html") && !site.problems().isEmpty()) {
            reply.send(200, MediaType.HTML, PreviewPage.ofProblems(site.problems()));
        } else if (file == null) {
            reply.send(404, MediaType.HTML, PreviewPage.ofProblems("The site has no page \"" + address + "\"."));
        } else {
            reply.send(200, MediaType.of(address), address.endsWith(".html") ? PreviewPage.withReload(file) : file);
        }
    }

    @Override
    public void close() {
        watch.close();
        server.stop(0);
        threads.shutdownNow();
    }
}
