package loomwright.generator;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import loomwright.generator.build.PlaceLock;
import loomwright.generator.build.SiteBuild;
import loomwright.generator.handout.Choice;
import loomwright.generator.handout.HandoutFolder;
import loomwright.generator.handout.PdfPrinter;
import loomwright.generator.problem.UserMistake;
import loomwright.handout.Handout;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Question;
import loomwright.handout.Selection;
import loomwright.handout.SheetCode;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes question sheets for a workshop day, an answer key and a register. */
@Command(
        name = "handout",
        description = "Writes question sheets with other numbers for each person, an answer key with every working, and a register.",
        mixinStandardHelpOptions = true)
final class HandoutCommand implements Callable<Integer> {
    @Mixin
    private Inputs inputs;

    @Option(names = "--lessons", split = ",", paramLabel = "LESSON", description = "ask what these lessons ask, such as 08-voltage-drop,10-fuse-links-and-breakers")
    private List<String> lessons = List.of();

    @Option(names = "--questions", split = ",", paramLabel = "KEY", description = "ask these questions or examples, by key, in place of --lessons")
    private List<String> questions = List.of();

    @Option(names = "--each", paramLabel = "NUMBER", defaultValue = "30", description = "at most so many questions of each lesson (all)")
    private int each;

    @Option(names = "--people", paramLabel = "NUMBER", defaultValue = "12", description = "how many people (${DEFAULT-VALUE})")
    private int people;

    @Option(names = "--set", paramLabel = "NUMBER", defaultValue = "1", description = "set number: the same number gives the same sheets (${DEFAULT-VALUE})")
    private int seed;

    @Option(names = "--house", paramLabel = "WORDS", description = "whose sheets they are: stands at the top of each (the name of the club, or Loomwright)")
    private String house;

    @Option(names = "--pdf", description = "one PDF file as well, printed by a Chromium browser if there is one")
    private boolean pdf;

    @Option(names = "--browser", paramLabel = "FILE", description = "the browser that prints the PDF, if it is not found by itself")
    private Path browser;

    @Option(names = "--out", paramLabel = "FOLDER", defaultValue = "handout", description = "where the sheets go (${DEFAULT-VALUE})")
    private Path out;

    @Override
    public Integer call() throws Exception {
        refuseNumbers();
        SiteBuild build = inputs.build();
        return PlaceLock.holding(out, () -> handOut(build));
    }

    private Integer handOut(SiteBuild build) {
        HandoutFolder.refuseOther(out);
        SiteBuild.Outcome outcome = build.run((address, bytes) -> { });
        if (!outcome.problems().isEmpty()) {
            System.err.print(outcome.problems().text());
            System.err.println("Nothing was written; " + out + " is as it was.");
            return Loomwright.AUTHORS_MISTAKE;
        }
        write(outcome.questions(), house == null ? outcome.house() : house);
        return Loomwright.FINE;
    }

    private void refuseNumbers() {
        UserMistake.unless(people >= 1 && people <= SheetCode.MOST_PEOPLE, "--people " + people + ": from 1 to " + SheetCode.MOST_PEOPLE + " people can get a sheet.");
        UserMistake.unless(seed >= 1 && seed <= SheetCode.LARGEST_SEED, "--set " + seed + ": choose a set number from 1 to " + SheetCode.LARGEST_SEED + ".");
        UserMistake.unless(each >= 1 && each <= Selection.ALL, "--each " + each + ": choose from 1 to " + Selection.ALL + " questions of each lesson.");
        UserMistake.unless(
                lessons.isEmpty() != questions.isEmpty(),
                "Say what to ask: either --lessons with the keys of lessons or --questions with the keys of questions, one of the two.");
    }

    private void write(List<LessonQuestions> all, String owner) {
        Choice choice = new Choice(all);
        Selection selection = lessons.isEmpty() ? choice.ofQuestions(questions) : choice.ofLessons(lessons, each);
        Handout handout = new Handout(selection, seed);
        UserMistake.unless(
                !handout.asked().isEmpty(),
                "None of these questions has other round numbers with another answer, so neighbours would share it. Choose more lessons or questions.");
        String printed = "";
        try (HandoutFolder folder = new HandoutFolder(out, owner, inputs.style()); Progress progress = Progress.of("pages")) {
            folder.write(handout, people, seed);
            printed = pdf ? new PdfPrinter(browser, progress::say).print(folder.whole(), folder.pdf(), out.resolve(HandoutFolder.PDF)) : "";
            folder.finish();
        }
        System.out.println(people + (people == 1 ? " sheet of " : " sheets of ") + handout.asked().size() + " questions, set " + seed + ": "
                + out.resolve("sheets.html") + ", answers.html, register.html");
        int prose = lessons.isEmpty() ? 0 : choice.prose(selection);
        if (prose > 0) {
            System.out.println("Left out: " + prose + (prose == 1 ? " question that is" : " questions that are") + " answered in words.");
        }
        for (Question question : handout.leftOut()) {
            System.out.println("Left out: " + question.key() + ". No other round numbers give it another answer.");
        }
        if (pdf) {
            System.out.println(printed);
        }
    }
}
