package loomwright.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import loomwright.catalogue.Catalogue;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.NamedFormula;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.xml.sax.InputSource;

class FormulaLawsTest {
    private static final Symbol A = Symbol.of("a", "first", Dimension.NUMBER);
    private static final Symbol B = Symbol.of("b", "second", Dimension.NUMBER);

    /** Random trees of plain numbers, with what an evaluator of our own says they are worth. */
    @Provide
    Arbitrary<Expression> trees() {
        return trees(4);
    }

    private static Arbitrary<Expression> trees(int depth) {
        Arbitrary<Expression> leaves = Arbitraries.of(A, B, Expression.number(2), Expression.number(-3));
        if (depth == 0) {
            return leaves;
        }
        Arbitrary<Expression> below = trees(depth - 1);
        return Arbitraries.oneOf(
                leaves,
                Combinators.combine(below, below).as(Expression::plus),
                Combinators.combine(below, below).as(Expression::minus),
                Combinators.combine(below, below).as((left, right) -> left.times(right)),
                Combinators.combine(below, below).as(Expression::over),
                below.map(Expression::squared));
    }

    /** The text with numbers put in, worked out by a separate small reader of arithmetic, gives the value of the tree. */
    @Property(tries = 300)
    void theTextWithNumbersPutInMeansWhatTheTreeComputes(@ForAll("trees") Expression tree) {
        Values values = Values.of(A, Quantity.number(5)).with(B, Quantity.of(0.5, Units.ONE));
        double value = tree.base(values);
        String text = PlainText.write(tree, values::of);
        double read = Arithmetic.valueOf(text);
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            assertEquals(Double.isNaN(value) || Double.isInfinite(value), Double.isNaN(read) || Double.isInfinite(read), text);
        } else {
            assertEquals(value, read, 1e-9 * Math.max(1, Math.abs(value)), text);
        }
    }

    @Property(tries = 200)
    void mathMlIsWellFormed(@ForAll("trees") Expression tree) throws Exception {
        Values values = Values.of(A, Quantity.number(5)).with(B, Quantity.of(50, Units.PERCENT));
        parse(new Formula(A, tree).symbolicMathMl());
        parse(new Formula(A, tree).workedMathMl(values, Quantity.number(1)));
    }

    @TestFactory
    List<DynamicTest> everyFormulaOfEveryCalculatorHasTheSameUnitsOnBothSides() {
        return Catalogue.all().stream()
                .map(Calculator::description)
                .flatMap(description -> description.formulas().stream().map(named -> check(description.key(), named)))
                .toList();
    }

    private static DynamicTest check(String calculator, NamedFormula named) {
        return DynamicTest.dynamicTest(calculator + "/" + named.key(), () -> {
            assertEquals(named.formula().subject().dimension(), named.formula().body().dimension());
            parse(named.formula().symbolicMathMl());
        });
    }

    private static void parse(String xml) throws Exception {
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }
}
