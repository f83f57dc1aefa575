package loomwright.circuit.page;

import loomwright.circuit.Circuit;
import loomwright.markup.Html;

/** The name of the circuit under the head of each sheet, for paper alone: sheets get apart. */
final class SheetName {
    private SheetName() {}

    static String of(Circuit circuit) {
        return new Html().tag("<p class=\"of-circuit\">").text(circuit.name().isEmpty() ? "A circuit without a name" : circuit.name()).tag("</p>").toString();
    }
}
