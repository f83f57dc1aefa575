package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import loomwright.along.Belongings;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Work that goes to another device as one file. */
@ExtendWith(WithBrowser.class)
class TakeAlongIT {
    @TempDir
    Path folder;

    private Browser browser;

    @BeforeEach
    void open(Browser shared) {
        browser = shared;
        browser.open("how-to-use.html");
        browser.run("localStorage.clear()");
    }

    @AfterEach
    void nothingWentWrong() {
        assertEquals(List.of(), browser.messages());
        browser.run("localStorage.clear()");
    }

    private String bring(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("work.txt"), text);
        browser.find("#along-file").sendKeys(file.toString());
        browser.until(() -> !browser.text("#along-said").isEmpty());
        return browser.text("#along-said");
    }

    @Test
    void whatWasDoneElsewhereJoinsWhatIsHere() throws IOException {
        browser.run("localStorage.setItem('loomwright-progress', 'lesson:01-a'); localStorage.setItem('loomwright-circuit', 'mine')");
        String said = bring(Belongings.of(Map.of("loomwright-progress", "bench-drop:1", "loomwright-circuit", "yours", "loomwright-units", "american")).file());
        assertEquals("Taken: 1 rung or lesson, 1 circuit, 1 other thing. What was here stays.", said);
        assertEquals("lesson:01-a bench-drop:1|mine|yours|american", browser.run(
                "return ['progress', 'circuit', 'circuit-2', 'units'].map(name => localStorage.getItem('loomwright-' + name)).join('|')"));
    }

    @Test
    void aDamagedFileIsRefusedAndWhatIsHereStays() throws IOException {
        browser.run("localStorage.setItem('loomwright-circuit', 'mine')");
        String file = Belongings.of(Map.of("loomwright-circuit", "yours")).file();
        assertTrue(bring(file.replace("yours", "theirs")).startsWith("Refused. The file is damaged or cut short"), browser.text("#along-said"));
        assertEquals("1 mine", browser.run("return localStorage.length + ' ' + localStorage.getItem('loomwright-circuit')"));
    }

    @Test
    void everythingTheSiteKeepsIsInTheFile() {
        browser.run("localStorage.setItem('loomwright-progress', 'a:1'); localStorage.setItem('other', 'x');"
                + "HTMLAnchorElement.prototype.click = () => {}; URL.createObjectURL = blob => { blob.text().then(text => window.saved = text); return 'about:blank'; }");
        browser.find("#along-save").click();
        browser.until(() -> (boolean) browser.run("return window.saved !== undefined"));
        assertEquals(Map.of("loomwright-progress", "a:1"), Belongings.read((String) browser.run("return window.saved")).belongings().kept());
    }

    /** Done on the pages themselves, taken along as the file that the page gives, and looked at on the pages of a device that knew nothing. */
    @Test
    void theWorkOfOneDeviceStandsOnTheOther() throws IOException {
        CircuitOnPage circuit = CircuitOnPage.fresh(browser);
        circuit.fill("circuit-name", "Heron hut");
        browser.go(BuiltSite.address("first-job.html") + "#0.kind=lights&0.draws=12%20W&0.hours=4%20h");
        browser.visit("lessons/08-voltage-drop.html");
        browser.find(".readmark button").click();
        browser.run("localStorage.setItem('loomwright-units', 'american')");
        browser.visit("how-to-use.html");
        browser.run("HTMLAnchorElement.prototype.click = () => {}; URL.createObjectURL = blob => { blob.text().then(text => window.saved = text); return 'about:blank'; }");
        browser.find("#along-save").click();
        browser.until(() -> (boolean) browser.run("return window.saved !== undefined"));
        String file = (String) browser.run("return window.saved");

        browser.run("localStorage.clear()");
        browser.visit("how-to-use.html");
        assertTrue(bring(file).startsWith("Taken: 1 rung or lesson, 1 circuit"), browser.text("#along-said"));
        browser.visit("your-circuit.html");
        assertEquals("Heron hut", circuit.value("circuit-name"));
        browser.visit("first-job.html");
        assertTrue(((String) browser.run("return localStorage.getItem('loomwright-first-job')")).contains("0.draws=12%20W"));
        browser.visit("lessons/08-voltage-drop.html");
        assertEquals("true", browser.find(".readmark button").getDomAttribute("aria-pressed"));
        assertEquals("american", browser.run("return document.documentElement.dataset.units"));
    }
}
