package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Mistakes in templates, and what the check of finished pages finds in them. */
class TemplateErrorTest {
    @TempDir
    Path folder;

    private Path lesson;
    private TestSite site;

    @BeforeEach
    void begin() throws IOException {
        Path parts = folder.resolve("parts");
        try (Stream<Path> tree = Files.walk(TestSite.PARTS)) {
            for (Path file : tree.toList()) {
                Files.copy(file, parts.resolve(TestSite.PARTS.relativize(file)));
            }
        }
        lesson = parts.resolve("templates/lesson.mustache");
        site = new TestSite(folder.resolve("content")).parts(parts);
    }

    /** Puts a line of HTML into the template of lessons, where line 5 of it was. */
    private void put(String html) throws IOException {
        Files.writeString(lesson, Files.readString(lesson).replace("<!-- body -->", html));
    }

    private void rejects(String expected) {
        assertEquals(expected, site.problems().replace(folder.toString(), "site"));
    }

    private void rejectsPage(String words) {
        String first = site.problems().lines().findFirst().orElse("");
        assertEquals(words, first.replaceFirst("^page lessons/01-first.html(:\\d+:\\d+)?: ", ""));
    }

    @Test
    void rejectsUnknownVariable() throws IOException {
        put("<p>{{titel}}</p>");
        rejects("""
                site/parts/templates/lesson.mustache:7:1: no variable is called "titel" in Page. See VARIABLES.md for the names of each page.
                   <p>{{titel}}</p>
                   ^
                1 mistake
                """);
    }

    @Test
    void rejectsSectionThatIsNotClosed() throws IOException {
        put("{{#needs}}");
        rejects("""
                site/parts/templates/lesson.mustache:7:1: Failed to close 'needs' tag. Correct the template.
                   {{#needs}}
                   ^
                1 mistake
                """);
    }

    @Test
    void rejectsMissingTemplate() throws IOException {
        Files.delete(lesson);
        rejects("""
                site/parts/templates/lesson.mustache: the template is missing. Add it, or check how its name is spelt.
                1 mistake
                """);
    }

    @Test
    void rejectsDeadLinkOfATemplate() throws IOException {
        put("<a href=\"../nowhere.html\">x</a>");
        rejects("""
                page lessons/01-first.html: the link "../nowhere.html": it leads to "nowhere.html", which is not in the site. Correct the link.
                1 mistake
                """);
    }

    @Test
    void rejectsPictureWithoutTitleOrDescription() throws IOException {
        put("<svg role=\"img\" viewBox=\"0 0 1 1\"><title>x</title></svg>");
        rejectsPage("a picture has no role, title or description. Give the figure a title and a description.");
    }

    @Test
    void rejectsImageWithoutWords() throws IOException {
        put("<img src=\"data:,\">");
        rejectsPage("a picture has no text in its place. Give it an alt.");
    }

    @Test
    void rejectsTableWithoutName() throws IOException {
        put("<table><tr><td>1</td></tr></table>");
        rejectsPage("a table has neither caption nor label. Give it a caption.");
    }

    @Test
    void rejectsWhatComesFromOutside() throws IOException {
        put("<img alt=\"x\" src=\"https://example.org/x.png\">");
        rejectsPage("the page loads \"https://example.org/x.png\" from outside. Put the file into the site.");
    }

    @Test
    void rejectsAddressWithoutScheme() throws IOException {
        put("<script src=\"//example.org/x.js\"></script>");
        rejectsPage("the page loads \"//example.org/x.js\" from outside. Put the file into the site.");
    }

    @Test
    void rejectsMissingFile() throws IOException {
        put("<script src=\"../gone.js\"></script>");
        rejectsPage("the link \"../gone.js\": it leads to \"gone.js\", which is not in the site. Correct the link.");
    }

    @Test
    void rejectsScriptInThePage() throws IOException {
        put("<script>main()</script>");
        rejectsPage("the page has a script in it. The policy of the page refuses it: use a script file.");
    }

    @Test
    void rejectsStyleInThePage() throws IOException {
        put("<p style=\"color: red\">x</p>");
        rejectsPage("the page has a style attribute. The policy of the page refuses it: use a class.");
    }

    @Test
    void rejectsMissingTitleOfThePage() throws IOException {
        Files.writeString(lesson, Files.readString(lesson).replace("h1", "p"));
        rejectsPage("the page has 0 headings h1. A page has exactly one.");
    }

    @Test
    void rejectsLabelOfNothing() throws IOException {
        put("<p aria-labelledby=\"gone\">x</p>");
        rejectsPage("a label refers to the id \"gone\", which is not in the page. Correct the id.");
    }

    @Test
    void rejectsIdGivenTwice() throws IOException {
        put("<p id=\"x\">x</p><p id=\"x\">x</p>");
        rejectsPage("the id \"x\" is given twice in the page. Change the key of a block, or the words of a heading.");
    }

    @Test
    void rejectsHeadingThatSkipsALevel() throws IOException {
        put("<h4 id=\"deep\">Deep</h4>");
        rejectsPage("the heading \"Deep\" is of level 4 and follows one of level 1. Put a heading with ## above it.");
    }
}
