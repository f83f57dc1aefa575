package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.Keys;

/** The page First job as a reader with a phone and a keyboard goes through it. */
@ExtendWith(WithBrowser.class)
class FirstJobIT {
    private static final String PAGE = "first-job.html";

    /**
     * A job: its answers in the order of the screens, {@code NEXT} between two, {@code ADD} for another thing; and words of the plan. The figures are those that the worked jobs of the
     * calculators' tests have by hand.
     */
    record Job(String name, List<String> answers, List<String> plan) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Job> jobs() {
        return Stream.of(
                new Job(
                        "lamp",
                        List.of("kind=Lights", "NEXT", "draws=12 W", "hours=4", "NEXT", "route=4", "place=inside", "beside=nothing", "sheath=two single", "NEXT", "feed=a circuit", "NEXT",
                                "chemistry=lead", "capacity=60", "NEXT", "NEXT", "craft=a trailer", "switched=no", "NEXT"),
                        List.of("class T fuse of 2 A", "1 mm²")),
                new Job(
                        "usb-outlets",
                        List.of("how-many=2", "NEXT", "draws=36", "hours=3", "NEXT", "route=5", "place=inside", "beside=one or two", "sheath=two single", "NEXT", "feed=a circuit", "box-route=1",
                                "NEXT", "chemistry=LiFe", "capacity=100", "NEXT", "NEXT", "craft=a trailer", "switched=no", "NEXT"),
                        List.of("class T fuse of 15 A", "blade fuse-link of 7.5 A", "6 mm²", "2.5 mm²")),
                new Job(
                        "fridge",
                        List.of("kind=Fridge", "NEXT", "draws=5 A", "hours=24", "start=15", "most-device=15", "NEXT", "route=3", "place=inside", "beside=nothing", "sheath=two single", "NEXT",
                                "feed=a circuit", "NEXT", "chemistry=lead", "capacity=100", "NEXT", "NEXT", "craft=a trailer", "switched=no", "NEXT"),
                        List.of("class T fuse of 10 A", "2.5 mm²", "Battery: not enough")),
                new Job(
                        "boat-pump",
                        List.of("kind=Bilge", "NEXT", "draws=4 A", "hours=1", "most-device=7.5", "NEXT", "route=6", "place=through", "beside=one or two", "sheath=two cond", "NEXT", "feed=a circuit",
                                "NEXT", "chemistry=lead", "capacity=80", "short-circuit-current=800", "NEXT", "NEXT", "craft=a boat", "switched=yes", "switch-route=2", "NEXT"),
                        List.of("blade fuse-link of 5 A", "4 mm²", "insulation for 105 °C", "by hand, 10 A", "Shall the bilge pump stay live")),
                new Job(
                        "american-trailer",
                        List.of("kind=Lights", "how-many=2", "NEXT", "draws=12 W", "hours=5", "NEXT", "route=12 ft", "place=inside", "beside=nothing", "sheath=two single", "ADD", "kind=Radio", "NEXT",
                                "draws=5 A", "hours=3", "NEXT", "route=10 ft", "place=inside", "beside=nothing", "sheath=two single", "NEXT", "feed=free", "free-ways=2", "panel-limit=30",
                                "present-load=6", "feed-rating=30", "feed-size=8 AWG", "feed-route=6 ft", "NEXT", "chemistry=lead", "capacity=100", "short-circuit-current=1000", "NEXT", "NEXT",
                                "craft=a trailer", "cable=by AWG", "switched=no", "NEXT"),
                        List.of("blade fuse-link of 5 A", "blade fuse-link of 10 A", "16 AWG", "12 AWG", "Free ways of the fuse panel")));
    }

    private int presses;

