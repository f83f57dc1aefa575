package loomwright.site;

import org.openqa.selenium.Keys;

/** One worked example as a reader uses it: only by keys. */
final class Form {
    private final Browser browser;
    private final String key;

    Form(Browser browser, String key) {
        this.browser = browser;
        this.key = key;
    }

    /** Types over what a field holds, and stays in it. */
    void type(String field, String text) {
        browser.focus("#" + key + "-" + field);
        browser.overwrite(text);
    }

    /** Waits until what was typed counts: no key has been pressed for a moment. */
    void settle() {
        browser.until(() -> !isThere(".typing"));
    }

    /** Types over what a field holds, and leaves it. */
    void enter(String field, String text) {
        type(field, text);
        press(Keys.TAB);
    }

    void choose(String field, String option) {
        browser.focus("#" + key + "-" + field);
        browser.press(option);
    }

    void press(CharSequence keys) {
        browser.press(keys);
    }

    String value(String field) {
        return (String) browser.run("return document.getElementById(arguments[0]).value", key + "-" + field);
    }

    String own(String result) {
        return browser.text("#" + key + " tr[data-result='" + result + "'] td.own").replace('\u00a0', ' ');
    }

    /** What the table shows in its last column: the printed example. */
    String printed(String result) {
        return browser.text("#" + key + " tr[data-result='" + result + "'] td:last-child").replace('\u00a0', ' ');
    }

    boolean isThere(String selector) {
        return (boolean) browser.run("return document.querySelector(arguments[0]) !== null", inside(selector));
    }

    boolean isHidden(String selector) {
        return (boolean) browser.run("return document.querySelector(arguments[0]).hidden", inside(selector));
    }

    String text(String selector) {
        return browser.text(inside(selector)).replace('\u00a0', ' ').strip();
    }

    String attribute(String field, String name) {
        return (String) browser.run("return document.getElementById(arguments[0]).getAttribute(arguments[1])", key + "-" + field, name);
    }

    /** The id of what has the focus, without the key of the example. */
    String focus() {
        String id = (String) browser.run("return document.activeElement.id || document.activeElement.textContent");
        return id.startsWith(key + "-") ? id.substring(key.length() + 1) : id;
    }

    private String inside(String selector) {
        return "#" + key + " " + selector;
    }
}
