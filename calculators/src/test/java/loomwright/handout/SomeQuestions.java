package loomwright.handout;

import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.worked.Calculator;

/** Two lessons for the tests. */
final class SomeQuestions {
    static final Question DROP = question(
            "bench-drop", "The cable to the bench", "The bench is {route-length} away and draws {current}. What stays in the cable, and what share is that?", "voltage-drop",
            Map.of("current", "8 A", "route-length", "4.2 m", "conductor", "iso-6722-1", "size", "2.5 mm2"), "drop", "drop-percent");
    static final Question COIL = question(
            "coil", "A relay for a day", "A coil of {coil-resistance} is on all day.", "coil-day", Map.of("coil-resistance", "90 Ω", "supply-voltage", "12 V"), "coil-current");
    static final Question POWER = question(
            "port", "A port", "A port gives {voltage} and {current}.", "ohm-and-power", Map.of("voltage", "12 V", "current", "3 A"), "power");
    /** The trap of a lesson: the cable carries less than the load takes. */
    static final Question TRAP = new Question(
            "trap", "Twelve amperes on one square", "A heater takes 12 A for hours on 1 mm². What is the largest rating that guards the cable?", false,
            Catalogue.find("fuse-choice"), Map.of("design-current", "12 A", "size", "1 mm2", "insulation-temperature", "t60", "ambient", "30 °C", "fuse-type", "blade"), List.of(),
            List.of(Catalogue.find("fuse-choice").description().output("highest-rating")), "No fuse-link puts this right. Only a thicker cable does.");
    static final Question WORDS = Question.inWords("why", "In your own words", "Why does the route count twice?", "The current also has to come back.");

    static final List<LessonQuestions> LESSONS = List.of(
            new LessonQuestions("01-none", "1 None", false, List.of()),
            new LessonQuestions("02-cables", "2 Cables", true, List.of(DROP, WORDS, TRAP)),
            new LessonQuestions("03-relays", "3 Relays", false, List.of(COIL, POWER)));

    private SomeQuestions() {}

    static Question question(String key, String title, String words, String calculatorKey, Map<String, String> given, String... results) {
        Calculator calculator = Catalogue.find(calculatorKey);
        return new Question(
                key, title, words, true, calculator, given, List.of(), java.util.Arrays.stream(results).map(calculator.description()::output).toList(),
                "Volts and amperes.");
    }
}
