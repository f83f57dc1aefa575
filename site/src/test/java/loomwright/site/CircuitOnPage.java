package loomwright.site;

import java.util.Map;
import org.openqa.selenium.Keys;

/** The page of a whole circuit as a reader handles it. */
final class CircuitOnPage {
    static final String PAGE = "your-circuit.html";

    private final Browser browser;

    private CircuitOnPage(Browser browser) {
        this.browser = browser;
    }

    /** The page as it is on a device that keeps nothing yet. */
    static CircuitOnPage fresh(Browser browser) {
        browser.open(PAGE);
        browser.run("localStorage.clear()");
        browser.visit(PAGE);
        return new CircuitOnPage(browser);
    }

    void again() {
        browser.visit(PAGE);
    }

    /** Presses the button that does something. */
    void press(String does) {
        browser.run("document.querySelector('[data-does=\"' + arguments[0] + '\"]').click()", does);
    }

    void choose(String id) {
        browser.run("document.querySelector('.plan [data-part=\"' + arguments[0] + '\"] .pick').click()", id);
    }

    /** Types into a field of the part shown and leaves it. */
    void enter(String key, String text) {
        fill("part-" + key, text);
    }

    /** Types into a box and leaves it. */
    void fill(String id, String text) {
        browser.run(
                "const box = document.getElementById(arguments[0]); box.focus(); box.value = arguments[1];"
                        + " box.dispatchEvent(new Event('input', {bubbles: true})); box.dispatchEvent(new Event('change', {bubbles: true}));",
                id, text);
    }

    /** Chooses a sheet. */
    void sheet(String key) {
        browser.run("document.getElementById('tab-' + arguments[0]).click()", key);
    }

    /** Ticks these sheets for printing and no others. */
    void tick(String... keys) {
        browser.run(
                "document.querySelectorAll('#circuit-print input').forEach(each => { each.checked = arguments[0].includes(each.value); });"
                        + " document.getElementById('circuit-print').dispatchEvent(new Event('change', {bubbles: true}))",
                java.util.List.of(keys));
    }

    /** What the button of the verdict says. */
    String verdict() {
        return browser.text("#circuit-bar [data-pane=verdict]").strip();
    }

    String value(String id) {
        return (String) browser.run("return document.getElementById(arguments[0]).value", id);
    }

    String row(String id) {
        return browser.text(".plan [data-part='" + id + "']");
    }

    String said() {
        return browser.text("#circuit-said p");
    }

    /** What is kept at the first place of this device. */
    String kept() {
        return (String) browser.run("return localStorage.getItem('loomwright-circuit') || ''");
    }

    /** Whether the browser would ask the reader before the page is left. */
    boolean asksBeforeLeaving() {
        return (boolean) browser.run(
                "const leaving = new Event('beforeunload', {cancelable: true}); window.dispatchEvent(leaving); return leaving.defaultPrevented");
    }

    void undo() {
        control("z");
    }

    void redo() {
        control("y");
    }

    void control(String letter) {
        browser.control(letter);
    }

    /** Goes on with the Tab key until that element has the focus. */
    void tabTo(String selector) {
        for (int i = 0; i < 90; i++) {
            if ((boolean) browser.run("return document.activeElement.matches(arguments[0])", selector)) {
                return;
            }
            type(Keys.TAB);
        }
        throw new AssertionError("the Tab key does not lead to " + selector);
    }

    void type(CharSequence... keys) {
        browser.press(keys);
    }

    /** Replaces what stands in the field that has the focus. */
    void overwrite(String text) {
        browser.overwrite(text);
    }

    /** Before any script of the next pages; returns what takes it back. */
    Runnable before(String script) {
        Map<?, ?> added = (Map<?, ?>) browser.command("Page.addScriptToEvaluateOnNewDocument", Map.of("source", script));
        return () -> browser.command("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", added.get("identifier")));
    }
}
