package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code handout}: its files, and one test for each mistake. */
class HandoutCommandTest {
    private static final Path EXPECTED = Path.of("src/test/resources/handout");
    private static final String BODY = """
            ```question
            key: lamp
            ask: A lamp takes 2 A at 12 V. What is its power?
            calculator: ohm-and-power
            given: { voltage: 12 V, current: 2 A }
            result: power
            because: More than 6 W of an old torch.
            ```

            ```question
            key: cable
            ask: The manual says 3 % is enough. What is the drop?
            calculator: voltage-drop
            sheet: A pump takes {current} over {route-length} of {size}. How many volts are lost, and what share is that?
            boxes: [drop, drop-percent]
            given: { current: 8 A, route-length: 4.2 m, conductor: iso-6722-1, size: 2.5 mm2, supply-voltage: 12 V }
            result: drop
            ```

            ```question
            key: why
            ask: Why does the route count twice?
            answer: The current also has to come back.
            ```

            ```question
            key: always
            ask: What is the power of 2 A at 12 V?
            calculator: ohm-and-power
            given: { voltage: 12 V, current: 2 A }
            keep: [voltage, current]
            result: power
            ```

            ```question
            key: quoted
            ask: The manual lets 2 A flow at 12 V. What is the power?
            calculator: ohm-and-power
            given: { voltage: 12 V, current: 2 A }
            result: power
            because: As printed, 24 W.
            ```
            """;

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final PrintStream realOut = System.out;
    private final PrintStream realErr = System.err;
    private TestSite site;

    @BeforeEach
    void begin() throws IOException {
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
        site = new TestSite(folder.resolve("content"));
        site.write("sources.csv", Files.readString(Path.of("../content/sources.csv")) + "rod-book,the makers,The Rod Book,,published,,\n");
        site.lesson(BODY);
        site.write("lessons/02-words/lesson.md", TestSite.FRONT.replace("title: First", "title: Words") + "Only words.\n");
    }

    @AfterEach
    void end() {
        System.setOut(realOut);
        System.setErr(realErr);
    }

    private int run(String... more) {
        return Loomwright.run(Stream.concat(
                        Stream.of("handout", "--content", folder.resolve("content").toString(), "--parts", TestSite.PARTS.toString(), "--out", sheets().toString()),
                        Stream.of(more))
                .toArray(String[]::new));
    }

    private Path sheets() {
        return folder.resolve("sheets");
    }

    private void refuses(String message, String... arguments) {
        assertEquals(1, run(arguments));
        String said = err.toString(StandardCharsets.UTF_8);
        assertTrue(said.contains(message), said);
        assertFalse(said.contains("\tat "), "a stack trace for a mistake of the user");
        assertFalse(Files.exists(sheets().resolve("sheets.html")));
    }

    @Test
    void writesTheExpectedFiles() throws IOException {
        assertEquals(0, run("--lessons", "01-first", "--each", "9", "--people", "3", "--set", "7", "--house", "Marsh & Co, marsh@example.org"), () -> err.toString(StandardCharsets.UTF_8));
        for (String name : List.of("register.html", "tables.html", "sheets.html", "answers.html", "workings.html")) {
            String written = Files.readString(sheets().resolve(name));
            if (Boolean.getBoolean("golden.rewrite")) {
                Files.createDirectories(EXPECTED);
                Files.writeString(EXPECTED.resolve(name), written);
            }
            assertEquals(Files.readString(EXPECTED.resolve(name)), written, name);
        }
        String said = out.toString(StandardCharsets.UTF_8);
        assertTrue(said.startsWith("Set 7, A4. 3 sheets of 3 questions: 8 pages in all (register 1, tables 1, sheets 3, answers 1, workings 2), 1 page for a person."), said);
        assertTrue(said.contains("Left out: always. Too few other round numbers give it another answer without a check that stops."), said);
        assertTrue(Files.exists(sheets().resolve("loomwright.css")) || Files.exists(sheets().resolve("plain.css")));
    }

    @Test
    void writesTheSameSheetsTwice() throws IOException {
        run("--questions", "cable,lamp", "--people", "2", "--set", "5");
        String first = Files.readString(sheets().resolve("sheets.html"));
        run("--questions", "cable,lamp", "--people", "2", "--set", "5");
        assertEquals(first, Files.readString(sheets().resolve("sheets.html")));
    }

    @Test
    void refusesAnUnknownLesson() {
        refuses("no lesson is called \"01-frist\". Did you mean \"01-first\"?", "--lessons", "01-frist");
    }

    @Test
    void refusesALessonWithoutQuestions() {
        refuses("the lesson \"02-words\" has no question for a sheet. Leave it out.", "--lessons", "02-words");
    }

    @Test
    void saysThePagesAndWritesNothing() {
        assertEquals(0, run("--lessons", "01-first", "--paper", "letter", "--dry-run"));
        String said = out.toString(StandardCharsets.UTF_8);
        assertTrue(said.startsWith("Set 1, Letter. 12 sheets of 2 questions: "), said);
        assertFalse(Files.exists(sheets()));
    }

