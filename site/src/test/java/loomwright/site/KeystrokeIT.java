package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * The time from a keystroke to the marks that what stands there is from before, and from the end of an entry to the working laid out again.
 *
 * <p>The best of five medians counts: what is measured is the page, not what else the machine is doing. Aimed at are 8 ms, and 50 ms at a sixth
 * of the speed; half as much again is let through there for a machine that is not at rest.
 */
@ExtendWith(WithBrowser.class)
class KeystrokeIT {
    private static final double MEDIAN_MILLISECONDS = 8;
    private static final double MEDIAN_MILLISECONDS_SLOWED = 75;
    private static final int MOST_ROUNDS = 30;

    /** Each stroke changes the number, is handled, and has its layout forced, before the clock is read; then the entry is finished likewise. */
    private static final String STROKES =
            """
            const section = document.getElementById('voltage-drop');
            const box = section.querySelector('#voltage-drop-current');
            const outcome = section.querySelector('.outcome');
            const strokes = [];
            const repaints = [];
            const timed = (times, event) => {
              const start = performance.now();
              box.dispatchEvent(event);
              outcome.getBoundingClientRect();
              document.body.offsetHeight;
              times.push(performance.now() - start);
            };
            for (let i = 0; i < 40; i++) {
              box.value = (5 + i / 100).toFixed(2);
              timed(strokes, new InputEvent('input', {bubbles: true}));
              if (!outcome.matches('.typing')) { throw new Error('not marked'); }
              timed(repaints, new Event('change', {bubbles: true}));
              if (outcome.matches('.typing')) { throw new Error('not repainted'); }
            }
            return [strokes.slice(10), repaints.slice(10)];
            """;

    @Test
    void isShort(Browser browser) {
        check(browser, 1, MEDIAN_MILLISECONDS, "");
    }

    @Test
    void isBearableOnASlowMachine(Browser browser) {
        check(browser, 6, MEDIAN_MILLISECONDS_SLOWED, " at a sixth of the speed");
    }

    private static void check(Browser browser, int slowing, double limit, String speed) {
        double[] medians = medians(browser, slowing, limit);
        String words = "median " + rounded(medians[0]) + " ms from keystroke to mark, " + rounded(medians[1]) + " ms from entry to layout" + speed;
        System.out.println("[keystroke] " + words);
        assertTrue(Math.max(medians[0], medians[1]) < limit, words);
    }

    /** The best of several rounds: other work on the machine can only slow a round down. Ends once a round is within the limit. */
    private static double[] medians(Browser browser, int slowing, double limit) {
        browser.open("calculators/voltage-drop.html");
        browser.command("Emulation.setCPUThrottlingRate", Map.of("rate", slowing));
        try {
            double[] best = {Double.MAX_VALUE, Double.MAX_VALUE};
            for (int round = 0; round < MOST_ROUNDS && (round < 5 || Math.max(best[0], best[1]) >= limit); round++) {
                List<?> both = (List<?>) browser.run(STROKES);
                for (int i = 0; i < best.length; i++) {
                    double[] sorted = ((List<?>) both.get(i)).stream().mapToDouble(time -> ((Number) time).doubleValue()).sorted().toArray();
                    best[i] = Math.min(best[i], sorted[sorted.length / 2]);
                }
            }
            return best;
        } finally {
            browser.command("Emulation.setCPUThrottlingRate", Map.of("rate", 1));
        }
    }

    private static double rounded(double milliseconds) {
        return Math.round(milliseconds * 10) / 10.0;
    }
}
