package loomwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTextTest {
    @ParameterizedTest(name = "{0} is {1} {2}")
    @CsvSource(delimiter = '|', value = {
        "2.5 mm2 | 2.5 | mm²",
        "2.5 mm²| 2.5 | mm²",
        "2,5mm^2 | 2.5 | mm²",
        "14 AWG | 14 | AWG",
        "14 awg | 14 | AWG",
        "2/0 AWG | -1 | AWG",
        "4/0 AWG | -3 | AWG",
        "0 AWG | 0 | AWG",
        "00 AWG | -1 | AWG",
        "000awg | -2 | AWG",
        "0000 gauge | -3 | AWG",
        "3/4 in | 0.75 | in",
        "1 1/2 in | 1.5 | in",
        "1-1/2\" | 1.5 | in",
        "15/64 in | 0.234375 | in",
        "1½ in | 1.5 | in",
        "¾ in | 0.75 | in",
        "-1 1/2 °C | -1.5 | °C",
        "１２ Ｖ | 12 | V",
        "２．５　ｍｍ２ | 2.5 | mm²",
        "500 mA | 500 | mA",
        "12,8 V | 12.8 | V",
        "1 000 mA | 1000 | mA",
        "10\u2009000 mA | 10000 | mA",
        "-5 °C | -5 | °C",
        "\u22125 °C | -5 | °C",
        "7.6 mohm/m | 7.6 | mΩ/m",
        "7.6 m\u2126/m | 7.6 | mΩ/m",
        "0.00044 ohm/ft | 0.00044 | Ω/ft",
        "4.7 kΩ | 4.7 | kΩ",
        "10 kohm | 10 | kΩ",
        "90 % | 90 | %",
        "0,500 A | 0.5 | A",
        "3.142 A | 3.142 | A",
        "12.0000 V | 12 | V",
        "1234.500 A | 1234.5 | A",
        ".5 A | 0.5 | A",
        "3 h | 3 | h",
        "100 Ah | 100 | Ah",
        "1.2 kWh | 1.2 | kWh",
        "11 ft | 11 | ft",
        "0.5 in | 0.5 | in",
    })
    void readsWhatPeopleType(String text, double value, String unit) {
        QuantityText.Reading reading = QuantityText.read(text, null);
        assertNull(reading.fault());
        assertEquals(value, reading.quantity().value());
        assertEquals(unit, reading.quantity().unit().symbol());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', value = {
        "'' | has no number",
        "volts | has no number",
        "1.2.3 V | has two decimal marks",
        "1.234,5 V | has both a point and a comma: write thousands without a mark, and one point before the decimals",
        "1,234.5 V | has both a point and a comma: write thousands without a mark, and one point before the decimals",
        "1,500 mA | could mean thousands or decimals: write thousands without a mark, and decimals without a zero at the end",
        "1.500 A | could mean thousands or decimals: write thousands without a mark, and decimals without a zero at the end",
        "12,000 mA | could mean thousands or decimals: write thousands without a mark, and decimals without a zero at the end",
        "12.000 mA | could mean thousands or decimals: write thousands without a mark, and decimals without a zero at the end",
        "１２．０００ mA | could mean thousands or decimals: write thousands without a mark, and decimals without a zero at the end",
        "3/0 in | divides by nought",
        "3/4/5 in | has a unit we do not know: “/5 in”",
        "1.5/2 in | has a unit we do not know: “/2 in”",
        "2/0 | needs its unit: write 2/0 AWG",
        "12 SAE | is an SAE gauge, which has less copper than AWG of the same number: enter the cable's true area, such as 2.96 mm² for 12 SAE, or the number as AWG where SAE can be chosen beside it",
        "SAE 12 | is an SAE gauge, which has less copper than AWG of the same number: enter the cable's true area, such as 2.96 mm² for 12 SAE, or the number as AWG where SAE can be chosen beside it",
        "12 SAE AWG | is an SAE gauge, which has less copper than AWG of the same number: enter the cable's true area, such as 2.96 mm² for 12 SAE, or the number as AWG where SAE can be chosen beside it",
        "12 parsecs | has a unit we do not know: “parsecs”",
        "12 | needs a unit after the number",
        "1234567890123456 A | is too long: write at most 15 digits",
        "5/0 AWG | is no gauge: above 1 AWG come 1/0, 2/0, 3/0 and 4/0, also written 0, 00, 000 and 0000",
        "00000 AWG | is no gauge: above 1 AWG come 1/0, 2/0, 3/0 and 4/0, also written 0, 00, 000 and 0000",
        "2 4.2 m | has a unit we do not know: “4.2 m”",
        "1e5 A | has a power of ten: write the number out, such as 1500 for 1.5e3",
        "2E-3 A | has a power of ten: write the number out, such as 1500 for 1.5e3",
        "1e309 A | is too large",
        "1e-309 A | is too small",
        "NaN V | has no number",
    })
    void saysWhatIsWrong(String text, String fault) {
        QuantityText.Reading reading = QuantityText.read(text, null);
        assertNull(reading.quantity());
        assertEquals(fault, reading.fault());
    }

    /** Areas of ASTM B258 as NBS Handbook 100 prints them: 105 500, 133 100, 167 800 and 211 600 circular mils; last digit rounded in print. */
    @ParameterizedTest(name = "{0} AWG has {1} circular mils")
    @CsvSource({"0, 105500", "00, 133100", "000, 167800", "0000, 211600", "1/0, 105500", "2/0, 133100", "3/0, 167800", "4/0, 211600"})
    void readsThickGaugesAsTheyAreMarked(String gauge, double circularMils) {
        assertEquals(circularMils, QuantityText.read(gauge + " AWG", null).quantity().in(Units.CIRCULAR_MIL).value(), 50);
        assertEquals(circularMils, QuantityText.read(gauge, Units.AWG).quantity().in(Units.CIRCULAR_MIL).value(), 50);
    }

    @Test
    void takesZerosAtTheEndOfAPrintedFigureAsPrinted() {
        assertEquals(1.28, QuantityText.readPrinted("1.280", Units.ONE).quantity().value());
    }

    @Test
    void takesTheAssumedUnitWhenOnlyANumberIsTyped() {
        assertSame(Units.AMPERE, QuantityText.read("8", Units.AMPERE).quantity().unit());
        assertEquals(0, QuantityText.read("1/0", Units.AWG).quantity().value());
    }

    @Test
    void refusesATextOfUnreasonableLength() {
        assertEquals("is longer than 60 characters", QuantityText.read("1".repeat(61), Units.VOLT).fault());
    }
}
