package loomwright.practice;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loomwright.catalogue.Catalogue;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import loomwright.worked.Working;

/** At least one example of every calculator, to practise on. */
final class Examples {
    private static final List<String> LINES = List.of(
            "ohm-and-power|voltage=20 V|power=50 W",
            "ohm-and-power|current=1 A|resistance=8 Ω",
            "device-current|device-voltage=5 V|device-current=3 A|efficiency=85 %|supply-voltage=12 V|lowest-voltage=10.5 V|highest-voltage=14.6 V|load-kind=constant-power",
            "device-current|power=90 W|efficiency=85 %",
            "usb-power-budget|port-1-level=pd|port-1-power=60 W|port-2-level=bc-1.2",
            "usb-power-budget|port-1-level=usb-3|port-2-level=usb-2|efficiency=85 %",
            "day-energy|load-1-power=60 W|load-1-hours=2 h|load-2-current=3 A|load-2-hours=10 h|load-2-duty=40 %|standing-current=30 mA",
            "two-routes|device-power=60 W|charging-hours=2 h|inverter-efficiency=85 %|inverter-standing=6 W|adapter-efficiency=88 %",
            "run-time|capacity=100 Ah|load-current=8 A|usable-depth=80 %",
            "run-time|chemistry=lead-acid|capacity=100 Ah|load-current=8 A|temperature=0 °C",
            "peukert|capacity=100 Ah|exponent=1.2|load-current=10 A",
            "state-of-charge|voltage=12.4 V|rest-time=10 h|capacity=100 Ah",
            "battery-size|energy-per-day=500 Wh|days=2",
            "panel-yield|panel-power=100 W|peak-sun-hours=4 h|efficiency=75 %|energy-per-day=250 Wh",
            "panel-headroom|way-1-current=10 A|way-2-current=5 A|new-current=8 A|panel-limit=60 A|feed-fuse=40 A",
            "conductor-resistance|size=2.5 mm²|length=10 m|temperature=50 °C",
            "conductor-resistance|conductor=solid-copper|size=14 AWG|length=20 ft|temperature=20 °C",
            "gauge-convert|size=14 AWG",
            "voltage-drop|current=10 A|route-length=4.2 m|length-counts=one-way|method=table|conductor=iso-6722-1|size=2.5 mm²|temperature=20 °C|supply-voltage=12 V",
            "voltage-drop|current=20 A|route-length=107 ft|length-counts=out-and-back|method=given-resistance|conductor=copper-by-area|resistance-per-length=0.00044 Ω/ft|supply-voltage=28 V",
            "voltage-drop|current=8 A|route-length=15 ft|method=circular-mil-10.75|conductor=solid-copper|size=12 AWG",
            "size-for-run|current=10 A|route-length=4.2 m|allowance=10 %",
            "size-for-run|current=15 A|route-length=20 ft|method=circular-mil-10.75|conductor=nec-stranded|rule-set=33-cfr-183|fuse-rating=20 A",
            "ampacity|size=14 AWG|insulation-temperature=t105|engine-space=yes|design-current=10 A",
            "fusing-current|size=18 AWG|current=100 A",
            "fuse-choice|design-current=10 A|size=14 AWG|insulation-temperature=t105",
            "fuse-place|distance=150 mm",
            "fuse-place|distance=2 ft|rule-set=abyc-older",
            "time-current|rating=10 A|current=20 A|time-limit=5 s",
            "selectivity|current=100 A|downstream-rating=10 A|upstream-rating=30 A",
            "fault-current|feed-size=16 mm²|feed-route-length=2 m|branch-size=2.5 mm²|branch-route-length=5 m",
            "breaking-capacity|prospective-current=1200 A",
            "short-circuit-heating|current=1000 A|clearing-time=0.1 s|size=2.5 mm²",
            "coil-day|coil-resistance=90 Ω",
            "coil-day|coil-power=1.6 W|supply-voltage=12 V",
            "switch-compare|current=10 A|coil-resistance=90 Ω",
            "junction-temperature|current=10 A|voltage-drop=0.7 V|junction-to-case=1.5 K/W|sink-to-air=5 K/W",
            "coil-suppression|coil-resistance=90 Ω",
            "trigger-loop|coil-resistance=90 Ω|size=0.5 mm²|route-length=8 m",
            "cut-out-layout|panel-width=300 mm|panel-height=200 mm|count=3|first-centre=100 mm|row-height=100 mm|clear-depth=80 mm",
            "joint-heat|reading=4 mV|test-current=5 A|resistance-per-metre=7.6 mΩ/m|design-current=10 A",
            "pull-force|size=14 AWG|pulled=300 N",
            "shrink-size|supplied=9 mm|joint-diameter=7 mm|cable-diameter=5 mm",
            "expected-reading|voltage-at-supply=12.6 V|current=8 A|size=2.5 mm²|route-length=4.2 m|measured=12 V",
            "outlet-load|current=10 A|kind=iso-4165|hours=2 h|live-hours=8 h|fuse-rating=10 A",
            "hidden-resistance|voltage-light=12.6 V|voltage-heavy=12.1 V|current-heavy=10 A|design-current=15 A");

    private Examples() {}

    /** An example: a calculator and what is given. */
    record Example(Calculator calculator, Map<String, String> given) {
        Working working() {
            Working working = Outcome.of(calculator, given).working();
            if (working == null) {
                throw new AssertionError(this + " is refused: " + Outcome.of(calculator, given).faults());
            }
            return working;
        }

        @Override
        public String toString() {
            return calculator.description().key() + " " + given;
        }
    }

    static Stream<Example> all() {
        return LINES.stream().map(Examples::read);
    }

    /** The first example of a calculator. */
    static Example of(String calculatorKey) {
        return all().filter(each -> each.calculator().description().key().equals(calculatorKey)).findFirst().orElseThrow();
    }

    private static Example read(String line) {
        String[] parts = line.split("\\|");
        Map<String, String> given = new HashMap<>();
        for (int i = 1; i < parts.length; i++) {
            int equals = parts[i].indexOf('=');
            given.put(parts[i].substring(0, equals), parts[i].substring(equals + 1));
        }
        return new Example(Catalogue.find(parts[0]), given);
    }
}
