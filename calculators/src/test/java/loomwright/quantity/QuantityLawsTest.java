package loomwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class QuantityLawsTest {
    @Provide
    Arbitrary<Unit> units() {
        return Arbitraries.of(Units.all());
    }

    @Property(tries = 500)
    void textReadBackPrintsTheSameText(@ForAll("units") Unit unit, @ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        String text = Quantity.of(value, unit).text();
        Quantity read = QuantityText.read(text, unit).quantity();
        assertNotNull(read, text);
        assertEquals(text, read.text());
    }

    @Property(tries = 500)
    void convertingThereAndBackKeepsTheNumber(
            @ForAll("units") Unit from, @ForAll("units") Unit to, @ForAll @DoubleRange(min = 0.01, max = 40) double value) {
        if (from.dimension().equals(to.dimension())) {
            Quantity there = Quantity.of(value, from).in(to);
            assertEquals(value, there.in(from).value(), 1e-9 * Math.max(1, value));
        }
    }

    @Property(tries = 300)
    void aHigherGaugeNumberIsAThinnerConductor(@ForAll @DoubleRange(min = -3, max = 36) double gauge) {
        assertTrue(Units.AWG.toBase(gauge) > Units.AWG.toBase(gauge + 0.5));
    }

    @Property(tries = 2000)
    void anyTextIsReadOrRefusedInWords(@ForAll String text) {
        QuantityText.Reading reading = QuantityText.read(text, Units.VOLT);
        assertTrue((reading.quantity() == null) != (reading.fault() == null));
    }
}
