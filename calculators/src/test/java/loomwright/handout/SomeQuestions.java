package loomwright.handout;

import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.worked.Calculator;

/** Two lessons for the tests. */
final class SomeQuestions {
    static final Question DROP = question(
            "bench-drop", "The cable to the bench", "The bench is 4.2 m away and draws 8 A. What stays in the cable?", "voltage-drop",
            Map.of("current", "8 A", "route-length", "4.2 m", "conductor", "iso-6722-1", "size", "2.5 mm2"), "drop");
    static final Question FUSE = question(
            "bench-fuse", "The fuse-link of the bench", "", "fuse-choice",
            Map.of("design-current", "10 A", "size", "14 AWG", "insulation-temperature", "t105"), "chosen-rating");
    static final Question COIL = question(
            "coil", "A relay for a day", "", "coil-day", Map.of("coil-resistance", "90 Ω"), "coil-current");
    static final Question POWER = question(
            "port", "A port", "A port gives 5 V and 3 A.", "ohm-and-power", Map.of("voltage", "5 V", "current", "3 A"), "power");

    static final List<LessonQuestions> LESSONS = List.of(
            new LessonQuestions("01-words", "1 Words", List.of(), 3),
            new LessonQuestions("02-cables", "2 Cables", List.of(DROP, FUSE), 1),
            new LessonQuestions("03-relays", "3 Relays", List.of(COIL, POWER), 0));

    private SomeQuestions() {}

    static Question question(String key, String title, String story, String calculatorKey, Map<String, String> given, String result) {
        Calculator calculator = Catalogue.find(calculatorKey);
        return new Question(
                key, title, Scene.of(story, calculator, given), calculator, given, List.of(), calculator.description().output(result));
    }
}