    @ParameterizedTest
    @MethodSource("jobs")
    void isAnsweredByKeyboardOnAPhoneAndEndsInAPlanToPrintKeepLinkAndChange(Job job, Browser browser) throws IOException {
        empty(browser);
        long begun = System.nanoTime();
        type(browser, job);
        assertEquals("Your plan", browser.text("#job-title"));
        System.out.println("[first job] " + job + ": " + presses + " presses, " + (System.nanoTime() - begun) / 1_000_000 + " ms by a robot");
        checkPlan(browser, job);
        print(browser, job);
        String written = (String) browser.run("return document.querySelector('#job-link').href");
        browser.go(BuiltSite.address(PAGE));
        checkPlan(browser, job);
        browser.run("localStorage.clear()");
        browser.visit(PAGE);
        assertEquals("What do you fit?", browser.text("#job-title"));
        browser.visit(PAGE + written.substring(written.indexOf('#')));
        checkPlan(browser, job);
        String bench = (String) browser.run("return document.querySelector('#job-bench').href");
        browser.go(bench);
        assertTrue(browser.text("#circuit-rows").contains("Isolating switch"), "the bench has the circuit");
        assertTrue((long) browser.run("return document.querySelectorAll('.plan button').length") > 4, "and it can be changed");
        assertEquals(List.of(), browser.messages());
    }

    private static void empty(Browser browser) {
        browser.open(PAGE);
        browser.run("localStorage.clear()");
        browser.size(390, 844);
        browser.visit(PAGE);
    }

    private void type(Browser browser, Job job) {
        presses = 0;
        for (String answer : job.answers()) {
            if (answer.equals("NEXT")) {
                press(browser, "[data-does='next']");
            } else if (answer.equals("ADD")) {
                press(browser, "[data-does='add']");
            } else {
                String text = answer.substring(answer.indexOf('=') + 1);
                tabTo(browser, "#job-" + answer.substring(0, answer.indexOf('=')));
                if ((boolean) browser.run("return document.activeElement.tagName === 'INPUT'")) {
                    browser.overwrite(text);
                    presses += text.length() + 1;
                } else {
                    choose(browser, text);
                }
            }
        }
    }

    /** Down through a closed list, as far as the choice that begins with these words. */
    private void choose(Browser browser, String words) {
        for (int i = 0; i < 15; i++) {
            if ((boolean) browser.run("return document.activeElement.selectedOptions[0].text.startsWith(arguments[0])", words)) {
                return;
            }
            browser.press(Keys.ARROW_DOWN);
            presses++;
        }
        throw new AssertionError("no choice " + words);
    }

    private void press(Browser browser, String selector) {
        tabTo(browser, selector);
        browser.press(Keys.ENTER);
        presses++;
    }

    /** By Tab alone, as a reader without a mouse. */
    private void tabTo(Browser browser, String selector) {
        for (int i = 0; i < 60; i++) {
            if ((boolean) browser.run("return document.activeElement.matches(arguments[0])", selector)) {
                return;
            }
            browser.press(Keys.TAB);
            presses++;
        }
        throw new AssertionError("no way by Tab to " + selector);
    }

    private static void checkPlan(Browser browser, Job job) {
        String text = browser.text("#first-job").replace('\u00a0', ' ');
        for (String words : job.plan()) {
            assertTrue(text.contains(words), () -> words + " not in: " + text);
        }
        for (String section : List.of("job-plan", "job-why", "job-shopping", "job-test", "job-found", "job-lessons")) {
            assertTrue(browser.find("#" + section).isDisplayed(), section);
        }
        assertEquals(0L, browser.run("return document.querySelectorAll('#first-job [data-verdict=stop]').length"));
        assertTrue((boolean) browser.run("return document.documentElement.scrollWidth <= document.documentElement.clientWidth"), "no sideways scroll");
    }

