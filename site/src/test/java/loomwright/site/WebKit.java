package loomwright.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.URI;
import java.nio.file.Path;
import java.util.Map;
import org.openqa.selenium.MutableCapabilities;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.Keys;
import org.openqa.selenium.remote.RemoteWebDriver;

/** WebKit as Debian ships it: its driver and its small browser, on a display of their own that nobody sees. */
final class WebKit implements OtherBrowser {
    private final Process display;
    private final Process service;
    private final RemoteWebDriver driver;

    WebKit(Path xvfb, Path driverProgram, Path browser) throws IOException {
        int number = 90 + (int) (ProcessHandle.current().pid() % 900);
        display = quiet(new ProcessBuilder(xvfb.toString(), ":" + number, "-screen", "0", "1366x900x24", "-nolisten", "tcp")).start();
        int port = OtherBrowser.freePort();
        ProcessBuilder start = quiet(new ProcessBuilder(driverProgram.toString(), "--port=" + port));
        start.environment().put("DISPLAY", ":" + number);
        start.environment().put("GDK_BACKEND", "x11");
        start.environment().put("WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS", "1");
        start.environment().put("LIBGL_ALWAYS_SOFTWARE", "1");
        service = start.start();
        until("WebKit's driver listens", () -> listens(port));
        MutableCapabilities asked = new MutableCapabilities();
        asked.setCapability(
                "webkitgtk:browserOptions", Map.of("binary", browser.toString(), "args", new String[] {"--automation"}));
        driver = new RemoteWebDriver(URI.create("http://127.0.0.1:" + port).toURL(), asked, false);
    }

    private static ProcessBuilder quiet(ProcessBuilder builder) {
        return builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
    }

    private static boolean listens(int port) {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            return socket.isConnected();
        } catch (IOException notYet) {
            return false;
        }
    }

    @Override
    public void go(String address) {
        driver.get(address);
    }

    @Override
    public Object run(String expression) {
        return driver.executeScript("return " + expression);
    }

    @Override
    public void press(String keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    @Override
    public void control(String letter) {
        new Actions(driver).keyDown(Keys.CONTROL).sendKeys(letter).keyUp(Keys.CONTROL).perform();
    }

    /** Its driver knows no such command; the dialog of its browser is the machine's. */
    @Override
    public boolean prints() {
        return false;
    }

    @Override
    public byte[] print() {
        throw new UnsupportedOperationException("WebKit's driver does not print.");
    }

    @Override
    public void close() {
        try {
            driver.quit();
        } finally {
            service.destroyForcibly();
            display.destroyForcibly();
        }
    }

    static WebKit start(Path xvfb, Path driver, Path browser) {
        try {
            return new WebKit(xvfb, driver, browser);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
