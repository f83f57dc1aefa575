package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListSet;
import loomwright.catalogue.Catalogue;
import loomwright.generator.content.Content;
import loomwright.generator.content.ContentReader;
import loomwright.generator.example.Example;
import loomwright.generator.example.ExampleBook;
import loomwright.generator.problem.Problems;
import loomwright.quantity.Quantity;
import loomwright.turned.Turned;
import loomwright.turned.TurnedRound;
import loomwright.turned.Wish;
import loomwright.worked.Calculator;
import loomwright.worked.Field;
import loomwright.worked.Outcome;
import loomwright.worked.QuantityField;
import loomwright.worked.Result;
import loomwright.worked.Working;
import org.junit.jupiter.api.Test;

/** Every number of every worked example can be the unknown: the answer put back gives the result, or words say why there is none. */
class TurnedExamplesTest {
    private static final Path CONTENT = Path.of("../content");
    private static final double ROUNDING = 0.002;

    private final Map<Turned.Kind, Integer> counts = new ConcurrentHashMap<>();
    private final SortedSet<String> fields = new ConcurrentSkipListSet<>();
    private final SortedSet<String> answered = new ConcurrentSkipListSet<>();
    private final SortedSet<String> calculators = new ConcurrentSkipListSet<>();

    private static List<Example> examples() {
        Problems problems = new Problems();
        Content content = ContentReader.read(CONTENT, problems);
        Map<String, Calculator> calculators = new LinkedHashMap<>();
        Catalogue.all().forEach(each -> calculators.put(each.description().key(), each));
        return ExampleBook.of(content, calculators, problems).all();
    }

    @Test
    void theAnswerPutBackGivesTheResult() {
        List<String> wrong = Collections.synchronizedList(new ArrayList<>());
        examples().parallelStream().forEach(example -> turnAll(example, wrong));
        System.out.println(counts + "; " + calculators.size() + " calculators, " + answered.size() + " of " + fields.size() + " fields answer");
        assertEquals(Catalogue.all().size(), calculators.size(), calculators.toString());
        assertTrue(counts.get(Turned.Kind.WORKED_OUT) >= 1000 && answered.size() >= 200, counts + " " + answered.size());
        assertTrue(wrong.isEmpty(), String.join("\n", wrong));
    }

    private void turnAll(Example example, List<String> wrong) {
        for (Field field : example.calculator().description().fields()) {
            if (field instanceof QuantityField quantity) {
                example.working().results().forEach(result -> turn(example, quantity, result, wrong));
            }
        }
    }

    private void turn(Example example, QuantityField field, Result result, List<String> wrong) {
        Calculator calculator = example.calculator();
        String name = calculator.description().key() + "/" + field.key();
        fields.add(name);
        Map<String, String> typed = new LinkedHashMap<>(example.given());
        Quantity wanted = Quantity.of(result.quantity().value() * 0.9, result.quantity().unit());
        Turned turned = TurnedRound.of(calculator, typed, field, new Wish(result.output(), wanted, true));
        counts.merge(turned.kind(), 1, Integer::sum);
        if (turned.answer() == null) {
            assertTrue(turned.words().length() > 30, turned.words());
            return;
        }
        answered.add(name);
        calculators.add(calculator.description().key());
        Outcome back = Outcome.with(calculator, typed, field, turned.answer());
        Working working = back.working();
        if (working == null) {
            wrong.add(name + " " + turned.words() + back.faults());
            return;
        }
        double gives = working.result(result.output().key()).quantity().base();
        boolean met = gives <= wanted.base() + 1e-8 * Math.abs(wanted.base());
        boolean close = turned.kind() == Turned.Kind.SIZES || Math.abs(gives - wanted.base()) <= ROUNDING * Math.abs(wanted.base());
        if (!met || !close) {
            wrong.add(name + " " + result.output().key() + " " + turned.kind() + " " + turned.words() + " wanted " + wanted.text());
        }
    }
}