    private static void print(Browser browser, Job job) throws IOException {
        for (Paper paper : Paper.values()) {
            try (PDDocument print = paper.print(browser)) {
                Path folder = Files.createDirectories(Path.of(System.getProperty("screenshots.folder")));
                print.save(folder.resolve("first-job-" + job + "-" + paper.name().toLowerCase(Locale.ROOT) + ".pdf").toFile());
                Paper.Edges edges = new Paper.Edges();
                String text = Paper.squeezed(edges.getText(print));
                assertEquals(List.of(), edges.cut(), "words that run over the edge");
                for (String words : List.of("The plan on one page", "What to buy", "Test sheet", "The order of work", "Dead before you touch")) {
                    assertTrue(text.contains(Paper.squeezed(words)), words);
                }
                assertFalse(text.contains("Printtheplan"), "buttons are not printed");
            }
        }
    }

    @Test
    void onAPhoneTheFirstChoiceStandsOnTheFirstScreen(Browser browser) {
        empty(browser);
        browser.size(390, 844);
        browser.visit(PAGE);
        Number end = (Number) browser.run("return document.querySelector('#first-job select').getBoundingClientRect().bottom");
        assertTrue(end.doubleValue() <= 844, end + " px");
    }

    @Test
    void whatCannotBeUsedStaysInItsFieldWithAWordOnWhatIsWanted(Browser browser) {
        empty(browser);
        tabTo(browser, "[data-does='next']");
        browser.press(Keys.ENTER);
        tabTo(browser, "#job-draws");
        browser.press("2 A");
        press(browser, "[data-does='next']");
        assertEquals("What does it take?", browser.text("#job-title"));
        assertTrue(browser.text(".error").contains("watts"), browser.text(".error"));
        browser.go(BuiltSite.address(PAGE));
        assertEquals("2", browser.run("return document.querySelector('#job-draws').value"));
        assertTrue(browser.text(".error").contains("watts"), "after a reload too");
        tabTo(browser, "[data-open='draws']");
        browser.press(Keys.ENTER);
        press(browser, "[data-does='plan']");
        assertTrue(browser.text("#job-taken").contains("What was taken for you"));
    }

    @Test
    void anAnswerChangedLaterChangesTheCircuitAndSaysWhatBecameDifferent(Browser browser) {
        empty(browser);
        press(browser, "[data-does='plan']");
        press(browser, "#job-change > summary");
        press(browser, "[data-screen='2']");
        assertEquals("Which way does its cable go?", browser.text("#job-title"));
        tabTo(browser, "#job-route");
        browser.press("2 m");
        press(browser, "[data-does='plan']");
        assertTrue(browser.text("#job-different").contains("became Run to USB outlet"), browser.text("#job-different"));
    }

    @Test
    void anObstacleLeadsBackToItsAnswer(Browser browser) {
        empty(browser);
        browser.visit(PAGE + "#0.kind=fridge&0.draws=8%20A&0.route=45%20m");
        assertTrue(browser.text("#first-job").contains("No circuit for these answers"));
        press(browser, "[data-asks='route']");
        assertEquals("job-route", browser.run("return document.activeElement.id"));
        assertEquals("45", browser.run("return document.activeElement.value"));
    }

    @Test
    void everyScreenAndThePlanBreakNoRule(Browser browser) throws IOException {
        try (Audit audit = new Audit(browser)) {
            empty(browser);
            for (int screen = 0; screen < 7; screen++) {
                assertEquals("", audit.violations(), "screen " + screen);
                press(browser, "[data-does='next']");
            }
            browser.size(1280, 900);
            assertEquals("", audit.violations(), "obstacle or plan");
            browser.visit(PAGE + "#0.kind=lights&0.route=3%20m");
            assertEquals("", audit.violations(), "plan");
            browser.dark();
            assertEquals("", audit.violations(), "plan in the dark");
        }
    }

    @Test
    void withoutScriptsASampleJobStandsThereWhole(Browser browser) {
        browser.open(PAGE);
        browser.scripts(false);
        browser.visit(PAGE);
        String text = browser.find("#first-job").getText();
        browser.scripts(true);
        for (String words : List.of("sample job", "The plan on one page", "What to buy", "Test sheet", "minutes in all")) {
            assertTrue(text.contains(words), words);
        }
    }
}
