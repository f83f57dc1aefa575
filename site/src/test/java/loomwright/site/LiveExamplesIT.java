package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;

/** Every example, worked out again by the page, is the example as printed. */
@ExtendWith(WithBrowser.class)
class LiveExamplesIT {
    /**
     * Adds a space behind the first text entry, so that the page works everything out again with the same numbers as "own" figures, and
     * sets the form back, so that it works the printed example out again. Gives the printed outcome, both tables, and the outcome at the end.
     */
    private static final String WORK_AGAIN =
            """
            const [key, done] = arguments;
            const section = document.getElementById(key);
            const outcome = section.querySelector('.outcome');
            const upshot = () => section.querySelector('.upshot .results');
            const both = () => upshot().innerHTML + outcome.innerHTML;
            const printed = both();
            const box = [...section.querySelectorAll('form.try input')].find(input => input.value !== '');
            const value = box.value;
            box.value = value + ' ';
            box.dispatchEvent(new InputEvent('input', {bubbles: true}));
            box.dispatchEvent(new Event('change', {bubbles: true}));
            const own = [...section.querySelectorAll('.results td.own')].map(cell => cell.textContent);
            const beside = [...section.querySelectorAll('.results td.printed')].map(cell => cell.textContent);
            const columns = upshot().querySelectorAll('thead th').length;
            outcome.innerHTML = '';
            upshot().innerHTML = '';
            section.querySelector('form.try').reset();
            setTimeout(() => done({printed: printed, own: own, beside: beside, columns: columns, again: both()}), 10);
            """;

    @TestFactory
    Stream<DynamicTest> workOutToThePrintedOutcome(Browser browser) {
        String[] open = {null};
        return BuiltSite.examples().stream().map(example -> DynamicTest.dynamicTest(example.name(), () -> {
            if (!example.page().equals(open[0])) {
                browser.open(example.page());
                browser.touchAll();
                open[0] = example.page();
            }
            worksOut(browser, example);
        }));
    }

    private static void worksOut(Browser browser, BuiltSite.Example example) {
        assertTrue((boolean) browser.run("return document.getElementById(arguments[0]).querySelector('.given').hidden", example.key()));
        Map<?, ?> seen = (Map<?, ?>) browser.later(WORK_AGAIN, example.key());
        assertEquals(3L, seen.get("columns"), "own figures stand beside the printed ones");
        assertEquals(seen.get("beside"), seen.get("own"), "the same numbers give the same results");
        assertEquals(seen.get("printed"), seen.get("again"), "worked out again, the example is as it was printed");
        assertEquals(List.of(), browser.messages());
    }
}
