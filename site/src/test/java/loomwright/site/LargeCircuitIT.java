package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The longest that a key, or the end of an entry, holds up the page of a circuit with hundreds of parts.
 *
 * <p>The best of several rounds counts: what is measured is the page, not what else the machine is doing. Aimed at are 50 ms and 150 ms on a
 * machine at rest; half as much again is let through for one that is not.
 */
@ExtendWith(WithBrowser.class)
class LargeCircuitIT {
    private static final int MOST_ROUNDS = 20;
    private static final String PICK = "document.querySelector('.plan [data-part=run1] .pick').click()";

    /** The key and the end of the entry each have their layout forced; what is put off is seen as a long task, so from 50 ms on. */
    private static final String ROUND =
            """
            const done = arguments[1];
            const box = document.getElementById('part-route-length');
            let longest = 0;
            const watch = new PerformanceObserver(list => list.getEntries().forEach(each => { longest = Math.max(longest, each.duration); }));
            watch.observe({type: 'longtask'});
            const timed = event => {
              const start = performance.now();
              box.dispatchEvent(event);
              document.body.offsetHeight;
              longest = Math.max(longest, performance.now() - start);
            };
            box.focus();
            box.value = arguments[0];
            timed(new InputEvent('input', {bubbles: true}));
            setTimeout(() => {
              timed(new Event('change', {bubbles: true}));
              setTimeout(() => { watch.disconnect(); done(longest); }, 900);
            }, 100);
            """;

    @ParameterizedTest
    @CsvSource({"200, branches, 75", "200, chain, 75", "500, branches, 225", "500, chain, 225"})
    void holdsNoKeyUp(int parts, String shape, int milliseconds, Browser browser) {
        opened(browser, circuit(parts, shape.equals("chain")));
        double best = Double.MAX_VALUE;
        String length = "";
        for (int round = 0; round < MOST_ROUNDS && (round < 5 || best >= milliseconds); round++) {
            length = (20 + round) / 10.0 + " m";
            best = Math.min(best, ((Number) browser.later(ROUND, length)).doubleValue());
        }
        System.out.println("[large circuit] " + parts + " parts, " + shape + ": held up for " + Math.round(best) + " ms at most");
        assertTrue(best < milliseconds, Math.round(best) + " ms");
        assertTrue(browser.text(".plan [data-part=run1]").contains(length), length + " is drawn");
    }

    /** What follows is written and painted in turns, so it stands there a moment later: the same as if the page were opened with that circuit. */
    @Test
    void whatFollowsFromAnEntryStandsThereAMomentLater(Browser browser) {
        opened(browser, circuit(200, false));
        String before = shown(browser);
        browser.choose("part-route-length", "95 m");
        browser.until(() -> shown(browser).contains("95"));
        String after = shown(browser);
        assertNotEquals(before, after);
        browser.visit(CircuitOnPage.PAGE);
        browser.run(PICK);
        browser.until(() -> shown(browser).equals(after));
    }

    private static String shown(Browser browser) {
        return browser.text("#circuit-rows") + browser.text("#circuit-findings") + browser.text("#circuit-results");
    }

    private static void opened(Browser browser, String circuit) {
        browser.open(CircuitOnPage.PAGE);
        browser.run("localStorage.clear(); localStorage.setItem('loomwright-circuit', arguments[0])", circuit);
        browser.visit(CircuitOnPage.PAGE);
        browser.run(PICK);
    }

    /** Ways of a panel; or one run behind the other, with a load at every third. */
    private static String circuit(int parts, boolean isChain) {
        StringBuilder json = new StringBuilder("{\"format\": \"loomwright-circuit\", \"version\": 1, \"name\": \"Large\", \"parts\": [");
        json.append("{\"id\": \"battery\", \"kind\": \"supply\"}, {\"id\": \"main\", \"kind\": \"protection\", \"fed-by\": \"battery\"}");
        String feeding = "main";
        int made = 2;
        for (int i = 1; made + 3 <= parts; i++) {
            json.append(", {\"id\": \"fuse").append(i).append("\", \"kind\": \"protection\", \"fed-by\": \"").append(feeding);
            json.append("\"}, {\"id\": \"run").append(i).append("\", \"kind\": \"conductor\", \"fed-by\": \"fuse").append(i);
            json.append("\", \"route-length\": \"0.3 m\"}, {\"id\": \"load").append(i).append("\", \"kind\": \"load\", \"fed-by\": \"run").append(i);
            json.append("\", \"power\": \"1 W\"}");
            feeding = isChain ? "run" + i : "main";
            made += 3;
        }
        return json.append("]}").toString();
    }
}
