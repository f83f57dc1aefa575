package loomwright.generator.mistake;

import org.junit.jupiter.api.Test;

/** Mistakes in the figures an example is held against. */
class PinErrorTest extends MistakeTest {
    @Test
    void rejectsPinOutOfTolerance() {
        example(GIVEN, "{ result: current, expect: 2.9 A, tolerance: 0.05 A, kind: printed, source: rod-book }");
        rejects("""
                content/lessons/01-first/lesson.md:16:32: "current" of example "heater" comes out as 3 A, but the pin expects 2.9 A within 0.05 A; the difference is 0.1 A. Look for the slip in the entries, in the source or in the calculator; do not widen the tolerance to hide it.
                     - { result: current, expect: 2.9 A, tolerance: 0.05 A, kind: printed, source: rod-book }
                                                  ^
                1 mistake
                """);
    }

    @Test
    void acceptsPinExactlyAtItsTolerance() {
        example(GIVEN, "{ result: current, expect: 2.95 A, tolerance: 50 mA, kind: printed, source: rod-book }");
        rejects("0 mistakes\n");
    }

    @Test
    void rejectsPinInAnotherUnit() {
        example(GIVEN, "{ result: current, expect: 3 V, tolerance: 0.05 A, kind: printed, source: rod-book }");
        rejects("""
                content/lessons/01-first/lesson.md:16:32: "3 V" is not in a unit of "current". Write it in A.
                     - { result: current, expect: 3 V, tolerance: 0.05 A, kind: printed, source: rod-book }
                                                  ^
                1 mistake
                """);
    }

    @Test
    void rejectsPinOfUnknownResult() {
        example(GIVEN, "{ result: curent, expect: 3 A, tolerance: 0.05 A, kind: printed, source: rod-book }");
        rejects("""
                content/lessons/01-first/lesson.md:16:15: the calculator "resistor-current" gives no result "curent". Did you mean "current"?
                     - { result: curent, expect: 3 A, tolerance: 0.05 A, kind: printed, source: rod-book }
                                 ^
                1 mistake
                """);
    }

    @Test
    void rejectsPinOfUnknownKind() {
        example(GIVEN, "{ result: current, expect: 3 A, tolerance: 0.05 A, kind: print, source: rod-book }");
        rejects("""
                content/lessons/01-first/lesson.md:16:62: no kind of pin is called "print". Did you mean "printed"?
                     - { result: current, expect: 3 A, tolerance: 0.05 A, kind: print, source: rod-book }
                                                                                ^
                1 mistake
                """);
    }

    @Test
    void rejectsPinFromATableWithoutArithmetic() {
        example(GIVEN, "{ result: current, expect: 3 A, tolerance: 0.05 A, kind: from-table, source: rod-book }");
        rejects("""
                content/lessons/01-first/lesson.md:16:5: a pin of kind "from-table" has no "arithmetic". Add a line arithmetic: with the working by hand.
                     - { result: current, expect: 3 A, tolerance: 0.05 A, kind: from-table, source: rod-book }
                       ^
                1 mistake
                """);
    }

    /** What is made up for a story is worked by hand all the same. */
    @Test
    void rejectsInventedPinWithoutArithmetic() {
        example(GIVEN, "{ result: current, expect: 3 A, tolerance: 0.05 A, kind: invented, source: from-memory }");
        rejects("""
                content/lessons/01-first/lesson.md:16:5: a pin of kind "invented" has no "arithmetic". Add a line arithmetic: with the working by hand.
                     - { result: current, expect: 3 A, tolerance: 0.05 A, kind: invented, source: from-memory }
                       ^
                1 mistake
                """);
    }

    @Test
    void rejectsArithmeticThatEndsInAnotherFigure() {
        example(GIVEN, "{ result: current, expect: 3 A, tolerance: 0.05 A, kind: from-table, source: rod-book, arithmetic: 12 V ÷ 4 Ω = 2 A }");
        rejects("""
                content/lessons/01-first/lesson.md:16:92: the arithmetic ends in 2 A, but the pin expects 3 A within 0.05 A. Correct the one that is wrong.
                   …t: current, expect: 3 A, tolerance: 0.05 A, kind: from-table, source: rod-book, arithmetic: 12 V ÷ 4 Ω = 2 A }
                                                                                                    ^
                1 mistake
                """);
    }

    @Test
    void rejectsPrintedPinWithoutPublication() {
        example(GIVEN, "{ result: current, expect: 3 A, tolerance: 0.05 A, kind: printed, source: from-memory }");
        rejects("""
                content/lessons/01-first/lesson.md:16:71: a pin of kind "printed" needs a published source, but "from-memory" is from memory. Name the publication, or make the kind common-practice or invented.
                     - { result: current, expect: 3 A, tolerance: 0.05 A, kind: printed, source: from-memory }
                                                                                         ^
                1 mistake
                """);
    }

    @Test
    void rejectsMissingSource() {
        example(GIVEN, "{ result: current, expect: 3 A, tolerance: 0.05 A, kind: printed, source: rodbook }");
        rejects("""
                content/lessons/01-first/lesson.md:16:79: no source is called "rodbook". Did you mean "rod-book"?
                     - { result: current, expect: 3 A, tolerance: 0.05 A, kind: printed, source: rodbook }
                                                                                                 ^
                1 mistake
                """);
    }
}
