package loomwright.generator.example;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.YamlMap;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Problems;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.source.Standing;
import loomwright.worked.Output;

/** Reads one pin and holds the result against it. */
final class PinReader {
    private static final int SHOWN_DIGITS = 6;
    private static final List<String> KINDS = Arrays.stream(PinKind.values()).map(PinKind::key).toList();

    private final Problems problems;
    private final Citations citations;

    PinReader(Map<String, Document> documents, Problems problems) {
        this.problems = problems;
        this.citations = new Citations(documents, problems);
    }

    /** The pin, or null if it cannot be read. A pin that does not hold is reported too. */
    Pin read(String whose, YamlMap map, Trial trial) {
        Scalar result = map.required("result");
        Scalar expectText = map.required("expect");
        Scalar toleranceText = map.required("tolerance");
        PinKind kind = kind(map.required("kind"));
        Source source = citations.read(map);
        Scalar arithmetic = map.text("arithmetic");
        map.finish();
        Output output = result == null ? null : trial.output(result, problems);
        Quantity expect = output == null || expectText == null ? null : quantity(expectText, output);
        Quantity tolerance = output == null || toleranceText == null ? null : quantity(toleranceText, output);
        if (expect == null || tolerance == null || kind == null || source == null) {
            return null;
        }
        Pin pin = new Pin(
                expectText.at(), output, trial.working().result(output.key()).quantity(), expect, glued(expectText), tolerance,
                glued(toleranceText), kind, source, arithmetic == null ? "" : arithmetic.text());
        check(whose, map, pin);
        return pin;
    }

    private void check(String whose, YamlMap map, Pin pin) {
        boolean unpublished = pin.source().standing() != Standing.PUBLISHED && pin.source().standing() != Standing.SECOND_HAND
                && pin.source().standing() != Standing.COMPUTED;
        boolean claimsPrint = pin.kind() == PinKind.PRINTED || pin.kind() == PinKind.FROM_TABLE;
        if (claimsPrint && unpublished) {
            problems.add(map.keyAt("source").problem(
                    "a pin of kind \"" + pin.kind().key() + "\" needs a published source, but \"" + pin.source().document().key()
                            + "\" is " + pin.source().standing().words(),
                    "Name the publication, or make the kind common-practice or invented."));
        }
        boolean workedByHand = pin.kind() == PinKind.FROM_TABLE || pin.kind() == PinKind.INVENTED;
        if (workedByHand && pin.arithmetic().isBlank()) {
            problems.add(map.at().problem(
                    "a pin of kind \"" + pin.kind().key() + "\" has no \"arithmetic\"", "Add a line arithmetic: with the working by hand."));
        }
        checkArithmetic(map, pin);
        if (!pin.holds()) {
            problems.add(pin.at().problem(
                    "\"" + pin.output().key() + "\" of " + whose + " comes out as " + plain(pin.computed(), pin)
                            + ", but the pin expects " + pin.expectText() + " within "
                            + pin.toleranceText() + "; the difference is " + plain(pin.difference(), pin),
                    "Look for the slip in the entries, in the source or in the calculator; do not widen the tolerance to hide it."));
        }
    }

    /** A working by hand that ends in another figure than the one expected has a slip in one of the two. */
    private void checkArithmetic(YamlMap map, Pin pin) {
        String end = pin.arithmetic().substring(pin.arithmetic().lastIndexOf('=') + 1).strip();
        Quantity ending = QuantityText.readPrinted(end, null).quantity();
        if (ending == null || !ending.dimension().equals(pin.expect().dimension())) {
            return;
        }
        if (!pin.isNear(ending)) {
            problems.add(map.keyAt("arithmetic").problem(
                    "the arithmetic ends in " + end + ", but the pin expects " + pin.expectText() + " within " + pin.toleranceText(),
                    "Correct the one that is wrong."));
        }
    }

    private static String plain(Quantity quantity, Pin pin) {
        return quantity.in(pin.expect().unit()).text(SHOWN_DIGITS);
    }

    private PinKind kind(Scalar scalar) {
        PinKind kind = scalar == null ? null : PinKind.named(scalar.text());
        if (scalar != null && kind == null) {
            problems.add(scalar.problem("no kind of pin is called \"" + scalar.text() + "\"", Nearest.remedy(scalar.text(), KINDS)));
        }
        return kind;
    }

    private Quantity quantity(Scalar scalar, Output output) {
        QuantityText.Reading reading = QuantityText.readPrinted(scalar.text(), output.unit());
        if (reading.quantity() == null) {
            problems.add(scalar.problem(
                    "\"" + scalar.text() + "\" " + reading.fault(),
                    "Write a number and a unit, such as 0.5 " + output.unit().symbol() + "."));
            return null;
        }
        if (!reading.quantity().dimension().equals(output.unit().dimension())) {
            problems.add(scalar.problem(
                    "\"" + scalar.text() + "\" is not in a unit of \"" + output.key() + "\"",
                    "Write it in " + output.unit().symbol() + "."));
            return null;
        }
        return reading.quantity();
    }

    /** The text with its number held to its unit. */
    private static String glued(Scalar scalar) {
        return scalar.text().strip().replace(' ', '\u00a0');
    }
}