    @Test
    void asksTheLessonsOfTheDayIfNobodySaysOtherwise() {
        refuses("This site has no lesson path \"workshop-day\". Name the lessons with --lessons.");
    }

    /** A story that quotes keeps its numbers: everyone gets it alike, with what the lesson says of the answer. */
    @Test
    void aStoryThatCannotBeToldWithOtherNumbersKeepsThem() throws IOException {
        assertEquals(0, run("--questions", "quoted", "--people", "2"));
        String sheets = Files.readString(sheets().resolve("sheets.html"));
        assertEquals(3, sheets.split("The manual lets 2\u00a0A flow at 12\u00a0V", -1).length, sheets);
        assertTrue(Files.readString(sheets().resolve("answers.html")).contains("As printed, 24\u00a0W."));
    }

    @Test
    void refusesAnotherPaper() {
        refuses("--paper a5: choose a4 or letter.", "--lessons", "01-first", "--paper", "a5");
    }

    /** A browser that prints nothing: the pages are there, and who called is told by the result. */
    @Test
    void aPdfThatDidNotComeIsNoSuccess() throws IOException {
        Path browser = Files.writeString(folder.resolve("chromium"), "#!/bin/sh\nexit 0\n");
        assertTrue(browser.toFile().setExecutable(true));
        assertEquals(2, run("--lessons", "01-first", "--pdf", "--browser", browser.toString()));
        assertTrue(err.toString(StandardCharsets.UTF_8).startsWith("No PDF: "), err.toString(StandardCharsets.UTF_8));
        assertTrue(Files.exists(sheets().resolve("sheets.html")));
    }

    @Test
    void reportsASheetStoryThatWouldKeepANumber() {
        site.lesson(BODY.replace("A pump takes {current} over", "A pump takes 8 A over"));
        refuses("\"sheet\" holds a number that would stay when the others change", "--lessons", "01-first");
    }

    @Test
    void reportsASheetStoryThatNamesNoInput() {
        site.lesson(BODY.replace("A pump takes {current} over", "A pump takes {curent} over"));
        refuses("\"sheet\" names \"curent\", which is not in \"given\". Did you mean \"current\"?", "--lessons", "01-first");
    }

    @Test
    void reportsABraceThatIsNotClosed() {
        site.lesson(BODY.replace("what share is that?", "what share is {that?"));
        refuses("\"sheet\" opens a brace and does not close it", "--lessons", "01-first");
    }

    @Test
    void refusesAnUnknownQuestion() {
        refuses("no question for a sheet is called \"lmap\". Did you mean \"lamp\"?", "--questions", "lmap");
    }

    @Test
    void refusesAQuestionNamedTwice() {
        refuses("\"lamp\" is named twice. Name it once.", "--questions", "lamp,lamp");
    }

    @Test
    void refusesLessonsAndQuestionsAtOnce() {
        refuses("one of the two", "--lessons", "01-first", "--questions", "lamp");
    }

    @Test
    void refusesTooManyPeople() {
        refuses("from 1 to 500 people can get a sheet", "--lessons", "01-first", "--people", "501");
    }

    @Test
    void refusesASeedOutOfRange() {
        refuses("choose a set number from 1 to 9999", "--lessons", "01-first", "--set", "0");
    }

    @Test
    void refusesANumberOfQuestionsOutOfRange() {
        refuses("choose from 1 to 30 questions", "--lessons", "01-first", "--each", "0");
    }

    @Test
    void refusesQuestionsThatCannotVary() {
        refuses("people would share it", "--questions", "always");
    }

    @Test
    void refusesAFolderOfOthers() throws IOException {
        Files.createDirectories(sheets());
        Files.writeString(sheets().resolve("letter.txt"), "mine");
        refuses("holds files that are no sheets of this program", "--lessons", "01-first");
        assertEquals("mine", Files.readString(sheets().resolve("letter.txt")));
    }

    @Test
    void refusesAFileInPlaceOfAFolder() throws IOException {
        Files.writeString(sheets(), "mine");
        refuses("is a file. Name a folder.", "--lessons", "01-first");
    }

    @Test
    void refusesABrowserThatIsNone() {
        assertEquals(1, run("--lessons", "01-first", "--pdf", "--browser", folder.resolve("nothing").toString()));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("is not a program"));
    }

    @Test
    void reportsTheMistakesOfTheAuthors() {
        site.lesson("A <b>bold</b> word.\n");
        refuses("Nothing was written", "--lessons", "01-first");
    }

    @Test
    void reportsAWordThatIsNoNumber() {
        assertEquals(2, run("--lessons", "01-first", "--people", "many"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("--people"));
    }

    @Test
    void reportsAnInputToKeepThatIsNotGiven() {
        site.lesson(BODY.replace("keep: [voltage, current]\n", "keep: [voltge]\n"));
        refuses("\"keep\" names \"voltge\", which is not in \"given\". Did you mean \"voltage\"?", "--lessons", "01-first");
    }
}
