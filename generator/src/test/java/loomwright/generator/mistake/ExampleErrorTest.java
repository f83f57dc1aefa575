package loomwright.generator.mistake;

import loomwright.generator.TestSite;
import org.junit.jupiter.api.Test;

/** Mistakes in worked examples. */
class ExampleErrorTest extends MistakeTest {
    @Test
    void rejectsUnknownCalculator() {
        example(GIVEN, PIN);
        site.write(TestSite.LESSON, site.read(TestSite.LESSON).replace("resistor-current", "resistor-curent"));
        rejects("""
                content/lessons/01-first/lesson.md:13:13: no calculator is called "resistor-curent". Did you mean "resistor-current"?
                   calculator: resistor-curent
                               ^
                1 mistake
                """);
    }

    @Test
    void rejectsUnknownInput() {
        example("{ volts: 12 V, voltage: 12 V, resistance: 4 Ω }", PIN);
        rejects("""
                content/lessons/01-first/lesson.md:14:10: the calculator "resistor-current" has no input "volts". Use one of: voltage, resistance, kind.
                   given: { volts: 12 V, voltage: 12 V, resistance: 4 Ω }
                            ^
                1 mistake
                """);
    }

    @Test
    void rejectsMissingInput() {
        example("{ voltage: 12 V }", PIN);
        rejects("""
                content/lessons/01-first/lesson.md:14:1: Resistance is empty: enter a number between 0.1 Ω and 1000 Ω. This is the input "resistance" of "given".
                   given: { voltage: 12 V }
                   ^
                1 mistake
                """);
    }

    @Test
    void rejectsBadQuantity() {
        example("{ voltage: twelve, resistance: 4 Ω }", PIN);
        rejects("""
                content/lessons/01-first/lesson.md:14:19: Voltage has no number. Enter a number between 0.1 V and 100 V.
                   given: { voltage: twelve, resistance: 4 Ω }
                                     ^
                1 mistake
                """);
    }

    @Test
    void rejectsQuantityOutOfRange() {
        example("{ voltage: 12 V, resistance: 4000 Ω }", PIN);
        rejects("""
                content/lessons/01-first/lesson.md:14:37: Resistance must be between 0.1 Ω and 1000 Ω, but is 4000 Ω. This is the input "resistance" of "given".
                   given: { voltage: 12 V, resistance: 4000 Ω }
                                                       ^
                1 mistake
                """);
    }

    @Test
    void rejectsEntriesTheCalculatorRefuses() {
        example("{ voltage: 100 V, resistance: 0.1 Ω }", PIN);
        rejects("""
                content/lessons/01-first/lesson.md:14:38: Resistance is too small here: more than 500 A would flow. This is the input "resistance" of "given".
                   given: { voltage: 100 V, resistance: 0.1 Ω }
                                                        ^
                1 mistake
                """);
    }

    @Test
    void rejectsExampleWithoutPin() {
        site.lesson("""
                ## Heat

                ```example
                key: heater
                title: A heater
                story: It is cold.
                calculator: resistor-current
                given: { voltage: 12 V, resistance: 4 Ω }
                ```
                """);
        rejects("""
                content/lessons/01-first/lesson.md:10:1: the example has no pin. Add under "pins" a figure from elsewhere that one of its results is held against.
                   key: heater
                   ^
                1 mistake
                """);
    }

    @Test
    void rejectsTwoExamplesOfOneKey() {
        example(GIVEN, PIN);
        site.write("lessons/02-second/lesson.md", site.read(TestSite.LESSON));
        rejects("""
                content/lessons/02-second/lesson.md:10:6: the key "heater" is taken by the example in content/lessons/01-first/lesson.md:10. Choose another key.
                   key: heater
                        ^
                1 mistake
                """);
    }

    @Test
    void rejectsExampleBeforeTheFirstSection() {
        example(GIVEN, PIN);
        site.write(TestSite.LESSON, site.read(TestSite.LESSON).replace("## Heat\n", "Heat.\n"));
        rejects("""
                content/lessons/01-first/lesson.md:9:4: the heading "A heater" is of level 3 and follows one of level 1. Put a heading with ## above it.
                   ```example
                      ^
                1 mistake
                """);
    }

    @Test
    void rejectsDuplicateKey() {
        example("{ voltage: 12 V, resistance: 4 Ω, voltage: 13 V }", PIN);
        rejects("""
                content/lessons/01-first/lesson.md:14:42: the "given" of the example block has the key "voltage" twice. Keep one of the two lines.
                   given: { voltage: 12 V, resistance: 4 Ω, voltage: 13 V }
                                                            ^
                1 mistake
                """);
    }

    @Test
    void rejectsANumberWithoutAUnit() {
        example("{ voltage: 12, resistance: 4 Ω }", PIN);
        rejects("""
                content/lessons/01-first/lesson.md:14:19: "12" has no unit. Write it with one, such as 12 V.
                   given: { voltage: 12, resistance: 4 Ω }
                                     ^
                1 mistake
                """);
    }
}
