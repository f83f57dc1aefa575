package loomwright.markup;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loomwright.catalogue.Catalogue;
import loomwright.entries.TypedEntries;
import loomwright.practice.Exercise;
import loomwright.practice.MendedWorking;
import loomwright.practice.Variation;
import loomwright.shape.Golden;
import loomwright.worked.AnswerCheck;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import loomwright.worked.Output;
import loomwright.worked.Step;
import loomwright.worked.Working;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** How entries, answers, checks and rungs are written, with every figure masked. */
class MarkupShapeTest {
    @TestFactory
    Stream<DynamicTest> isAsAgreed() {
        return Stream.of("voltage-drop", "fuse-choice", "two-routes", "size-for-run", "ohm-and-power").map(key -> DynamicTest.dynamicTest(key, () -> {
            Calculator calculator = Catalogue.find(key);
            TypedEntries typed = new TypedEntries(calculator, List.of(), 4);
            Map<String, String> first = working(calculator, typed);
            Map<String, String> second = working(calculator, typed);
            Golden.assertIs("markup/" + key + ".txt", Golden.maskedMarkup(page(calculator, first, second)));
        }));
    }

    private static Map<String, String> working(Calculator calculator, TypedEntries typed) {
        while (true) {
            Map<String, String> entries = typed.next();
            Working working = Outcome.of(calculator, entries).working();
            if (working != null && !working.findings().isEmpty() && working.slips().size() > 1) {
                return entries;
            }
        }
    }

    private static String page(Calculator calculator, Map<String, String> first, Map<String, String> second) {
        Working printed = Outcome.of(calculator, first).working();
        Working own = Outcome.of(calculator, second).working();
        Output asked = printed.results().get(0).output();
        Place place = new Place("place", new Links("../"), List.of(asked.key()));
        StringBuilder text = new StringBuilder(OutcomeMarkup.printed(place, printed, "<svg></svg>"));
        text.append(OutcomeMarkup.own(place, own, printed, "")).append(OutcomeMarkup.steps(Links.NONE, own));
        text.append(FormMarkup.of(place, calculator.description(), first)).append(GivenMarkup.of(calculator.description(), Map.of()));
        text.append(FormMarkup.summary(place, Outcome.of(calculator, Map.of()).faults())).append(StatusText.of(place, own));
        text.append(AnswerMarkup.form(place, asked));
        for (String answer : new String[] {printed.results().get(0).quantity().text(), printed.slips().get(0).value().text(), "", "1 parsec"}) {
            text.append(AnswerMarkup.reply(AnswerCheck.of(printed, asked.key(), answer)));
        }
        Exercise exercise = new Exercise(printed);
        text.append(LadderMarkup.row("place")).append(RungMarkup.head(place, "Finish it", "Fill in.", calculator.description(), first));
        text.append(RungMarkup.steps(place, exercise, exercise.last(2), false)).append(RungMarkup.steps(place, exercise, exercise.blanks(), true));
        int blank = exercise.blanks().get(0);
        Step step = printed.steps().get(blank);
        text.append(RungMarkup.worked(step, blank)).append(RungMarkup.choices(place, "why", "Why?", exercise.reasons(blank, 3)));
        text.append(RungMarkup.actions("again", "Once more", "next", "The next one"));
        MendedWorking mended = MendedWorking.of(printed, 1);
        if (mended != null) {
            text.append(RungMarkup.mended(place, mended)).append(mended.names(printed, 2));
        }
        Variation variation = Variation.of(calculator, first, 5);
        text.append(variation == null ? "no other numbers" : variation.entries().keySet().toString());
        return text.toString();
    }
}
