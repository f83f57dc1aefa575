package loomwright.switching;

import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Trial;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked figures in print. The tolerance is half of the last printed digit, or stated at the line. */
class SwitchingPublishedTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Relay data sheet, 70 A class: 90 Ω at 12 V, coil current | coil-day | coil-resistance=90 Ω;supply-voltage=12 V | coil-current | 133 mA | 0.5 mA
            Relay data sheet, 70 A class: 90 Ω at 12 V, coil power   | coil-day | coil-resistance=90 Ω;supply-voltage=12 V | coil-power | 1.6 W | 0.05 W
            Relay data sheet, 45 A class: 90 Ω at 12 V, coil power   | coil-day | coil-resistance=90 Ω;supply-voltage=12 V | coil-power | 1.6 W | 0.05 W
            Thermal pages p. 8.52, example (a): heat 12 W            | junction-temperature | current=10 A;voltage-drop=1.2 V;junction-to-case=1.3 K/W;case-to-sink=0.1 K/W;sink-to-air=1.0 K/W;junction-limit=100 °C | heat | 12 W | 0.5 W
            Thermal pages p. 8.52, example (a): highest air 71.2 °C  | junction-temperature | current=10 A;voltage-drop=1.2 V;junction-to-case=1.3 K/W;case-to-sink=0.1 K/W;sink-to-air=1.0 K/W;junction-limit=100 °C | highest-ambient | 71.2 °C | 0.05 °C
            Thermal articles: a thyristor output makes 1.0 to 1.5 W for each ampere, lower end at 1 A | switch-compare | current=1 A;coil-resistance=90 Ω;solid-state-kind=thyristor | solid-heat | 1.0 W | 0.05 W
            """)
    void agreesWithPrint(String print, String calculator, String entries, String asked, String printed, String tolerance) {
        Trial trial = Trial.of(calculator, entries.split(";"));
        assertTrue(trial.away(asked, printed) <= Trial.number(tolerance), () -> print + " is off by " + trial.away(asked, printed));
    }
}
