package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A club's folder beside ours: what it adds, and one test for each clash, comparing the whole message. */
class ClubTest {
    private static final String QUESTION = """
            ```question
            key: lamp
            ask: How much flows?
            calculator: resistor-current
            given: { voltage: 24 V, resistance: 4 Ω }
            result: current
            ```
            """;

    @TempDir
    Path folder;

    private TestSite site;

    @BeforeEach
    void begin() {
        site = new TestSite(folder.resolve("content"));
        own("club.yaml", "name: Reedmere Boat Club\ncontact: wiring@reedmere.example\n");
        own("lessons/20-shed/lesson.md", TestSite.FRONT.replace("First", "The shed") + "Text of ours.\n");
    }

    private void own(String path, String text) {
        try {
            Path file = folder.resolve("club").resolve(path);
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private Map<String, String> files() {
        Map<String, String> files = new TreeMap<>();
        site.build().withClub(folder.resolve("club")).run((address, bytes) -> files.put(address, new String(bytes, StandardCharsets.UTF_8)));
        return files;
    }

    private void reports(String problem) {
        String text = site.build().withClub(folder.resolve("club")).run((address, bytes) -> { }).problems().text();
        assertEquals(problem, text.replace(folder.toString().replace('\\', '/') + "/", ""));
    }

    @Test
    void itsLessonsComeAfterOursAndStandInTheListsAndInTheSearch() {
        reports("0 mistakes\n");
        Map<String, String> files = files();
        assertTrue(files.get("lessons/20-shed.html").contains("Text of ours."));
        assertTrue(files.get("lessons/01-first.html").contains("The shed"), "the lesson after ours");
        assertTrue(files.get("lessons.html").contains("Lessons of Reedmere Boat Club"));
        assertTrue(files.get("search-data.js").contains("20 The shed"));
        assertTrue(files.containsKey("projector/20-shed.html"));
        assertEquals("Reedmere Boat Club, wiring@reedmere.example", site.build().withClub(folder.resolve("club")).run((address, bytes) -> { }).house());
        assertFalse(site.files().containsKey("lessons/20-shed.html"), "without the folder nothing of it stays");
    }

    @Test
    void itMayHaveNoNameButAnEmptyOneIsAMistake() throws IOException {
        Files.delete(folder.resolve("club/club.yaml"));
        reports("0 mistakes\n");
        assertTrue(files().get("lessons.html").contains("More lessons"));
        own("club.yaml", "name:\n");
        reports("""
                club/club.yaml:1:1: "name" is empty. Write its text after the colon.
                   name:
                   ^
                1 mistake
                """);
    }

    /** 9 mΩ/m · 304.8 m = 2.7432 Ω for 1000 ft. */
    @Test
    void itsUnitsHoldForEveryPageAndEveryResult() {
        site.parts(Path.of("../site/src/main")).lesson("""
                ## Rods

                ```example
                key: rod
                title: A rod
                story: It lies there.
                calculator: rod-resistance
                given: {size: 2 mm²}
                show: [resistance]
                check: resistance
                pins:
                  - {result: resistance, expect: 9 mΩ/m, tolerance: 0.1 mΩ/m, kind: printed, source: rod-book, locus: page 3}
                ```
                """);
        String before = files().get("lessons/01-first.html");
        assertTrue(before.contains("data-units=\"metric\"") && !before.contains("2.743"), before);
        own("club.yaml", "name: Reedmere Boat Club\nunits: american\n");
        Map<String, String> files = files();
        files.forEach((address, page) -> assertTrue(!address.endsWith(".html") || page.contains("data-units=\"american\""), address));
        assertTrue(files.get("lessons/01-first.html").contains("2.743"));
        own("club.yaml", "name: Reedmere Boat Club\nunits: imperial\n");
        reports("""
                club/club.yaml:2:8: there are no units "imperial". Write "units: metric" or "units: american".
                   units: imperial
                          ^
                1 mistake
                """);
    }

    @Test
    void aMistakeInItsLessonIsReportedWithItsOwnPath() {
        own("lessons/20-shed/lesson.md", TestSite.FRONT + "It is {{scenario.nothing}}.\n");
        reports("""
                club/lessons/20-shed/lesson.md:7:18: no figure of the scenario is called "nothing". Use one of: bench-route.
                   It is {{scenario.nothing}}.
                                    ^
                1 mistake
                """);
    }

    @Test
    void aLessonOfTheSameName() {
        own("lessons/01-first/lesson.md", TestSite.FRONT + "Text.\n");
        reports("""
                club/lessons/01-first: the lesson "01-first" is there already: content/lessons/01-first/lesson.md. Give yours another name.
                1 mistake
                """);
    }

    @Test
    void aQuestionOfTheSameKey() {
        site.lesson(QUESTION);
        own("lessons/20-shed/lesson.md", TestSite.FRONT + QUESTION);
        reports("""
                club/lessons/20-shed/lesson.md:8:6: the key "lamp" is taken by the question in content/lessons/01-first/lesson.md:8. Choose another key.
                   key: lamp
                        ^
                1 mistake
                """);
    }

    @Test
    void aPageTheSiteFillsItself() {
        own("pages/index.md", "---\ntitle: Ours\nsummary: Ours.\nrevised: 2026\nlicence: None.\nsafety: page:search\n---\nText.\n");
        reports("""
                club/pages/index.md: the page "index" is filled by the site itself. Give the file another name.
                1 mistake
                """);
    }

    @Test
    void aPageATableAndATermOfTheSameName() {
        site.write("pages/about.md", "---\ntitle: About\nsummary: About.\n---\nText.\n");
        own("pages/about.md", "---\ntitle: About\nsummary: About.\n---\nText.\n");
        own("tables/rods.csv", "# title: Rods\n# source: rod-book\nsize (mm²),resistance (mΩ/m)\n1,18\n");
        own("glossary.md", "## ohm\n\nA unit.\n");
        own("scenario.yaml", "bench-route: {value: \"4 m\", says: \"route\"}\n");
        own("sources.csv", "key,issuer,document,edition,standing,seen,note\nrod-book,The rod makers,The Rod Book,2001,published,the book,\n");
        reports("""
                club/glossary.md:1:1: the term "ohm" is explained in content/glossary.md already. Leave it out, or choose another word.
                   ## ohm
                   ^
                club/pages/about.md: the page "about" is there already: content/pages/about.md. Give yours another name.
                club/scenario.yaml:1:1: the figure "bench-route" stands in content/scenario.yaml already. Choose another key.
                   bench-route: {value: "4 m", says: "route"}
                   ^
                club/sources.csv:2:1: the document "rod-book" is listed in content/sources.csv already. Leave the line out, or choose another key.
                   rod-book,The rod makers,The Rod Book,2001,published,the book,
                   ^
                club/tables/rods.csv: the table "rods" is there already: content/tables/rods.csv. Give yours another name.
                5 mistakes
                """);
    }

    @Test
    void aDrawingOfTheClubCannotTakeTheNameOfOurs() throws IOException {
        String drawing = "<svg viewBox=\"0 0 320 40\"><title>A single wire</title><desc>One wire that runs from the left side to the right.</desc></svg>";
        site.write("drawings/wire.svg", drawing);
        own("drawings/wire.svg", drawing);
        reports("""
                club/drawings/wire.svg: the drawing "wire" is there already: content/drawings/wire.svg. Give yours another name.
                1 mistake
                """);
    }

    @Test
    void aSourceThatIsNotListedBelongsIntoItsOwnList() {
        own("lessons/20-shed/lesson.md", TestSite.FRONT + "See [this](source:lighthouse).\n");
        own("tables/poles.csv", "# title: Poles\n# source: pole-book\nsize (mm²),resistance (mΩ/m)\n1,18\n");
        reports("""
                club/lessons/20-shed/lesson.md:7:19: no source is called "lighthouse". Add it to club/sources.csv.
                   See [this](source:lighthouse).
                                     ^
                club/tables/poles.csv:2:1: no document has the key "pole-book". Add it to club/sources.csv.
                   # source: pole-book
                   ^
                2 mistakes
                """);
    }

    @Test
    void aPageWhoseNameCannotBePartOfAnAddress() {
        own("pages/a#b.md", "---\ntitle: Ours\nsummary: Ours.\n---\nText.\n");
        reports("""
                club/pages/a#b.md: the name "a#b" cannot be part of an address. Use small letters a to z, digits and single hyphens, at most 60 of them, such as a-b.
                1 mistake
                """);
    }

    @Test
    void aFolderThatIsMisspelt() throws IOException {
        Files.move(folder.resolve("club/lessons"), folder.resolve("club/lesson"));
        reports("""
                club/lesson: a club's folder has no such place, so it would not be read. Did you mean "lessons"?
                1 mistake
                """);
    }

    @Test
    void aFolderThatIsNotThere() throws IOException {
        Files.move(folder.resolve("club"), folder.resolve("elsewhere"));
        reports("""
                club: there is no such folder. Name the folder of the club with --club.
                1 mistake
                """);
    }
}
