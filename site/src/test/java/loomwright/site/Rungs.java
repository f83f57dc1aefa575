package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.practice.Exercise;
import loomwright.practice.Variation;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import loomwright.worked.Step;
import loomwright.worked.Working;
import org.openqa.selenium.Keys;

/** The ladder of the example on a calculator's page, climbed by keys only. Right figures come from the JVM. */
final class Rungs {
    private static final int MOST_TABS = 120;

    private final Browser browser;
    private final String key;
    private final Calculator calculator;
    private final Map<String, String> given;

    Rungs(Browser browser, String calculatorKey) {
        this.browser = browser;
        this.key = calculatorKey;
        this.calculator = Catalogue.find(calculatorKey);
        this.given = BuiltSite.examples().stream()
                .filter(each -> each.page().equals(page()))
                .findFirst()
                .orElseThrow()
                .given();
    }

    String page() {
        return "calculators/" + key + ".html";
    }

    Working printed() {
        return Outcome.of(calculator, given).working();
    }

    Variation varied(int count, int more) {
        return Variation.of(calculator, given, Variation.seed(key, count) + more);
    }

    void open(int rung) {
        tabTo("[data-rung='" + rung + "']");
        press(Keys.ENTER);
    }

    void press(CharSequence keys) {
        browser.press(keys);
    }

    /** Presses Tab until something of the example has the focus. */
    void tabTo(String selector) {
        browser.run("if (document.activeElement === document.body) { document.querySelector('.skip').focus(); }");
        for (int i = 0; i < MOST_TABS; i++) {
            if ((boolean) browser.run("return document.activeElement.matches(arguments[0])", selector)) {
                return;
            }
            press(Keys.TAB);
        }
        assertTrue(false, "not reached by Tab: " + selector);
    }

    /** Types into a blank and checks it. */
    void fill(int at, String text) {
        String box = "#" + key + "-blank-" + at;
        if (!(boolean) browser.run("return document.activeElement.matches(arguments[0])", box)) {
            browser.focus(box);
        }
        browser.overwrite(text);
        press(Keys.ENTER);
    }

    /** Chooses the answer that begins so in the question that has the focus, by the arrow keys, and sends it. */
    void answer(String start) {
        press(Keys.SPACE);
        for (int i = 0; i < 20 && !focused("label").startsWith(start); i++) {
            press(Keys.ARROW_DOWN);
        }
        assertTrue(focused("label").startsWith(start), focused("label"));
        press(Keys.ENTER);
    }

    /** Fills every blank that is open, keys only, each with its reason. */
    void fillAll(Working working, List<Integer> blanks) {
        tabTo(".yours input");
        for (int at : blanks) {
            Step step = working.steps().get(at);
            press(step.result().text());
            press(Keys.ENTER);
            if (new Exercise(working).reasons(at, 1).size() > 1) {
                answer(step.why());
            }
        }
    }

    private String focused(String around) {
        return ((String) browser.run("return document.activeElement.closest(arguments[0]).textContent", around)).replace('\u00a0', ' ');
    }

    boolean isThere(String selector) {
        return (boolean) browser.run("return document.querySelector(arguments[0]) !== null", "#" + key + " " + selector);
    }

    String text(String selector) {
        return browser.text("#" + key + " " + selector).replace('\u00a0', ' ').strip();
    }

    boolean isClimbed(int rung) {
        return isThere("[data-rung='" + rung + "'] .mark:not([hidden])");
    }

    /** Marks rungs as climbed, as if on another day. */
    void climbedBefore(int... rungs) {
        StringBuilder words = new StringBuilder();
        for (int rung : rungs) {
            words.append(words.length() == 0 ? "" : " ").append(key).append(':').append(rung);
        }
        browser.run("localStorage.setItem('loomwright-progress', arguments[0])", words.toString());
    }
}
