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
        "1.500 A | 1.5 | A",
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
        "1.2.3 V | has two decimal points",
        "1,500 mA | could mean thousands or a decimal: write it without the comma, or with a point",
        "12 parsecs | has a unit we do not know: “parsecs”",
        "12 | needs a unit after the number",
        "1234567890123456 A | has more than 15 digits",
        "5/0 AWG | has a unit we do not know: “/0 AWG”",
        "2 4.2 m | has a unit we do not know: “4.2 m”",
        "1e5 A | has a unit we do not know: “e5 A”",
        "NaN V | has no number",
    })
    void saysWhatIsWrong(String text, String fault) {
        QuantityText.Reading reading = QuantityText.read(text, null);
        assertNull(reading.quantity());
        assertEquals(fault, reading.fault());
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
