package loomwright.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** The browser all tests share: no network, everything it says is kept. */
final class Browser implements AutoCloseable {
    private static final String READY =
            "return document.querySelector('script[data-program]') === null || document.documentElement.dataset.program === 'ready'";

    private final ChromeDriver driver;
    private boolean scripts = true;

    Browser() {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(Chromium.browser().toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-dev-shm-usage");
        LoggingPreferences logging = new LoggingPreferences();
        logging.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logging);
        ChromeDriverService service =
                new ChromeDriverService.Builder().usingDriverExecutable(Chromium.driver().toFile()).build();
        driver = new ChromeDriver(service, options);
        command("Network.enable", Map.of());
        network(false);
    }

    /** Leaves nothing of what was kept, opened or set, as if it had been started anew. */
    void asNew() {
        List<String> windows = new ArrayList<>(driver.getWindowHandles());
        for (String window : windows.subList(1, windows.size())) {
            driver.switchTo().window(window).close();
        }
        driver.switchTo().window(windows.get(0));
        driver.get("about:blank");
        command("Storage.clearDataForOrigin", Map.of("origin", "file://", "storageTypes", "all"));
        command("Emulation.clearDeviceMetricsOverride", Map.of());
        command("Emulation.setCPUThrottlingRate", Map.of("rate", 1));
        command("Emulation.setEmulatedMedia", Map.of("media", "", "features", List.of()));
        letters(1);
        scripts(true);
        network(false);
        messages();
    }

    /** Puts the browser on the network of this machine, or takes it off. */
    void network(boolean on) {
        int throughput = on ? -1 : 0;
        command("Network.emulateNetworkConditions", Map.of("offline", !on, "latency", 0, "downloadThroughput", throughput, "uploadThroughput", throughput));
    }

    ChromeDriver driver() {
        return driver;
    }

    Object command(String name, Map<String, Object> parameters) {
        return driver.executeCdpCommand(name, parameters);
    }

    /** Opens a page of the built site as a reader would find it: light, 1280 wide, scripts on. */
    void open(String address) {
        light();
        width(1280);
        scripts(true);
        visit(address);
    }

    /** Opens a page under the present settings. The empty page before makes an address that differs in its fragment only load anew. */
    void visit(String address) {
        driver.get("about:blank");
        messages();
        go(BuiltSite.address(address));
    }

    /** Goes to an address and waits until the page is ready. */
    void go(String address) {
        driver.get(address);
        ready();
    }

    /** Waits until the page says that its program is ready, if it has one and may run it. Every test waits in this way and no other. */
    void ready() {
        until(30, () -> !scripts || (boolean) run(READY));
    }

    /** Has every example taken over, as if each had been touched. The page does it by itself only for those that come near the window. */
    void touchAll() {
        touch("section.example");
    }

    /** Has the examples that the selector means taken over. */
    void touch(String selector) {
        run("document.querySelectorAll(arguments[0]).forEach(each => each.dispatchEvent(new Event('focusin', {bubbles: true})))", selector);
    }

    /** Puts the focus on something, and unfolds what it stands in, as a reader would. */
    void focus(String selector) {
        run("const there = document.querySelector(arguments[0]);"
                + " for (let at = there; at; at = at.parentElement) { if (at.tagName === 'DETAILS') { at.open = true; } } there.focus();",
                selector);
    }

    /** Chooses or types a value as one finished entry. */
    void choose(String id, String value) {
        run(
                "const box = document.getElementById(arguments[0]); box.value = arguments[1]; box.dispatchEvent(new InputEvent('input', {bubbles: true}));"
                        + " box.dispatchEvent(new Event('change', {bubbles: true}));",
                id, value);
    }

    /** Presses keys one after the other. They go to the page, as those of a reader do, and so to whatever has the focus. */
    void press(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    void control(String letter) {
        new Actions(driver).keyDown(Keys.CONTROL).sendKeys(letter).keyUp(Keys.CONTROL).perform();
    }

    /** Types over what stands in the field that has the focus. */
    void overwrite(String text) {
        control("a");
        press(text);
    }

    void light() {
        colours("light");
    }

    void dark() {
        colours("dark");
    }

    private void colours(String scheme) {
        command("Emulation.setEmulatedMedia", Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    void width(int width) {
        size(width, 900);
    }

    void size(int width, int height) {
        command(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    /** Letters so many times as large as the browser's own, as a reader sets them in its settings. */
    void letters(int times) {
        command("Page.setFontSizes", Map.of("fontSizes", Map.of("standard", 16 * times, "fixed", 13 * times)));
    }

    void scripts(boolean on) {
        scripts = on;
        command("Emulation.setScriptExecutionDisabled", Map.of("value", !on));
    }

    Object run(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    /** Runs a script that hands its answer to its last argument, a function, when it has it. */
    Object later(String script, Object... arguments) {
        return driver.executeAsyncScript(script, arguments);
    }

    /** Waits for what the page does a moment later; fails after ten seconds. */
    void until(BooleanSupplier condition) {
        until(10, condition);
    }

    /** The same for what takes longer, such as loading a whole site. */
    void until(int seconds, BooleanSupplier condition) {
        long end = System.nanoTime() + seconds * 1_000_000_000L;
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("the page did not do it within " + seconds + " seconds");
            }
            try {
                Thread.sleep(20);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new AssertionError(e);
            }
        }
    }

    WebElement find(String selector) {
        return driver.findElement(By.cssSelector(selector));
    }

    String text(String selector) {
        return (String) run("return document.querySelector(arguments[0]).textContent", selector);
    }

    /** What the page wrote to the console since the last call. */
    List<String> messages() {
        List<String> messages = new ArrayList<>();
        for (LogEntry entry : driver.manage().logs().get(LogType.BROWSER)) {
            messages.add(entry.getLevel() + " " + entry.getMessage());
        }
        return messages;
    }

    /** Addresses of everything the page loaded. */
    List<String> loaded() {
        return ((List<?>) run("return performance.getEntriesByType('resource').map(entry => entry.name)"))
                .stream().map(String.class::cast).toList();
    }

    /** A picture of the whole page, kept for people to look at. */
    void keepPicture(String name) throws IOException {
        Path folder = Path.of(System.getProperty("screenshots.folder"));
        Files.createDirectories(folder);
        Number height = (Number) run("return document.documentElement.scrollHeight");
        Number width = (Number) run("return document.documentElement.clientWidth");
        command(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height.intValue() + 1, "deviceScaleFactor", 1, "mobile", false));
        Files.write(folder.resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
        width(width.intValue());
    }

    @Override
    public void close() {
        driver.quit();
    }
}
