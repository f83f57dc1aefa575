package loomwright.load;

import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Trial;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures in print. The tolerance is half of the last printed digit; a figure worked by hand from print is kept to four digits. */
class DeviceCurrentPublishedTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            US Army IT 0348, p. 1-23: input of a motor of 2984 W at 80 %       | power=2984 W       | efficiency=80 %     | input-power  | 3730 W   | 0.5 W
            USB PD power rules, 15 W: 3 A at 5 V                               | device-voltage=5 V | device-current=3 A  | device-power | 15 W     | 0.5 W
            USB PD power rules, 45 W: 3 A at 15 V                              | device-voltage=15 V| device-current=3 A  | device-power | 45 W     | 0.5 W
            IEC 63002, 4.4, Type-C 1.5 A at 5 V                                | device-voltage=5 V | device-current=1.5 A| device-power | 7.5 W    | 0.05 W
            Step-down controller, 5 V × 10 A ÷ 0.95 = 52.63 W                  | power=50 W         | efficiency=95 %     | input-power  | 52.63 W  | 0.005 W
            Step-down controller, 52.63 W ÷ 12 V = 4.386 A                     | power=50 W         | efficiency=95 %     | current      | 4.386 A  | 0.0005 A
            """)
    void agreesWithPrint(String print, String first, String second, String asked, String printed, String tolerance) {
        Trial trial = Trial.of("device-current", first, second);
        assertTrue(trial.away(asked, printed) <= Trial.number(tolerance), () -> print + " is off by " + trial.away(asked, printed));
    }
}
