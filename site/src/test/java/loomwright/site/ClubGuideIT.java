package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/**
 * Follows the authors' guide to a club's own lessons to the letter: writes the files it says with the text it shows, runs the commands it
 * says in the order it says them, and looks at what comes of it.
 */
@ExtendWith(WithBrowser.class)
class ClubGuideIT {
    private static final Path HOUSE = Path.of("..").toAbsolutePath().normalize();
    private static final Pattern PIECE = Pattern.compile("(?ms)`(club/[^`]+\\.[a-z]+)`(?:(?!^```|`club/).)*?^(`{3,4})(?:yaml|markdown)\\n(.*?)^\\2$");
    private static final Pattern COMMANDS = Pattern.compile("(?ms)^```sh\\n(.*?)^```$");

    @TempDir
    Path folder;

    private static String chapter() throws IOException {
        String guide = Files.readString(HOUSE.resolve("content/pages/authors-guide.md"));
        int start = guide.indexOf("## A club's own lessons");
        return guide.substring(start, guide.indexOf("\n## On a projector", start));
    }

    /** The folder of Loomwright as a club has it after building: its parts are linked, so that nothing of ours can be edited unseen. */
    private void layOut() throws IOException {
        for (String part : List.of("content", "site/src/main", "site/target/programs", "generator/target/loomwright.jar")) {
            Path link = folder.resolve(part);
            Files.createDirectories(link.getParent());
            Files.createSymbolicLink(link, HOUSE.resolve(part));
        }
    }

    private List<String> writeItsFiles() throws IOException {
        List<String> written = new ArrayList<>();
        Matcher matcher = PIECE.matcher(chapter());
        while (matcher.find()) {
            Path file = folder.resolve(matcher.group(1));
            Files.createDirectories(file.getParent());
            Files.writeString(file, matcher.group(3));
            written.add(matcher.group(1));
        }
        return written;
    }

    private void run(String command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command.split(" ")).directory(folder.toFile()).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), command + "\n" + said);
    }

    private Document page(String name) throws IOException {
        return Jsoup.parse(folder.resolve(name));
    }

    @Test
    void theGuideLeadsToASiteWithTheClubsLessons(Browser browser) throws Exception {
        layOut();
        assertEquals(List.of("club/club.yaml", "club/lessons/20-the-slipway-lamp/lesson.md", "club/pages/slipway-rules.md"), writeItsFiles());
        Matcher commands = COMMANDS.matcher(chapter());
        assertTrue(commands.find());
        List<String> lines = commands.group(1).lines().toList();
        assertEquals(4, lines.size());
        for (String line : lines) {
            run(line);
        }
        String club = "Reedmere Boat Club";
        String contact = "the slipway shed, Saturdays; wiring@reedmere.example";
        String start = page("club-site/index.html").text();
        assertTrue(start.contains(club) && start.contains(contact), start);
        assertEquals("slipway-rules.html", page("club-site/index.html").select(".club a:contains(Rules of the slipway)").attr("href"));
        assertTrue(page("club-site/lessons.html").select("#club ~ ol a").eachText().contains("The slipway lamp"));
        assertTrue(Files.readString(folder.resolve("club-site/search-data.js")).contains("20 The slipway lamp"));
        assertTrue(page("club-site/numbers.html").select("tr:contains(The cable of the slipway lamp)").text().contains("0.4572"));
        Document workshop = page("club-site/workshop.html");
        assertEquals(club + ", " + contact, workshop.selectFirst("#kit").attr("data-house"));
        assertEquals(List.of("slipway-lamp-thicker", "slipway-lamp-drop"), workshop.select("[data-lesson=20-the-slipway-lamp] data").eachAttr("value"));
        Document sheets = page("club-sheets/sheets.html");
        assertEquals(6, sheets.select(".handout .house:contains(" + club + ")").size());
        assertTrue(page("club-site/projector/20-the-slipway-lamp.html").text().contains("The lamp at the end of the slipway"));
        assertTrue(Files.size(folder.resolve("club-site.zip")) > 500_000);
        browser.go(folder.resolve("club-site/lessons/20-the-slipway-lamp.html").toUri().toString());
        browser.touchAll();
        Form form = new Form(browser, "slipway-lamp-drop");
        form.enter("current", "4 A");
        assertTrue(form.own("drop").startsWith("0.9144"), form.own("drop"));
        assertEquals(List.of(), browser.messages());
        browser.go(folder.resolve("club-site/index.html").toUri().toString());
        browser.width(360);
        browser.keepPicture("club-start-360");
        browser.width(1280);
        browser.keepPicture("club-start-1280");
        Files.writeString(folder.resolve("club/club.yaml"), "units: american\n", StandardOpenOption.APPEND);
        run(lines.get(1));
        browser.go(folder.resolve("club-site/lessons/20-the-slipway-lamp.html").toUri().toString());
        browser.touchAll();
        assertEquals("ft", form.value("route-length-unit"));
        assertEquals("american", browser.run("return document.getElementById('site-units').value"));
        assertTrue(form.printed("circuit-length").endsWith("ft"), form.printed("circuit-length"));
    }
}
