package loomwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import javax.measure.MetricPrefix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import systems.uom.common.USCustomary;

/** Units against the definitions in print, and against a general-purpose library of units. */
class UnitsAgainstPublishedTest {
    /** Diameters in inches that ASTM B258 fixes exactly, and areas of NBS Handbook 100 (circular mils, four figures). */
    @ParameterizedTest(name = "{0} AWG has {1} circular mils (NBS Handbook 100)")
    @CsvSource({
        "-3, 211600, 50", "-2, 167800, 50", "-1, 133100, 50", "0, 105500, 50", "2, 66370, 5", "4, 41740, 5",
        "6, 26250, 5", "8, 16510, 5", "10, 10380, 5", "12, 6530, 1.5", "14, 4107, 0.5", "16, 2583, 0.5", "18, 1624, 0.5",
        "20, 1022, 0.5", "22, 642.5, 0.1"
    })
    void gaugeAreasMatchTheWireTable(double gauge, double circularMils, double halfLastDigit) {
        assertEquals(circularMils, Quantity.of(gauge, Units.AWG).in(Units.CIRCULAR_MIL).value(), halfLastDigit);
    }

    /** US Navy NEETS module 4: a circle one mil across is 0.7854 square mil. */
    @Test
    void aCircularMilIsTheAreaOfACircleOneMilAcross() {
        double squareMil = 0.0254e-3 * 0.0254e-3;
        assertEquals(0.7854, Units.CIRCULAR_MIL.toBase(1) / squareMil, 0.00005);
    }

    @Test
    void feetAndInchesAgreeWithTheLibraryOfUnits() {
        double metresPerFoot = USCustomary.FOOT.getConverterTo(USCustomary.METER).convert(1.0);
        double metresPerInch = USCustomary.INCH.getConverterTo(USCustomary.METER).convert(1.0);
        assertEquals(metresPerFoot, Units.FEET.toBase(1), 1e-15);
        assertEquals(metresPerInch, Units.INCHES.toBase(1), 1e-15);
        assertEquals(
                MetricPrefix.MILLI(USCustomary.METER).getConverterTo(USCustomary.METER).convert(1.0),
                Units.MILLIMETRE.toBase(1), 1e-15);
    }

    @ParameterizedTest(name = "{0} °F is {1} °C")
    @CsvSource({"32, 0", "212, 100", "-40, -40"})
    void fahrenheitMeetsCelsiusAtTheFixedPoints(double fahrenheit, double celsius) {
        assertEquals(celsius, Quantity.of(fahrenheit, Units.FAHRENHEIT).in(Units.CELSIUS).value(), 1e-12);
    }
}
