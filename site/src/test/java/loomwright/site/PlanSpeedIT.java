package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * The time from the press that asks for the plan until it is worked out, and until it is laid out, for ten loads on a machine six times slower than this one.
 *
 * <p>The best of several rounds counts: what is measured is the page, not what else the machine is doing.
 */
@ExtendWith(WithBrowser.class)
class PlanSpeedIT {
    private static final int SLOWING = 6;
    private static final double WORKED_OUT = 100;
    /** With the whole sheet written and laid out. */
    private static final double LAID_OUT = 600;
    private static final int MOST_ROUNDS = 30;

    /** Two of a kind have a run each: ten loads, each on a run and a fuse-link of its own. */
    private static final String TEN_LOADS =
            "#0.kind=usb&0.how-many=2&0.draws=18%20W&0.route=5%20m&0.place=inside&0.beside=few&1.kind=lights&1.how-many=4&1.draws=5%20W&1.route=6%20m&1.place=inside&1.beside=few"
                    + "&2.kind=fan&2.how-many=2&2.draws=10%20W&2.route=3%20m&2.place=inside&2.beside=few&3.kind=pump&3.draws=4%20A&3.route=4%20m&3.place=inside&3.beside=few"
                    + "&4.kind=radio&4.draws=2%20A&4.route=2%20m&5.kind=fridge&5.draws=4%20A&5.route=3%20m&5.place=inside&5.beside=few"
                    + "&6.kind=outlet&6.how-many=2&6.draws=4%20A&6.route=4%20m&6.place=inside&6.beside=few"
                    + "&chemistry=lifepo4&capacity=200%20Ah&panel-power=100%20W&days-wanted=2&switched=yes&craft=trailer";

    /** A press for the first screen, then one for the plan, which is timed with its layout. */
    private static final String PRESS =
            """
            document.querySelector('[data-screen="0"]').click();
            const button = document.querySelector('[data-does=plan]');
            performance.clearMarks();
            const start = performance.now();
            button.click();
            document.getElementById('first-job').getBoundingClientRect();
            return [performance.getEntriesByName('plan-worked-out')[0].startTime - start, performance.now() - start];
            """;

    @Test
    void isShortForTenLoadsAtASixthOfTheSpeed(Browser browser) {
        browser.open("first-job.html");
        browser.visit("first-job.html" + TEN_LOADS);
        assertEquals(10L, browser.run("return [...document.querySelectorAll('#job-why ~ ol strong')].filter(each => each.textContent.includes(': up to')).length"), "loads");
        browser.command("Emulation.setCPUThrottlingRate", Map.of("rate", SLOWING));
        double[] first;
        double[] best = {Double.MAX_VALUE, Double.MAX_VALUE};
        try {
            first = press(browser);
            for (int round = 0; round < MOST_ROUNDS && (round < 5 || best[0] >= WORKED_OUT || best[1] >= LAID_OUT); round++) {
                double[] times = press(browser);
                best = new double[] {Math.min(best[0], times[0]), Math.min(best[1], times[1])};
            }
        } finally {
            browser.command("Emulation.setCPUThrottlingRate", Map.of("rate", 1));
        }
        String words = "ten loads worked out in " + Math.round(best[0]) + " ms and laid out in " + Math.round(best[1]) + " ms at a sixth of the speed, "
                + Math.round(first[0]) + " ms and " + Math.round(first[1]) + " ms the first time";
        System.out.println("[first job] " + words);
        assertEquals(List.of(), browser.messages());
        assertTrue(best[0] < WORKED_OUT && best[1] < LAID_OUT, words);
    }

    private static double[] press(Browser browser) {
        return ((List<?>) browser.run(PRESS)).stream().mapToDouble(each -> ((Number) each).doubleValue()).toArray();
    }
}
