package loomwright.load;

import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Trial;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples in print. The tolerance is half of the last printed digit. */
class OhmAndPowerPublishedTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            OpenStax College Physics 20.4, outlet of a car, 20 A at 12 V   | voltage=12 V     | current=20 A       | power      | 240 W   | 0.5 W
            OpenStax College Physics 20.4, cold headlight (a)              | voltage=12.0 V   | resistance=0.350 Ω | power      | 411 W   | 0.5 W
            OpenStax College Physics 20.4, cold headlight (b)              | voltage=12.0 V   | resistance=0.350 Ω | current    | 34.3 A  | 0.05 A
            OpenStax College Physics 20.2, extension cord (a)              | current=5.00 A   | resistance=0.0600 Ω| voltage    | 0.300 V | 0.0005 V
            OpenStax College Physics 23.6, motor at rest, current          | voltage=48.0 V   | resistance=0.400 Ω | current    | 120 A   | 0.5 A
            OpenStax College Physics 23.6, motor at rest, power            | voltage=48.0 V   | resistance=0.400 Ω | power      | 5.76 kW | 0.005 kW
            Relay data sheet, 70 A class: coil current                     | voltage=12 V     | resistance=90 Ω    | current    | 133 mA  | 0.5 mA
            Relay data sheet, 70 A class: coil power                       | voltage=12 V     | resistance=90 Ω    | power      | 1.6 W   | 0.05 W
            USB Power Delivery dictionary entry, port rated 50 W           | voltage=20 V     | power=50 W         | current    | 2.5 A   | 0.05 A
            School exercise on a car battery, 8 V lost at 40 A             | voltage=8 V      | current=40 A       | resistance | 0.2 Ω   | 0.05 Ω
            """)
    void agreesWithPrint(String print, String first, String second, String asked, String printed, String tolerance) {
        Trial trial = Trial.of("ohm-and-power", first, second);
        double allowed = Trial.number(tolerance);
        assertTrue(trial.away(asked, printed) <= allowed, () -> print + " is off by " + trial.away(asked, printed));
    }
}
