package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.Stream;
import loomwright.browser.ParityAnswer;
import loomwright.catalogue.Catalogue;
import loomwright.entries.TypedEntries;
import loomwright.worked.Calculator;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * The browser shows what the JVM shows, for entries no one chose: the same words to the letter, raw values within a relative 1e-12.
 *
 * <p>Four hundred for each calculator, ten thousand in the profile {@code long}; {@code -Dparity.entries=100000} tries as many,
 * {@code -Dparity.seed=7} tries others.
 */
@ExtendWith(WithBrowser.class)
class RandomEntriesIT {
    private static final int ENTRIES = Integer.getInteger("parity.entries", 400);
    private static final long SEED = Long.getLong("parity.seed", 1);
    private static final int AT_ONCE = Math.min(2_500, ENTRIES);
    /** So many are compared as the HTML that the page shows, formulas included; the others by their words and figures. */
    private static final int IN_FULL = 50;
    private static final double RELATIVE = 1e-12;
    /** At least this share must lead to a working, or the test would compare complaints only. */
    private static final double WORKED = 0.15;

    /** The comparison itself: another word, another value, a value less are each found. */
    @Test
    void findsAnAnswerThatDiffers(Browser browser) {
        ParityPage page = ParityPage.open(browser);
        String key = "ohm-and-power";
        List<Map<String, String>> entries = Collections.nCopies(4, Map.of("voltage", "12 V", "current", "5 A"));
        String right = ParityPage.briefOnJvm(key, entries.get(0));
        String otherWord = right.replaceFirst("/", "1/");
        int last = right.lastIndexOf(' ');
        String otherValue = right.substring(0, last) + " " + Double.parseDouble(right.substring(last)) * (1 + 3 * RELATIVE);
        String oneLess = right.substring(0, last);
        assertEquals(List.of(1, 2, 3), page.apart(key, entries, List.of(right, otherWord, otherValue, oneLess), RELATIVE));
    }

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
        Supplier<Answered> some = () -> Answered.onJvm(key, Stream.generate(typed::next).limit(AT_ONCE).toList());
        int worked = 0;
        // The JVM answers the next entries while the browser is busy with these.
        CompletableFuture<Answered> next = CompletableFuture.supplyAsync(some);
        for (int done = 0; done < ENTRIES; done += AT_ONCE) {
            Answered here = next.join();
            next = done + AT_ONCE < ENTRIES ? CompletableFuture.supplyAsync(some) : next;
            if (done == 0) {
                compareInFull(page, key, here.entries.subList(0, Math.min(IN_FULL, AT_ONCE)));
            }
            for (int apart : page.apart(key, here.entries, here.briefs, RELATIVE)) {
                compareInFull(page, key, List.of(here.entries.get(apart)));
                fail("The answers agree in full and not in short, for " + here.entries.get(apart));
            }
            worked += (int) here.briefs.stream().filter(brief -> brief.indexOf(' ') > 0).count();
        }
        int share = Math.round(100f * worked / ENTRIES);
        assertTrue(worked >= WORKED * ENTRIES, "only " + share + " % of the entries lead to a working");
    }

    /** Entries, and what the JVM makes of them. */
    private record Answered(List<Map<String, String>> entries, List<String> briefs) {
        static Answered onJvm(String calculator, List<Map<String, String>> entries) {
            return new Answered(entries, entries.stream().map(each -> ParityPage.briefOnJvm(calculator, each)).toList());
        }
    }

    private static void compareInFull(ParityPage page, String calculator, List<Map<String, String>> entries) {
        List<String> inBrowser = page.answers(calculator, entries);
        for (int i = 0; i < entries.size(); i++) {
            same(ParityAnswer.of(calculator, ParityPage.lines(entries.get(i)), Double::toString), inBrowser.get(i), entries.get(i));
        }
    }

    private static List<Map<String, String>> examples(String calculator) {
        return BuiltSite.examples().stream().filter(example -> example.calculator().equals(calculator)).map(BuiltSite.Example::given).toList();
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
