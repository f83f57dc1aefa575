package loomwright.load;

import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Trial;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures in print. The tolerance is that of a double for a row of a table, and half of the last digit for a figure worked from one. */
class UsbPowerBudgetPublishedTest {
    private static final double EXACT = 1e-9;

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            USB controller sheet: USB 2.0 host port | usb-2 | 5 V | 0.5 A | 2.5 W
            USB controller sheet: USB 3.0 and 3.1 host port | usb-3 | 5 V | 0.9 A | 4.5 W
            USB controller sheet: Battery Charging 1.2 | bc-1.2 | 5 V | 1.5 A | 7.5 W
            IEC 63002 clause 4.4: Type-C, medium | type-c-1.5 | 5 V | 1.5 A | 7.5 W
            IEC 63002 clause 4.4: Type-C, high | type-c-3 | 5 V | 3 A | 15 W
            """)
    void readsTheLevelOfAPort(String print, String level, String voltage, String current, String power) {
        agree(print, Trial.of("usb-power-budget", "port-2-level=" + level), 2, voltage, current, power);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            USB PD dictionary, to 15 W: 5 V at power ÷ 5 | 15 W | 3-a | 5 V | 3 A
            USB PD dictionary, 15 to 27 W: 9 V at power ÷ 9 | 27 W | 3-a | 9 V | 3 A
            USB PD dictionary, 27 to 45 W: 15 V at power ÷ 15 | 45 W | 3-a | 15 V | 3 A
            USB PD dictionary, 45 to 60 W: 20 V at power ÷ 20 | 60 W | 3-a | 20 V | 3 A
            USB PD dictionary, 60 to 100 W: 20 V at power ÷ 20 | 100 W | 5-a | 20 V | 5 A
            USB PD news: extended range, 28 V | 140 W | 5-a-50-v | 28 V | 5 A
            USB PD news: extended range, 36 V | 180 W | 5-a-50-v | 36 V | 5 A
            USB PD news: extended range, 48 V | 240 W | 5-a-50-v | 48 V | 5 A
            """)
    void settlesTheVoltageOfPowerDelivery(String print, String power, String cable, String voltage, String current) {
        Trial trial = Trial.of("usb-power-budget", "port-1-level=pd", "port-1-power=" + power, "port-1-cable=" + cable);
        agree(print, trial, 1, voltage, current, power);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Step-down controller sheet, 95 %: 50 W ÷ 0.95 = 52.63 W | efficiency=95 % | input-power | 52.63 W | 0.005
            Step-down controller sheet, 95 %: 52.63 W ÷ 12 V = 4.39 A | efficiency=95 % | current | 4.39 A | 0.005
            Step-down controller sheet, 97 % at half load: 50 W ÷ 0.97 = 51.55 W | efficiency=97 % | input-power | 51.55 W | 0.005
            """)
    void agreesWithAConverterInPrint(String print, String efficiency, String asked, String printed, double tolerance) {
        Trial trial = Trial.of("usb-power-budget", "port-1-level=pd", "port-1-power=50 W", efficiency);
        assertTrue(trial.away(asked, printed) <= tolerance, () -> print + " is off by " + trial.away(asked, printed));
    }

    private static void agree(String print, Trial trial, int port, String voltage, String current, String power) {
        assertTrue(trial.away("port-" + port + "-voltage", voltage) <= EXACT, print);
        assertTrue(trial.away("port-" + port + "-current", current) <= EXACT, print);
        assertTrue(trial.away("port-" + port + "-power", power) <= EXACT, print);
        assertTrue(trial.away("output-power", power) <= EXACT, print);
    }
}
