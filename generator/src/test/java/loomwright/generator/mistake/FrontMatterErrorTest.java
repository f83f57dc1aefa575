package loomwright.generator.mistake;

import loomwright.generator.TestSite;
import org.junit.jupiter.api.Test;

/** Mistakes in front matter and in the order of lessons. */
class FrontMatterErrorTest extends MistakeTest {
    @Test
    void rejectsUnknownKeyOfTheFrontMatter() {
        site.write(TestSite.LESSON, """
                ---
                title: First
                gaol: do it
                card: [One.]
                summary: A first lesson.
                ---
                """);
        rejects("""
                content/lessons/01-first/lesson.md:2:1: the front matter has no "goal". Add a line goal: with its text.
                   title: First
                   ^
                content/lessons/01-first/lesson.md:3:1: the front matter has an unknown key "gaol". Did you mean "goal"?
                   gaol: do it
                   ^
                content/lessons/01-first/lesson.md:4:1: the card has 1 line. It fits one screen with 5 to 8.
                   card: [One.]
                   ^
                3 mistakes
                """);
    }

    @Test
    void rejectsLessonWithoutCard() {
        site.write(TestSite.LESSON, TestSite.FRONT.replace(TestSite.CARD, "minutes: 20") + "Some text.\n");
        rejects("""
                content/lessons/01-first/lesson.md:2:1: the front matter has no "card", the summary at the end of the lesson. Add a line card: and below it 5 to 8 lines that begin with a dash.
                   title: First
                   ^
                content/lessons/01-first/lesson.md:4:1: the front matter has an unknown key "minutes". Use one of: card, goal, needs, summary, title.
                   minutes: 20
                   ^
                2 mistakes
                """);
    }

    @Test
    void rejectsLinesOfTheCardThatAreEmptyOrTooLong() {
        site.write(TestSite.LESSON, TestSite.FRONT.replace(TestSite.CARD, """
                card:
                - a a a a a a a a a a a a a a a a a a a a a a a a a a a a a
                - Two.
                - Three.
                - Four.
                - ''"""));
        rejects("""
                content/lessons/01-first/lesson.md:5:3: a line of the card has 29 words. Keep each to 28: split it, or leave the reason to the text.
                   - a a a a a a a a a a a a a a a a a a a a a a a a a a a a a
                     ^
                content/lessons/01-first/lesson.md:9:3: a line of the card is empty. Write it or take it out.
                   - ''
                     ^
                2 mistakes
                """);
    }

    @Test
    void rejectsMissingFrontMatter() {
        site.write(TestSite.LESSON, "# First\n");
        rejects("""
                content/lessons/01-first/lesson.md:1:1: a heading with one # is the title of the page, and that is in the front matter. Begin a section with ##.
                   # First
                   ^
                content/lessons/01-first/lesson.md:1:1: the file does not begin with front matter. Begin it with a line ---, lines such as title: text, and a line ---.
                   # First
                   ^
                2 mistakes
                """);
    }

    @Test
    void rejectsGroupsThatDoNotHoldEveryCalculatorOnce() {
        site.write("pages/calculators.md", """
                ---
                title: Calculators
                summary: By question.
                groups:
                  - key: rods
                    title: What is a rod?
                    calculators: [rod-resistence, resistor-current, resistor-current]
                ---
                """);
        rejects("""
                content/pages/calculators.md:5:10: these calculators are in no group: rod-resistance. Put each into the group of its question.
                     - key: rods
                            ^
                content/pages/calculators.md:7:19: no calculator is called "rod-resistence". Did you mean "rod-resistance"?
                       calculators: [rod-resistence, resistor-current, resistor-current]
                                     ^
                content/pages/calculators.md:7:53: "resistor-current" is in a group already. Leave it in one of the two.
                       calculators: [rod-resistence, resistor-current, resistor-current]
                                                                       ^
                3 mistakes
                """);
    }

    @Test
    void rejectsLessonThatNeedsALaterOne() {
        site.write(TestSite.LESSON, site.read(TestSite.LESSON).replace(TestSite.CARD, TestSite.CARD + "\nneeds: [02-second, 03-third]"));
        site.write("lessons/02-second/lesson.md", TestSite.FRONT);
        rejects("""
                content/lessons/01-first/lesson.md:5:9: the lesson "02-second" does not come before this one. Name an earlier lesson.
                   needs: [02-second, 03-third]
                           ^
                content/lessons/01-first/lesson.md:5:20: no lesson is called "03-third". Use one of: 01-first, 02-second.
                   needs: [02-second, 03-third]
                                      ^
                2 mistakes
                """);
    }

    @Test
    void rejectsLessonFolderWithoutLesson() {
        site.write("lessons/02-second/notes.txt", "later");
        rejects("""
                content/lessons/02-second/lesson.md: the file is missing. Add it, or check how its name is spelt.
                content/lessons/02-second/notes.txt: nothing of this name is read here. Here stands lesson.md alone; photos belong into the folder "pictures", drawings into "drawings".
                2 mistakes
                """);
    }

    @Test
    void acceptsASoundLesson() {
        textBelowExample("It draws {{heater.current}} on {{heater.given.voltage}}, [ohms](word:ohm).");
        rejects("0 mistakes\n");
    }

    /** The list of lessons then has a link without words: that follows from it, and is not said too. */
    @Test
    void rejectsALessonWithoutTitleOnce() {
        site.write(TestSite.LESSON, TestSite.FRONT.replace("title: First\n", "") + "Some text.\n");
        rejects("""
                content/lessons/01-first/lesson.md:2:1: the front matter has no "title". Add a line title: with its text.
                   goal: do it
                   ^
                1 mistake
                """);
    }
}
