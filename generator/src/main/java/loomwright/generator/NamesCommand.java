package loomwright.generator;

import java.io.PrintStream;
import java.util.List;
import java.util.concurrent.Callable;
import loomwright.catalogue.Catalogue;
import loomwright.generator.drawing.Drawings;
import loomwright.worked.Calculator;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Field;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists the names an author can use: calculators with their inputs, results and formulas, and drawings. */
@Command(
        name = "names",
        description = "Lists the calculators with their inputs, results and formulas, and the drawings.",
        mixinStandardHelpOptions = true)
final class NamesCommand implements Callable<Integer> {
    @Mixin
    private Inputs inputs;

    @Override
    public Integer call() {
        Drawings drawings = inputs.drawings();
        for (Calculator calculator : Catalogue.all()) {
            print(System.out, calculator.description());
        }
        System.out.println("drawings: each with the values it takes");
        for (String name : drawings.names()) {
            System.out.println("  " + name + (drawings.takes(name).isEmpty() ? "" : ": " + String.join(", ", drawings.takes(name))));
        }
        return Loomwright.FINE;
    }

    private static void print(PrintStream out, Description description) {
        out.println(description.key() + ": " + description.question());
        for (Field field : description.fields()) {
            out.println("  given    " + field.key() + ": " + range(field));
        }
        for (Output output : description.outputs()) {
            out.println("  result   " + output.key() + " (" + output.unit().symbol() + "): " + output.label());
        }
        for (NamedFormula formula : description.formulas()) {
            out.println("  formula  " + description.key() + "/" + formula.key() + ": " + formula.formula().symbolicText());
        }
        out.println();
    }

    private static String range(Field field) {
        String usual = field.usual() == null ? "" : field.usual().isEmpty() ? "; may be left out" : "; usually " + field.usual();
        if (field instanceof ChoiceField choice) {
            return String.join(" | ", choice.options().stream().map(Option::key).toList()) + usual;
        }
        List<String> kinds = ((QuantityField) field).limits().stream()
                .map(limits -> limits.least().text() + " to " + limits.greatest().text())
                .toList();
        return String.join(", or ", kinds).replace('\u00a0', ' ') + usual;
    }
}
