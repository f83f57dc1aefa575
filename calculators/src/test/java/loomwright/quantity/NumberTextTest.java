package loomwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberTextTest {
    @ParameterizedTest(name = "{0} is shown as {1}")
    @CsvSource({
        "0, 0",
        "8, 8",
        "0.51072, 0.51072",
        "0.510723, 0.5107",
        "63.84, 63.84",
        "3.14159265, 3.142",
        "1234.5, 1234.5",
        "1234.56789, 1235",
        "0.000440001, 0.00044",
        "-5.5, \u22125.5",
        "416.666666, 416.7",
        "99999.999, 100\u2009000",
    })
    void showsShortDecimalsWholeAndLongOnesToFourDigits(double value, String text) {
        assertEquals(text, NumberText.shown(value));
    }

    @ParameterizedTest(name = "{0} to {1} digits is {2}")
    @CsvSource({
        "0.51072, 2, 0.51",
        "0.51072, 3, 0.511",
        "4.2, 3, 4.2",
        "1234.5, 2, 1235",
        "0.0449, 1, 0.04",
        "9.999, 3, 10",
        "0.5, 9, 0.5",
        "0.000000001, 1, 0.000000001",
        "0.0000000009, 1, 0",
        "-0.0000000009, 1, 0",
    })
    void keepsTheStatedNumberOfSignificantDigits(double value, int digits, String text) {
        assertEquals(text, NumberText.significant(value, digits));
    }

    @ParameterizedTest(name = "{0} with {1} decimals is {2}")
    @CsvSource({
        "1.005, 1, 1.0",
        "2.5, 0, 3",
        "-2.5, 0, \u22123",
        "-0.04, 1, 0.0",
        "0, 2, 0.00",
        "1234567.891, 6, 1\u2009234\u2009567.891",
        "999999.1234567, 6, 999\u2009999.123457",
        "1000000, 9, 1\u2009000\u2009000.000",
        "9999, 0, 9999",
        "10000, 0, 10\u2009000",
        "1000000, 0, 1\u2009000\u2009000",
        "0.1234567891, 12, 0.123456789",
    })
    void roundsHalvesAwayFromZero(double value, int digits, String text) {
        assertEquals(text, NumberText.fixed(value, digits));
    }

    @Test
    void putsNumbersWithoutAPlaceOnAnyScaleIntoWords() {
        assertEquals("not a number", NumberText.fixed(Double.NaN, 2));
        assertEquals("beyond every limit", NumberText.fixed(Double.POSITIVE_INFINITY, 2));
        assertEquals("below every limit", NumberText.fixed(-1e12, 2));
        assertEquals("beyond every limit", NumberText.fixed(1e12, 2));
        assertEquals("999\u2009999\u2009999\u2009999", NumberText.fixed(999_999_999_999.0, 0));
    }
}
