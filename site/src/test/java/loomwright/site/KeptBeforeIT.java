package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * What browsers kept before version 1.0.0 still opens. Each text stands here as the pages of that time left it and is never made anew: a reader's work lies
 * under these names on devices that nobody else can reach.
 */
@ExtendWith(WithBrowser.class)
class KeptBeforeIT {
    /** The first pages kept the file alone, every usual figure written out, and called the panel's power otherwise. */
    private static final String FIRST_CIRCUIT = """
            {
              "format": "loomwright-circuit",
              "version": 1,
              "name": "Heron hut",
              "parts": [
                {
                  "id": "battery",
                  "kind": "supply",
                  "name": "Battery",
                  "chemistry": "lead-acid",
                  "capacity": "60 Ah",
                  "state-of-charge": "100 %",
                  "lowest-voltage": "10.5 V",
                  "highest-voltage": "14.6 V",
                  "battery": "given",
                  "battery-voltage": "12.8 V",
                  "battery-resistance-low": "8 mΩ",
                  "battery-resistance-high": "25 mΩ",
                  "batteries-in-parallel": "1",
                  "solar-power": "120 W",
                  "peak-sun-hours": "3 h",
                  "fuse-rule": "conductor-ampacity"
                },
                {
                  "id": "main-fuse",
                  "kind": "protection",
                  "name": "Fuse at the battery",
                  "fed-by": "battery",
                  "device": "large-strip",
                  "rating": "30 A"
                },
                {
                  "id": "lead",
                  "kind": "conductor",
                  "name": "Lead to the lamp",
                  "fed-by": "main-fuse",
                  "conductor": "iso-6722-1",
                  "size": "4 mm2",
                  "route-length": "1.25 m",
                  "temperature": "40 °C",
                  "rule-set": "33-cfr-183",
                  "insulation-temperature": "t105",
                  "engine-space": "no",
                  "conductors-together": "2",
                  "short-circuit-insulation": "thermoplastic-90"
                },
                {
                  "id": "lamp",
                  "kind": "load",
                  "name": "Stern lamp",
                  "fed-by": "lead",
                  "load-kind": "resistive",
                  "power": "10 W",
                  "rated-voltage": "12 V",
                  "hours": "4 h",
                  "duty": "100 %",
                  "use": "together",
                  "allowance": "abyc-main"
                }
              ]
            }
            """;

    /** Later ones left out what is usual, kept circuits in places and, behind a sign, the entries that cannot be used yet. */
    private static final String LATER_CIRCUIT = "{\"format\": \"loomwright-circuit\", \"version\": 1, \"name\": \"Punt\", \"parts\": ["
            + "{\"id\": \"battery\", \"kind\": \"supply\", \"name\": \"Battery\", \"chemistry\": \"lead-acid\", \"capacity\": \"60 Ah\"}, "
            + "{\"id\": \"lead\", \"kind\": \"conductor\", \"name\": \"Lead\", \"fed-by\": \"battery\", \"size\": \"6 mm²\", \"route-length\": \"2.5 m\"}]}"
            + "\u001elead/route-length=5%20parsecs";

    private Browser browser;

    @BeforeEach
    void begin(Browser shared) {
        browser = shared;
        browser.open("how-to-use.html");
        browser.run("localStorage.clear()");
    }

    @AfterEach
    void nothingWentWrong() {
        assertEquals(List.of(), browser.messages());
        browser.run("localStorage.clear()");
    }

    private void kept(String name, String text) {
        browser.run("localStorage.setItem(arguments[0], arguments[1])", name, text);
    }

    private String value(String id) {
        return (String) browser.run("return document.getElementById(arguments[0]).value", id);
    }

    private void choose(String part) {
        browser.run("document.querySelector('.plan [data-part=\"' + arguments[0] + '\"] .pick').click()", part);
    }

    @Test
    void aCircuitOfTheFirstPages() {
        kept("loomwright-circuit", FIRST_CIRCUIT);
        browser.visit("your-circuit.html");
        assertEquals("This is the circuit kept on this device.", browser.text("#circuit-kept"));
        assertEquals("Heron hut", value("circuit-name"));
        assertTrue(browser.text(".plan [data-part='lead']").contains("1.25 m"));
        choose("battery");
        assertEquals("120", value("part-panel-power"), "the panel's power has another key now");
        choose("lamp");
        assertEquals("10", value("part-power"));
    }

    @Test
    void aCircuitInAnotherPlaceWithAnEntryThatCannotBeUsed() {
        kept("loomwright-circuit", FIRST_CIRCUIT);
        kept("loomwright-circuit-2", LATER_CIRCUIT);
        kept("loomwright-circuit-last", "2");
        browser.visit("your-circuit.html");
        assertEquals("Punt", value("circuit-name"));
        assertTrue(browser.text("#circuit-faults").contains("parsecs"), browser.text("#circuit-faults"));
    }

    @Test
    void answersOfAFirstJobAndTheScreenTheyEndedAt() {
        kept("loomwright-first-job", "1|0.kind=lights&0.draws=12%20W&0.hours=4%20h");
        browser.visit("first-job.html");
        assertEquals("What does it take?", browser.text("#job-title"));
        assertEquals("12", value("job-draws"));
        assertEquals("4", value("job-hours"));
    }

    @Test
    void rungsClimbedAndLessonsRead() {
        kept("loomwright-progress", "bench-drop:2 lesson:08-voltage-drop");
        browser.visit("lessons/08-voltage-drop.html");
        browser.touch("#bench-drop");
        assertEquals(1L, browser.run("return document.querySelectorAll(\"#bench-drop [data-rung='2'] .mark:not([hidden])\").length"));
        assertEquals("bench-drop:2 lesson:08-voltage-drop", browser.run("return localStorage.getItem('loomwright-progress')"));
    }
}
