package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import loomwright.browser.ParityAnswer;
import loomwright.catalogue.Catalogue;
import loomwright.entries.TypedEntries;
import loomwright.worked.Calculator;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * The browser shows what the JVM shows, for entries no one chose: the same words to the letter, raw values within a relative 1e-12.
 *
 * <p>{@code -Dparity.entries=100000} tries as many for each calculator; {@code -Dparity.seed=7} tries others.
 */
@ExtendWith(WithBrowser.class)
class RandomEntriesIT {
    private static final int ENTRIES = Integer.getInteger("parity.entries", 10_000);
    private static final long SEED = Long.getLong("parity.seed", 1);
    private static final int AT_ONCE = 500;
    /** So many are compared as the HTML that the page shows, formulas included; the others by their words and figures. */
    private static final int IN_FULL = 50;
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
        TypedEntries typed = new TypedEntries(calculator, examples(key), SEED);
        int worked = 0;
        for (int done = 0; done < ENTRIES; done += AT_ONCE) {
            List<Map<String, String>> entries = Stream.generate(typed::next).limit(Math.min(AT_ONCE, ENTRIES - done)).toList();
            if (done == 0) {
                entries.subList(0, Math.min(IN_FULL, entries.size())).forEach(entry -> compareInFull(page, key, entry));
            }
            CompletableFuture<List<String>> onJvm = CompletableFuture.supplyAsync(() -> ParityPage.digestsOnJvm(key, entries));
            List<String> inBrowser = page.digests(key, entries);
            for (int i = 0; i < entries.size(); i++) {
                String digest = onJvm.join().get(i);
                if (!agree(digest, inBrowser.get(i))) {
                    compareInFull(page, key, entries.get(i));
                    fail("The answers agree in full and not in short, for " + entries.get(i));
                }
                worked += digest.endsWith(" ") && digest.indexOf(' ') < digest.length() - 1 ? 1 : 0;
            }
        }
        int share = Math.round(100f * worked / ENTRIES);
        assertTrue(worked >= WORKED * ENTRIES, "only " + share + " % of the entries lead to a working");
    }

    private static void compareInFull(ParityPage page, String calculator, Map<String, String> entry) {
        String onJvm = ParityAnswer.of(calculator, ParityPage.lines(entry), Double::toString);
        same(onJvm, page.answers(calculator, List.of(entry)).get(0), entry);
    }

    private static List<Map<String, String>> examples(String calculator) {
        return BuiltSite.examples().stream().filter(example -> example.calculator().equals(calculator)).map(BuiltSite.Example::given).toList();
    }

    private static boolean agree(String here, String there) {
        String[] jvm = here.split(" ");
        String[] browser = there.split(" ");
        boolean agree = jvm.length == browser.length && jvm[0].equals(browser[0]);
        for (int i = 1; agree && i < jvm.length; i++) {
            agree = close(Double.parseDouble(jvm[i]), Double.parseDouble(browser[i]));
        }
        return agree;
    }

    private static boolean close(double jvm, double browser) {
        return Math.abs(jvm - browser) <= RELATIVE * Math.abs(jvm);
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
        assertTrue(close(jvm, browser), () -> here + " but " + there + " for " + entries);
    }
}
