package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loomwright.browser.ParityAnswer;
import loomwright.catalogue.Catalogue;
import loomwright.worked.Calculator;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * The browser shows what the JVM shows, for entries no one chose: the same words to the letter, raw values within a relative 1e-12.
 *
 * <p>{@code -Dparity.entries=10000} tries as many for each calculator; {@code -Dparity.seed=7} tries others.
 */
@ExtendWith(WithBrowser.class)
class RandomEntriesIT {
    private static final int ENTRIES = Integer.getInteger("parity.entries", 300);
    private static final long SEED = Long.getLong("parity.seed", 1);
    private static final int AT_ONCE = 100;
    private static final double RELATIVE = 1e-12;
    /** At least this share must lead to a working, or the test would compare complaints only. */
    private static final double WORKED = 0.15;

    @TestFactory
    Stream<DynamicTest> showTheSameOnBothSides(Browser browser) {
        ParityPage[] page = {null};
        return Catalogue.all().stream().map(calculator -> DynamicTest.dynamicTest(calculator.description().key(), () -> {
            if (page[0] == null) {
                page[0] = ParityPage.open(browser);
            }
            compare(page[0], calculator);
        }));
    }

    private static void compare(ParityPage page, Calculator calculator) {
        String key = calculator.description().key();
        TypedEntries typed = new TypedEntries(calculator, SEED);
        int worked = 0;
        for (int done = 0; done < ENTRIES; done += AT_ONCE) {
            List<Map<String, String>> entries = new ArrayList<>();
            for (int i = 0; i < Math.min(AT_ONCE, ENTRIES - done); i++) {
                entries.add(typed.next());
            }
            List<String> inBrowser = page.answers(key, entries);
            for (int i = 0; i < entries.size(); i++) {
                String onJvm = ParityAnswer.of(key, ParityPage.lines(entries.get(i)), Double::toString);
                same(onJvm, inBrowser.get(i), entries.get(i));
                worked += onJvm.startsWith("raw ") ? 1 : 0;
            }
        }
        int share = Math.round(100f * worked / ENTRIES);
        assertTrue(worked >= WORKED * ENTRIES, "only " + share + " % of the entries lead to a working");
    }

    private static void same(String onJvm, String inBrowser, Map<String, String> entries) {
        String[] here = onJvm.split("\n", -1);
        String[] there = inBrowser.split("\n", -1);
        assertEquals(here.length, there.length, () -> entries + "\n" + onJvm + "\n" + inBrowser);
        for (int i = 0; i < here.length; i++) {
            if (here[i].startsWith("raw ")) {
                assertClose(here[i], there[i], entries);
            } else {
                assertEquals(here[i], there[i], entries::toString);
            }
        }
    }

    private static void assertClose(String here, String there, Map<String, String> entries) {
        int number = here.lastIndexOf(' ') + 1;
        assertEquals(here.substring(0, number), there.substring(0, there.lastIndexOf(' ') + 1), entries::toString);
        double jvm = Double.parseDouble(here.substring(number));
        double browser = Double.parseDouble(there.substring(there.lastIndexOf(' ') + 1));
        assertTrue(Math.abs(jvm - browser) <= RELATIVE * Math.abs(jvm), () -> here + " but " + there + " for " + entries);
    }
}
