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
import loomwright.handout.Paper;
import loomwright.handout.Printout;
import loomwright.handout.Question;
import loomwright.handout.Selection;
import loomwright.handout.SheetCode;
import loomwright.handout.SheetMarkup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes question sheets for a workshop day, an answer key and a register. */
@Command(
        name = "handout",
        description = "Writes question sheets with other numbers for each person, the tables for them, all answers, every working, and a register.",
        mixinStandardHelpOptions = true)
final class HandoutCommand implements Callable<Integer> {
    @Mixin
    private Inputs inputs;

    @Option(names = "--lessons", split = ",", paramLabel = "LESSON", description = "ask what these lessons ask, such as 08-voltage-drop,10-fuse-links-and-breakers (those of the workshop day)")
    private List<String> lessons = List.of();

    @Option(names = "--questions", split = ",", paramLabel = "KEY", description = "ask these questions or examples, by key, in place of --lessons")
    private List<String> questions = List.of();

    @Option(names = "--each", paramLabel = "NUMBER", defaultValue = "" + Selection.USUAL, description = "at most so many questions with numbers of each lesson (${DEFAULT-VALUE})")
    private int each;

    @Option(names = "--only-numbers", description = "leave out the one question of each lesson that everyone gets alike, mostly in words")
    private boolean onlyNumbers;

    @Option(names = "--paper", paramLabel = "SIZE", defaultValue = "a4", description = "a4 or letter (${DEFAULT-VALUE})")
    private String paper;

    @Option(names = "--dry-run", description = "say how many pages it would be, and write nothing")
    private boolean dryRun;

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
        return write(outcome.questions(), house == null ? outcome.house() : house);
    }

    private void refuseNumbers() {
        UserMistake.unless(people >= 1 && people <= SheetCode.MOST_PEOPLE, "--people " + people + ": from 1 to " + SheetCode.MOST_PEOPLE + " people can get a sheet.");
        UserMistake.unless(seed >= 1 && seed <= SheetCode.LARGEST_SEED, "--set " + seed + ": choose a set number from 1 to " + SheetCode.LARGEST_SEED + ".");
        UserMistake.unless(each >= 1 && each <= Selection.ALL, "--each " + each + ": choose from 1 to " + Selection.ALL + " questions of each lesson.");
        UserMistake.unless(lessons.isEmpty() || questions.isEmpty(), "Say what to ask: either --lessons or --questions, one of the two.");
        UserMistake.unless(Paper.CHOICES.named(paper) != null, "--paper " + paper + ": choose a4 or letter.");
    }

    private Integer write(List<LessonQuestions> all, String owner) {
        Handout handout = new Handout(selection(new Choice(all)), seed);
        UserMistake.unless(
                !handout.asked().isEmpty(),
                "None of these questions has enough other round numbers with another answer, so people would share it. Choose more lessons or questions.");
        Printout printout = new Printout(handout, people, seed, owner, Paper.CHOICES.named(paper));
        System.out.println("Set " + seed + ", " + Paper.CHOICES.named(paper).label() + ". " + printout.said());
        if (printout.pagesOfOne() > SheetMarkup.PAGES) {
            System.out.println("That is more than " + SheetMarkup.PAGES + " pages for a person: --each or fewer --lessons make it less.");
        }
        for (Question question : handout.leftOut()) {
            System.out.println("Left out: " + question.key() + ". Too few other round numbers give it another answer without a check that stops.");
        }
        return dryRun ? Loomwright.FINE : write(printout, owner);
    }

    private Selection selection(Choice choice) {
        if (!questions.isEmpty()) {
            return choice.ofQuestions(questions);
        }
        List<String> chosen = lessons.isEmpty() ? choice.ofTheDay() : lessons;
        UserMistake.unless(!chosen.isEmpty(), "This site has no lesson path \"workshop-day\". Name the lessons with --lessons.");
        return choice.ofLessons(chosen, each, !onlyNumbers);
    }

    private Integer write(Printout printout, String owner) {
        PdfPrinter.Printed printed = null;
        try (HandoutFolder folder = new HandoutFolder(out, owner, Paper.CHOICES.named(paper), inputs.style()); Progress progress = Progress.of("pages")) {
            folder.write(printout);
            printed = pdf ? new PdfPrinter(browser, progress::say).print(folder.whole(), folder.pdf(), out.resolve(HandoutFolder.PDF)) : null;
            folder.finish();
        }
        System.out.println(out.resolve("sheets.html") + ", tables.html, answers.html, workings.html, register.html");
        if (printed != null && !printed.done()) {
            System.err.println(printed.words());
            return Loomwright.OUR_FAULT;
        }
        if (printed != null) {
            System.out.println(printed.words());
        }
        return Loomwright.FINE;
    }
}
