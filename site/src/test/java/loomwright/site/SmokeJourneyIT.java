package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import loomwright.catalogue.Catalogue;
import loomwright.worked.Outcome;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.Keys;

/** One way through the site in browsers of the two other families: open, type, climb, change a circuit, open it again, print. */
class SmokeJourneyIT {
    private static final String WITHOUT = "is not on this machine: its journey is left out. Debian's packages: firefox-esr,"
            + " or webkit2gtk-driver with xvfb; bash .ci/test --install-browser brings them.";

    static Stream<Named<Supplier<OtherBrowser>>> browsers() {
        return Stream.of(Named.of("Firefox", SmokeJourneyIT::firefox), Named.of("WebKit", SmokeJourneyIT::webKit));
    }

    private static OtherBrowser firefox() {
        Path program = found("firefox-esr");
        assumeTrue(program != null, "Firefox " + WITHOUT);
        return Firefox.start(program);
    }

    private static OtherBrowser webKit() {
        Path driver = found("WebKitWebDriver");
        Path display = found("Xvfb");
        Path browser = miniBrowser();
        assumeTrue(driver != null && display != null && browser != null, "WebKit " + WITHOUT);
        return WebKit.start(display, driver, browser);
    }

    private static Path found(String program) {
        for (String folder : System.getenv("PATH").split(File.pathSeparator)) {
            Path file = Path.of(folder, program);
            if (Files.isExecutable(file)) {
                return file;
            }
        }
        return null;
    }

    /** Debian keeps it in the folder of the library, which is named after the machine. */
    private static Path miniBrowser() {
        try (Stream<Path> machines = Files.list(Path.of("/usr/lib"))) {
            return machines.map(each -> each.resolve("webkit2gtk-4.1/MiniBrowser"))
                    .filter(Files::isExecutable)
                    .findFirst()
                    .orElse(null);
        } catch (IOException none) {
            return null;
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("browsers")
    void opensTypesClimbsChangesACircuitOpensItAgainAndPrints(Supplier<OtherBrowser> start) throws IOException {
        try (OtherBrowser browser = start.get()) {
            anExampleTakesOtherFigures(browser);
            aCircuitIsChangedAndKept(browser);
            if (browser.prints()) {
                aLessonPrints(browser);
            }
        }
    }

    private static void anExampleTakesOtherFigures(OtherBrowser browser) {
        BuiltSite.Example example = BuiltSite.examples().stream()
                .filter(each -> each.page().startsWith("lessons/08") && each.calculator().equals("voltage-drop"))
                .findFirst()
                .orElseThrow();
        open(browser, example.page());
        browser.run("document.getElementById('" + example.key() + "').scrollIntoView()");
        browser.until("the example is taken over", () -> (boolean) browser.run(
                "document.getElementById('" + example.key() + "-route-length') !== null"));
        type(browser, example.key() + "-route-length", "8.4 m");
        browser.press(Keys.TAB.toString());
        Map<String, String> other = new LinkedHashMap<>(example.given());
        other.put("route-length", "8.4 m");
        String drop = Outcome.of(Catalogue.find("voltage-drop"), other).working().result("drop").quantity().text().replace('\u00a0', ' ');
        shows(browser, "#" + example.key() + " [data-result=drop]", drop);

        // A field that was emptied takes what is typed next, and nothing else.
        type(browser, example.key() + "-route-length", Keys.BACK_SPACE.toString());
        OtherBrowser.pause();
        browser.press("7 m");
        assertEquals("7 m", browser.run("document.getElementById('" + example.key() + "-route-length').value"));

        String rung = "document.querySelector('#" + example.key() + " [data-rung=\"2\"]')";
        browser.run(rung + ".focus()");
        browser.press(Keys.ENTER.toString());
        String blank = "#" + example.key() + " .yours input";
        browser.until("a blank to fill in", () -> (boolean) browser.run("document.querySelector('" + blank + "') !== null"));
    }

    private static void aCircuitIsChangedAndKept(OtherBrowser browser) {
        open(browser, CircuitOnPage.PAGE);
        browser.run("document.querySelector('.plan [data-part=main-lead] .pick').click()");
        type(browser, "part-size", "25 mm2");
        browser.press(Keys.TAB.toString());
        String row = ".plan [data-part=main-lead]";
        shows(browser, row, "25 mm");
        anEmptiedFieldTakesWhatIsTypedNext(browser);
        open(browser, "index.html");
        open(browser, CircuitOnPage.PAGE);
        shows(browser, row, "25 mm");
        assertEquals("77 %", browser.run("JSON.parse(localStorage.getItem('loomwright-circuit').split('\\u001e')[0]).parts[0]['state-of-charge']"));
    }

    /** Emptied and left, a field of a part shows what is usual; who comes back to it and types has typed that and nothing else. */
    private static void anEmptiedFieldTakesWhatIsTypedNext(OtherBrowser browser) {
        browser.run("document.querySelector('.plan [data-part=battery] .pick').click()");
        browser.run("document.querySelectorAll('#circuit-form details').forEach(each => { each.open = true; })");
        String id = "part-state-of-charge";
        String field = "document.getElementById('" + id + "').value";
        type(browser, id, Keys.BACK_SPACE.toString());
        OtherBrowser.pause();
        assertEquals("", browser.run(field), "it springs back while it is being typed into");
        browser.press("55 %");
        assertEquals("55 %", browser.run(field));
        type(browser, id, Keys.BACK_SPACE.toString());
        browser.press(Keys.TAB.toString());
        browser.until("the usual state", () -> browser.run(field).equals("100"));
        browser.run("document.getElementById('" + id + "').focus()");
        browser.press("77");
        assertEquals("77", browser.run(field));
        browser.press(Keys.TAB.toString());
    }

    private static void aLessonPrints(OtherBrowser browser) throws IOException {
        String page = BuiltSite.examples().get(0).page();
        open(browser, page);
        String title = text(browser, "h1");
        try (PDDocument paper = Loader.loadPDF(browser.print())) {
            String printed = new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
            assertTrue(printed.contains(title), "not on paper: " + title);
        }
    }

    private static void open(OtherBrowser browser, String page) {
        browser.go(BuiltSite.address(page));
        browser.until(
                "the program of " + page,
                () -> (boolean) browser.run("document.querySelector('script[data-program]') === null"
                        + " || document.documentElement.dataset.program === 'ready'"));
    }

    /** Waits until that element shows that text. */
    private static void shows(OtherBrowser browser, String selector, String text) {
        try {
            browser.until(text, () -> text(browser, selector).contains(text));
        } catch (AssertionError never) {
            throw new AssertionError(selector + " shows " + text(browser, selector) + ", not " + text, never);
        }
    }

    /** Types over what a field holds. */
    private static void type(OtherBrowser browser, String id, String text) {
        browser.run("document.getElementById('" + id + "').focus()");
        browser.control("a");
        browser.press(text);
    }

    private static String text(OtherBrowser browser, String selector) {
        return ((String) browser.run("(document.querySelector('" + selector.replace("'", "\\'") + "') || {textContent: ''}).textContent"))
                .replace('\u00a0', ' ')
                .strip();
    }
}
