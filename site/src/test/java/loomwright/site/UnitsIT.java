package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Units chosen once for all pages. */
@ExtendWith(WithBrowser.class)
class UnitsIT {
    private static final String PAGE = "calculators/voltage-drop.html";

    private Browser browser;
    private Form form;

    @BeforeEach
    void take(Browser shared) {
        browser = shared;
        form = new Form(browser, "voltage-drop");
        browser.open(PAGE);
        browser.touchAll();
    }

    @AfterEach
    void asItWas() {
        assertEquals(List.of(), browser.messages());
        browser.run("localStorage.removeItem('loomwright-units')");
    }

    private String field(String key) {
        return form.value(key) + " " + form.value(key + "-unit");
    }

    @Test
    void aFigureIsConvertedWhenItsUnitIsChangedAndComesBackAsItWas() {
        assertEquals("4.2 m", field("route-length"));
        browser.choose("voltage-drop-route-length-unit", "ft");
        assertEquals("13.8 ft", field("route-length"));
        assertTrue(form.text("form.try [data-input='route-length'] .assumed").contains("was 4.2 m"));
        browser.choose("voltage-drop-route-length-unit", "m");
        assertEquals("4.2 m", field("route-length"));
    }

    @Test
    void aSizeBecomesOneThatIsSoldAndItsTableFollows() {
        browser.choose("voltage-drop-size-unit", "AWG");
        assertEquals("12 AWG", field("size"));
        assertEquals("nec-stranded", form.value("conductor"));
        assertFalse(form.isThere(".error"));
    }

    @Test
    void aChoiceAtTheFootHoldsForEveryPageAndStaysAfterReloading() {
        browser.choose("site-units", "american");
        assertEquals("13.8 ft", field("route-length"));
        assertEquals("°F", form.value("temperature-unit"));
        assertTrue(form.printed("circuit-length").endsWith("ft"), form.printed("circuit-length"));
        browser.open("calculators/size-for-run.html");
        browser.touchAll();
        assertEquals("american", browser.run("return document.getElementById('site-units').value"));
        assertEquals("ft", browser.run("return document.getElementById('size-for-run-route-length-unit').value"));
        browser.open("lessons/08-voltage-drop.html");
        browser.touch("#bench-drop");
        Form bench = new Form(browser, "bench-drop");
        assertEquals("13.8 ft", bench.value("route-length") + " " + bench.value("route-length-unit"));
        assertEquals("2.5 mm²", bench.value("size") + " " + bench.value("size-unit"), "the cable of a story stays what it is marked with");
        assertFalse(bench.isThere("td.own"), "nobody typed anything");
        assertEquals("27.56 ft", bench.printed("circuit-length"), "8.4 m ÷ 0.3048");
        browser.choose("site-units", "metric");
        assertEquals("4.2 m", bench.value("route-length") + " " + bench.value("route-length-unit"));
        assertEquals("8.4 m", bench.printed("circuit-length"));
    }

    /** 4.2 m at 10 A: by gauge the thinnest that passes stands where the metric size stood, first and large. */
    @Test
    void aGaugeStandsFirstAndLargeWhereAMetricSizeWould() {
        browser.open("lessons/17-the-trailer.html");
        browser.touch("#final-bench-size");
        Form bench = new Form(browser, "final-bench-size");
        browser.choose("final-bench-size-conductor", "nec-stranded");
        browser.until(() -> bench.isThere("[data-result='chosen-gauge']"));
        assertEquals("chosen-gauge", browser.run("return document.querySelector('#final-bench-size .upshot tbody tr').dataset.result"));
        assertEquals("first", browser.run("return document.querySelector('#final-bench-size .upshot tbody tr').className"));
        assertTrue(bench.text(".upshot tbody tr .printed").contains("mm²"), "the printed size beside it");
    }

    /** 1 m = 3.28 ft, 40 °C = 104 °F; 12 AWG is the first sold gauge with the copper of 2.5 mm². */
    @Test
    void theBenchOpensInThemConvertsWhatIsThereAndKeepsWhatWasTyped() {
        CircuitOnPage bench = CircuitOnPage.fresh(browser);
        browser.choose("site-units", "american");
        bench.press("empty");
        bench.press("branch");
        bench.choose("conductor-1");
        assertEquals("12 AWG", bench.value("part-size") + " " + bench.value("part-size-unit"));
        assertEquals("nec-stranded", bench.value("part-conductor"));
        assertEquals("3.28 ft", bench.value("part-route-length") + " " + bench.value("part-route-length-unit"));
        bench.enter("route-length", "12 1/2");
        assertTrue(bench.kept().contains("\"12 1/2 ft\"") && bench.kept().contains("\"12 AWG\""), bench.kept());
        browser.choose("site-units", "metric");
        assertEquals("3.81 m", bench.value("part-route-length") + " " + bench.value("part-route-length-unit"));
        assertEquals("12 AWG", bench.value("part-size") + " " + bench.value("part-size-unit"), "a cable stays what it is marked with");
        browser.choose("part-size-unit", "mm²");
        assertEquals("4 mm²", bench.value("part-size") + " " + bench.value("part-size-unit"));
        assertEquals("iso-6722-1", bench.value("part-conductor"), "never a metric size of a cable that is sold by gauge");
        assertTrue(bench.kept().contains("12 1/2 ft"), "nothing that was typed is lost");
        browser.run("localStorage.clear()");
    }

    @Test
    void theFirstJobAsksInThemAndBuysByThem() {
        browser.choose("site-units", "american");
        browser.visit("first-job.html#0.kind=lights");
        browser.run("document.querySelector('[data-screen=\"2\"]').click()");
        assertEquals("ft", browser.run("return document.getElementById('job-route-unit').value"));
        browser.visit("first-job.html");
        browser.run("localStorage.removeItem('loomwright-first-job')");
        browser.visit("first-job.html");
        browser.run("document.querySelector('[data-does=plan]').click()");
        browser.run("document.querySelector('[data-screen=\"6\"]').click()");
        assertEquals("awg", browser.run("return document.getElementById('job-cable').value"));
        browser.run("localStorage.removeItem('loomwright-first-job')");
    }

    @Test
    void tablesOfTheChosenWorldStandFirst() {
        browser.open("tables.html");
        browser.choose("site-units", "american");
        assertEquals("american", browser.run("return document.querySelector('[data-worlds] > li').dataset.world"));
        browser.choose("site-units", "metric");
        assertEquals("metric", browser.run("return document.querySelector('[data-worlds] > li').dataset.world"));
    }
}
