package loomwright.along;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Work taken from one device to another. */
class BelongingsTest {
    private static final String CIRCUIT = "{\"name\": \"Häuschen · 12 V\"}\u001epart/field=1%20A";
    private static final Map<String, String> KEPT = Map.of(
            "loomwright-progress", "bench-drop:2 lesson:08-voltage-drop", "loomwright-circuit", CIRCUIT, "loomwright-units", "american", "loomwright-first-job", "what=fan&where=roof");
    private static final Belongings ALL = Belongings.of(KEPT);

    @Test
    void aFileBringsBackEverythingOfTheSiteAndNothingElse() {
        Map<String, String> with = new HashMap<>(KEPT);
        with.put("another-site", "secret");
        assertEquals(KEPT, Belongings.read(Belongings.of(with).file()).belongings().kept());
        assertEquals(KEPT, Belongings.read(ALL.file().replace("\n", "\r\n")).belongings().kept(), "a mail program may change the ends of lines");
    }

    /** The file of version 1, as it was handed on: it opens for ever. */
    @Test
    void aFileOfVersionOneOpens() {
        String file = "loomwright work, version 1\n1135037760-524229148\nloomwright-progress=bench-drop%3A1%20lesson%3A08-voltage-drop&loomwright-units=american\n";
        assertEquals(file, Belongings.of(Map.of("loomwright-progress", "bench-drop:1 lesson:08-voltage-drop", "loomwright-units", "american")).file());
        assertNotNull(Belongings.read(file).belongings());
    }

    @Test
    void everyChangedOrMissingLetterIsNoticed() {
        String file = ALL.file().strip();
        for (int i = 0; i < file.length(); i++) {
            char other = file.charAt(i) == 'x' ? 'y' : 'x';
            assertNotNull(Belongings.read(file.substring(0, i) + other + file.substring(i + 1)).fault(), "letter " + i);
            assertNotNull(Belongings.read(file.substring(0, i)).fault(), "cut at " + i);
        }
    }

    @Test
    void whatIsNoFileOfOursIsRefusedWithAReason() {
        assertTrue(Belongings.read(" ").fault().startsWith("The file is empty"));
        assertTrue(Belongings.read("{}").fault().startsWith("This is no file of your work"));
        assertTrue(Belongings.read("loomwright work, version 2\n1-1\na=b").fault().startsWith("The file is of version 2; these pages read version 1."));
        assertTrue(Belongings.read(ALL.file().substring(0, 90)).fault().startsWith("The file is damaged or cut short"));
        assertTrue(Belongings.read("loomwright work, version 123 and more\n1-1\na=b").fault().startsWith("The file is of version 123 and more; "));
        assertTrue(Belongings.read("loomwright work, version 1234 and more\n1-1\na=b").fault().startsWith("The file is of version 1234 and mor\u2026; "), "no more than a dozen letters of a strange text");
        assertTrue(Belongings.read("loomwright work, version 1").fault().startsWith("The file is damaged or cut short"), "the first line by itself");
        assertTrue(Belongings.read("loomwright work, version 2").fault().startsWith("The file is of version 2"));
        assertTrue(Belongings.read("x".repeat(Belongings.MOST_LETTERS + 1)).fault().startsWith("The file is far larger than one of ours"));
        assertTrue(Belongings.read("x".repeat(Belongings.MOST_LETTERS)).fault().startsWith("This is no file of your work"));
        assertNull(Belongings.read(" ").belongings());
    }

    @Test
    void nothingThatIsHereIsLost() {
        Belongings here = Belongings.of(Map.of("loomwright-progress", "lesson:01-a bench-drop:2", "loomwright-circuit", "mine", "loomwright-units", "metric"));
        Joining joined = Joining.of(here, ALL);
        assertNull(joined.fault());
        assertEquals(
                Map.of("loomwright-progress", "lesson:01-a bench-drop:2 lesson:08-voltage-drop", "loomwright-circuit-2", CIRCUIT, "loomwright-first-job", "what=fan&where=roof"),
                joined.changes());
        assertEquals("Taken: 1 rung or lesson, 1 circuit, 1 other thing. What was here stays.", joined.words());
    }

    @Test
    void twiceBringsNothingNew() {
        Map<String, String> after = new HashMap<>(Joining.of(Belongings.of(Map.of()), ALL).changes());
        assertEquals(KEPT, after);
        assertEquals(Map.of(), Joining.of(Belongings.of(after), ALL).changes());
        assertEquals("Everything in the file is here already.", Joining.of(Belongings.of(after), ALL).words());
    }

    @Test
    void withoutAFreePlaceNothingIsChanged() {
        Map<String, String> full = new HashMap<>();
        for (int place = 1; place <= 12; place++) {
            full.put(place == 1 ? "loomwright-circuit" : "loomwright-circuit-" + place, "circuit " + place);
        }
        Joining joined = Joining.of(Belongings.of(full), ALL);
        assertTrue(joined.fault().startsWith("All 12 places for circuits are taken on this device"));
        assertEquals(Map.of(), joined.changes());
    }
}
