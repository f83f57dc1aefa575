package loomwright.generator.mistake;

import org.junit.jupiter.api.Test;

/** Mistakes in the names of values. */
class ValueErrorTest extends MistakeTest {
    @Test
    void rejectsUnknownValueNameAndSuggestsOne() {
        textBelowExample("It draws {{heater.curent}} on a cold day.");
        rejects("""
                content/lessons/01-first/lesson.md:18:19: no value named "curent" in example "heater". Did you mean "current"?
                   It draws {{heater.curent}} on a cold day.
                                     ^
                1 mistake
                """);
    }

    @Test
    void rejectsValueOfUnknownExample() {
        textBelowExample("It draws {{heatr.current}}.");
        rejects("""
                content/lessons/01-first/lesson.md:18:12: no example is called "heatr". Did you mean "heater"?
                   It draws {{heatr.current}}.
                              ^
                1 mistake
                """);
    }

    @Test
    void rejectsUnknownFactOfTheScenario() {
        site.lesson("It is {{scenario.bench-rout}} away.\n");
        rejects("""
                content/lessons/01-first/lesson.md:7:18: no figure of the scenario is called "bench-rout". Did you mean "bench-route"?
                   It is {{scenario.bench-rout}} away.
                                    ^
                1 mistake
                """);
    }

    @Test
    void rejectsValueThatIsNotClosed() {
        site.lesson("It is {{scenario.bench-route} away.\n");
        rejects("""
                content/lessons/01-first/lesson.md:7:7: the name of a value is opened and not closed. Write {{name}} on one line.
                   It is {{scenario.bench-route} away.
                         ^
                1 mistake
                """);
    }

    @Test
    void rejectsValueInsideAStoryAtItsOwnLine() {
        site.lesson("""
                ```question
                key: why
                ask: >-
                  How far is it? It is
                  {{scenario.bench-rout}} away.
                answer: Far.
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:11:14: no figure of the scenario is called "bench-rout". Did you mean "bench-route"?
                     {{scenario.bench-rout}} away.
                                ^
                1 mistake
                """);
    }
}
