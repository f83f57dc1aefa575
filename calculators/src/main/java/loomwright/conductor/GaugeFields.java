package loomwright.conductor;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the converter of sizes asks and answers. */
final class GaugeFields {
    static final QuantityField SIZE = QuantityField.of(
                    "size", "Size of conductor", "As printed on the cable: an area, a gauge number, or the diameter of one solid wire.",
                    0.005, 150,
                    Units.SQUARE_MILLIMETRE, Units.AWG, Units.CIRCULAR_MIL)
            .orElse(0.08, 13.8, Units.MILLIMETRE, Units.INCHES);

    static final ChoiceField NAMED_BY = ChoiceField.of(
            "named-by",
            "A gauge number is",
            "AWG or SAE: the same numbers, but SAE has less copper. It makes no difference to an area or a diameter.",
            new Option("awg", "AWG, American wire gauge"),
            new Option("sae", "SAE gauge, on some vehicle and boat cable"));

    static final Description DESCRIPTION = new Description(
            "gauge-convert",
            "One size by all its names",
            "How much copper is this, and which metric or AWG size comes near it?",
            List.of(
                    "The diameter is that of one solid round wire. A stranded conductor of the same area is thicker, since it holds air.",
                    "A metric size is a name: its standard limits the resistance, and the true area may be a little more or less.",
                    "The gauge rule is printed for 36 AWG to 4/0; thinner than that the same rule is carried on, down to 40 AWG.",
                    "The metric series is that of IEC 60228 from 0.5 mm² to 120 mm². Vehicle cable also comes in 2 mm² and 3 mm²."),
            List.of(SIZE, NAMED_BY),
            List.of(
                    new Output("area", "Cross-section", Units.SQUARE_MILLIMETRE),
                    new Output("area-circular-mils", "Cross-section in circular mils", Units.CIRCULAR_MIL),
                    new Output("diameter", "Diameter of a solid wire of this area", Units.MILLIMETRE),
                    new Output("nearest-awg", "Nearest AWG", Units.AWG),
                    new Output("next-larger-awg", "First AWG with at least as much copper", Units.AWG),
                    new Output("nearest-metric", "Nearest metric size", Units.SQUARE_MILLIMETRE),
                    new Output("next-larger-metric", "First metric size with at least as much copper", Units.SQUARE_MILLIMETRE),
                    new Output("metric-difference", "Copper of the nearest metric size against it", Units.PERCENT),
                    new Output("sae-area", "Cross-section of the SAE gauge of this number", Units.SQUARE_MILLIMETRE),
                    new Output("sae-shortfall", "Copper that SAE lacks against AWG", Units.PERCENT)),
            GaugeFormulas.NAMED);

    private GaugeFields() {}
}
