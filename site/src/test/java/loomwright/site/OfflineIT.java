package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** On a web server: the site is kept at the first visit, works without the server, and is renewed when the reader says so. */
@ExtendWith(WithBrowser.class)
class OfflineIT {
    private static final String KEPT = "return document.getElementById('kept') === null ? '' : document.getElementById('kept').textContent";

    @TempDir
    Path folder;

    private Browser browser;
    private WebServer server;

    @BeforeEach
    void begin(Browser shared) throws IOException {
        browser = shared;
        browser.open("about.html");
        browser.network(true);
        server = new WebServer(BuiltSite.file(""));
    }

    @AfterEach
    void end() {
        server.close();
        browser.command("Storage.clearDataForOrigin", Map.of("origin", server.address("").replace("/course/", ""), "storageTypes", "all"));
        browser.network(false);
    }

    private void visit(String page) {
        browser.go(server.address(page));
    }

    private void visitUntilKept() {
        visit("index.html");
        browser.until(60, () -> !browser.run(KEPT).equals(""));
    }

    @Test
    void afterTheFirstVisitItNeedsNoServer() throws IOException {
        visitUntilKept();
        String said = (String) browser.run(KEPT);
        assertTrue(said.matches("This browser keeps the whole site, so that it works without a network: \\d{3} files, \\d+\\.\\d MB\\."), said);
        System.out.println("[offline] " + said);
        assertEquals(List.of(), browser.messages());
        server.stop();
        visit("lessons/08-voltage-drop.html");
        assertEquals("Voltage drop", browser.text("h1"));
        visit("calculators/voltage-drop.html");
        Form form = new Form(browser, "voltage-drop");
        form.enter("current", "3 A");
        assertFalse(form.own("drop").isEmpty());
        visit("search.html");
        browser.focus("#search-for");
        browser.press("ampacity");
        assertFalse(browser.text("#search-found").isBlank());
        visit("");
        assertFalse(browser.text("h1").isEmpty(), "the folder is the start page");
        List<?> kept = (List<?>) browser.driver().executeAsyncScript("const done = arguments[0];"
                + "caches.open('loomwright').then(cache => cache.keys()).then(all => done(all.map(each => each.url.replace(/.*[/]kept[/][0-9a-f]*[/]/, ''))))");
        for (String page : BuiltSite.pages()) {
            assertTrue(kept.contains(page), page);
        }
        browser.width(360);
        browser.keepPicture("offline-start-360");
    }

    @Test
    void aPhoneCanInstallIt() {
        visitUntilKept();
        assertEquals(server.address("loomwright.webmanifest"), browser.run("return document.querySelector('link[rel=manifest]').href"));
        Map<?, ?> manifest = (Map<?, ?>) browser.command("Page.getAppManifest", Map.of());
        assertEquals(List.of(), manifest.get("errors"));
        Map<?, ?> errors = (Map<?, ?>) browser.command("Page.getInstallabilityErrors", Map.of());
        assertEquals(List.of(), errors.get("installabilityErrors"));
        assertEquals(List.of(), browser.messages());
    }

    @Test
    void fromADiskItAsksForNothing() {
        browser.open("index.html");
        assertEquals(0L, browser.run("return document.querySelectorAll('link[rel=manifest]').length"));
        assertEquals("", browser.run(KEPT));
        assertEquals(List.of(), browser.messages());
    }

    /** The site again, with another sentence on one page. */
    private Path changedSite() throws IOException, InterruptedException {
        Path content = folder.resolve("content");
        Path ours = Path.of("../content");
        try (Stream<Path> files = Files.walk(ours)) {
            for (Path file : files.toList()) {
                Path copy = content.resolve(ours.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(file, copy);
                }
            }
        }
        Path about = content.resolve("pages/about.md");
        Files.writeString(about, Files.readString(about) + "\nThis sentence is new.\n");
        Process process = new ProcessBuilder("java", "-jar", "generator/target/loomwright.jar", "build", "--content", content.toString(), "--out", folder.resolve("site").toString())
                .directory(Path.of("..").toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        return folder.resolve("site");
    }

    @Test
    void aNewerVersionIsToldAndLoadedOnlyWhenTheReaderPresses() throws Exception {
        Path changed = changedSite();
        visitUntilKept();
        server.stop();
        server.start(changed);
        visit("calculators/voltage-drop.html");
        Form form = new Form(browser, "voltage-drop");
        form.enter("current", "3.217 A");
        form.type("answer", "0.1");
        browser.run("window.sameWindow = true");
        browser.until(60, () -> (boolean) browser.run("return document.querySelector('.newer') !== null"));
        Thread.sleep(1500);
        assertEquals(true, browser.run("return window.sameWindow"), "nothing is loaded anew by itself");
        assertEquals("3.217 A", form.value("current"));
        browser.width(360);
        browser.keepPicture("offline-newer-360");
        browser.width(1280);
        visit("about.html");
        assertFalse(browser.text("main").contains("This sentence is new."), "the old version is still shown");
        visit("calculators/voltage-drop.html");
        form.enter("current", "3.217 A");
        form.type("answer", "0.1");
        browser.until(60, () -> (boolean) browser.run("return document.querySelector('.newer') !== null"));
        browser.run("window.sameWindow = true");
        browser.find(".newer button").click();
        browser.until(() -> browser.run("return window.sameWindow") == null && (boolean) browser.run("return document.querySelector('form.try') !== null"));
        browser.until(() -> "3.217 A".equals(form.value("current")) && "0.1".equals(form.value("answer")));
        assertFalse(form.own("drop").isEmpty(), "the working follows what was typed");
        assertEquals(false, browser.run("return document.querySelector('.newer') !== null"));
        visit("about.html");
        assertTrue(browser.text("main").contains("This sentence is new."));
        assertEquals(List.of(), browser.messages());
    }
}
