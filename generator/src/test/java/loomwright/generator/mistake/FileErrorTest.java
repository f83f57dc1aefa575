package loomwright.generator.mistake;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names of files that can give no address, files from elsewhere, and signs nobody can see. */
class FileErrorTest extends MistakeTest {
    private static final String PAGE = "---\ntitle: A page\nsummary: A page.\n---\nText.\n";
    private static final String RULE = "Use small letters a to z, digits and single hyphens, at most 60 of them, such as ";

    @TempDir
    Path elsewhere;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "a b | a-b", "50% | 50", "a?b | a-b", "c:d | c-d", "javascript:alert(1) | javascript-alert-1", "Capitals | capitals", "a..b | a-b",
                "a'\"<b> | a-b", "größe | gr-e", "-a | a", "a--b | a-b", "日本 | my-page", "a#b | a-b"
            })
    void rejectsANameThatCannotBePartOfAnAddress(String name, String instead) {
        site.write("pages/" + name + ".md", PAGE);
        rejects("content/pages/" + name + ".md: the name \"" + name + "\" cannot be part of an address. " + RULE + instead + ".\n1 mistake\n");
        assertFalse(site.files().containsKey(name + ".html"));
    }

    @Test
    void rejectsALongNameAndOneWithALineEnd() {
        String name = "x".repeat(61);
        site.write("pages/" + name + ".md", PAGE);
        site.write("pages/x\ny.md", PAGE);
        rejects("content/pages/" + name + ".md: the name \"" + name + "\" cannot be part of an address. " + RULE + "x".repeat(60) + ".\n"
                + "content/pages/x\uFFFDy.md: the name \"x\uFFFDy\" cannot be part of an address. " + RULE + "x-y.\n"
                + "2 mistakes\n");
    }

    @Test
    void rejectsTheNameOfADevice() {
        site.write("lessons/con/lesson.md", "---\ntitle: A\n---\n");
        rejects("content/lessons/con: \"con\" is the name of a device on some systems. Give it another name.\n1 mistake\n");
    }

    @Test
    void rejectsALinkToAPlaceOutside() throws IOException {
        Files.writeString(elsewhere.resolve("secret.md"), PAGE.replace("Text", "Secret"));
        Files.createDirectories(folder.resolve("pages"));
        Files.createSymbolicLink(folder.resolve("pages/mine.md"), elsewhere.resolve("secret.md"));
        rejects("content/pages/mine.md: the file is a link to a place outside the folder, so it is not read."
                + " Put a copy of it here in place of the link.\n1 mistake\n");
        assertTrue(site.files().values().stream().noneMatch(page -> page.contains("Secret")));
    }

    @Test
    void takesALinkToAPlaceInside() throws IOException {
        site.write("pages/one.md", PAGE);
        Files.createSymbolicLink(folder.resolve("pages/two.md"), folder.resolve("pages/one.md"));
        rejects("0 mistakes\n");
    }

    @Test
    void rejectsSignsThatNobodyCanSee() {
        site.lesson("A\u0000b.\n\nRed \u001b[31m text.\n\nA \u202etxet\u202c.\n");
        rejects("""
                content/lessons/01-first/lesson.md:7:2: here stands a control character (U+0000), which cannot be seen. Delete the words around it and type them again.
                   A\uFFFDb.
                    ^
                content/lessons/01-first/lesson.md:9:5: here stands a control character (U+001B), which cannot be seen. Delete the words around it and type them again.
                   Red \uFFFD[31m text.
                       ^
                content/lessons/01-first/lesson.md:11:3: here stands a sign that turns the direction of the text (U+202E), which cannot be seen. Delete the words around it and type them again.
                   A \uFFFDtxet\uFFFD.
                     ^
                3 mistakes
                """);
    }

    @Test
    void rejectsHiddenSignsThatAreWrittenInOtherWords() {
        site.lesson("A &#x202e;txet.\n");
        rejects("""
                content/lessons/01-first/lesson.md:7:3: a sign that cannot be seen is written as a number here, such as &#27;. Delete it.
                   A &#x202e;txet.
                     ^
                1 mistake
                """);
        site.lesson("```question\nkey: why\nask: \"Why \\u202e?\"\nanswer: Because.\n```\n");
        rejects("""
                content/lessons/01-first/lesson.md:9:6: a sign that cannot be seen is written here with a backslash. Delete it.
                   ask: "Why \\u202e?"
                        ^
                1 mistake
                """.replace("\\\\", "\\"));
    }

    @Test
    void rejectsAPhotoThatIsALinkToAPlaceOutside() throws IOException {
        Files.write(elsewhere.resolve("mine.png"), new byte[] {1});
        Files.createDirectories(folder.resolve("pictures"));
        Files.createSymbolicLink(folder.resolve("pictures/mine.png"), elsewhere.resolve("mine.png"));
        rejects("content/pictures/mine.png: the file is a link to a place outside the folder, so it is not read."
                + " Put a copy of it here in place of the link.\n1 mistake\n");
    }

    @Test
    void saysWhatWouldNotBeRead() {
        site.write("pages/notes.txt", "Notes");
        site.write("pages/old.md~", "left by an editor");
        site.write("pages/sub/a.md", PAGE);
        site.write("lessons/01-first/lamp.jpg", "no lamp");
        rejects("""
                content/lessons/01-first/lamp.jpg: nothing of this name is read here. Here stands lesson.md alone; photos belong into the folder "pictures", drawings into "drawings".
                content/pages/notes.txt: nothing of this name is read here. Here stands *.md; photos belong into the folder "pictures", drawings into "drawings".
                content/pages/sub: nothing of this name is read here. Here stands *.md; photos belong into the folder "pictures", drawings into "drawings".
                3 mistakes
                """);
    }

    @Test
    void encodesAddressesOfTheWeb() {
        site.lesson("See [this](https://example.org/größe?a=^b&c=%20).\n");
        rejects("0 mistakes\n");
        String page = site.files().get("lessons/01-first.html");
        assertTrue(page.contains("href=\"https://example.org/gr%C3%B6%C3%9Fe?a=%5Eb&amp;c=%20\""), page);
    }
}
