package loomwright.circuit.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.WorkedCircuits;
import loomwright.circuit.check.Examination;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import org.junit.jupiter.api.Test;

class SheetsTest {
    private static final Circuit TRAILER = WorkedCircuits.trailer();

    @Test
    void schedulesOneCircuitForEachDevice() {
        List<ScheduleRow> rows = Schedule.of(Examination.of(TRAILER));
        assertEquals(9, rows.size());
        ScheduleRow bench = rows.stream().filter(row -> row.partId().equals("breaker")).findFirst().orElseThrow();
        assertEquals("breaker of 30\u00a0A", bench.device());
        assertEquals(List.of("W7, 6\u00a0mm², 4.2\u00a0m"), bench.conductors());
        assertEquals(List.of(), bench.loads());
        assertEquals(17.466452, bench.designCurrent().value(), 5e-6);
        // 10 AWG of Table 5 with 105 °C insulation stands in for 6 mm²: 60 A × 0.91 of the NEC for 40 °C
        assertEquals(54.6, bench.ampacity().value(), 1e-9);
        // Charging, 14.6 V ÷ (2 mΩ + 0.8 m/(58 × 16) Ω) = 14.6/(2 + 0.862069) mΩ
        assertEquals(5101.2, bench.highestFault().value(), 0.1);
        // empty: 10.5 V ÷ (10 + 1.00093 + 3 + 28.44877 + 2) mΩ = 10.5/0.0444497
        assertEquals(236.22, bench.lowestFault().value(), 0.01);
        ScheduleRow pair = rows.stream().filter(row -> row.partId().equals("usb-fuse")).findFirst().orElseThrow();
        assertEquals(List.of("E5 Outlet pair, USB"), pair.loads());
        // 10.5 − 9.855620 V
        assertEquals(0.644380, pair.worstDrop().value(), 1e-5);
    }

    @Test
    void cutsWithAllowance() {
        PartsAndCuts lists = PartsAndCuts.of(TRAILER);
        CutLine bench = lists.cuts().stream().filter(cut -> cut.partId().equals("bench-run")).findFirst().orElseThrow();
        // 4.2 m + 2 × 0.25 m
        assertEquals(4.7, bench.each().value(), 1e-9);
        // 6 mm²: two of 4.7 m and two of 2 + 0.5 = 2.5 m: 14.4 m; with a tenth and 0.15 m: two of 4.92 m and two of 2.5 m, bought as 14.9 m
        PartsLine cable = lists.parts().stream().filter(line -> line.what().startsWith("6\u00a0mm²")).findFirst().orElseThrow();
        assertEquals("14.4 m, W2, W7", cable.count() + " " + cable.unit() + ", " + cable.designations());
        PartsAndCuts tenth = PartsAndCuts.of(TRAILER, Quantity.of(10, Units.PERCENT), Quantity.of(0.15, Units.METRE));
        assertEquals("14.9", tenth.parts().stream().filter(line -> line.what().startsWith("6\u00a0mm²")).findFirst().orElseThrow().count());
        PartsLine breakers = lists.parts().stream().filter(line -> line.what().startsWith("blade fuse-link of 10")).findFirst().orElseThrow();
        assertEquals("1", breakers.count());
        assertTrue(lists.cuts().stream().anyMatch(cut -> cut.designation().equals("K2 trigger")));
    }

    @Test
    void labelsBothEndsOfBothConductors() {
        List<Label> labels = Label.of(TRAILER);
        List<Label> bench = labels.stream().filter(label -> label.partId().equals("bench-run")).toList();
        assertEquals(4, bench.size());
        assertEquals("W7 +, 6\u00a0mm² to J1", bench.get(0).text());
        assertEquals("+ conductor, end at K2 Solid-state switch of the outlets", bench.get(0).where());
        assertTrue(labels.stream().anyMatch(label -> label.text().equals("F8 In-line fuse-link of the outlet pair, 10\u00a0A")), labels.toString());
    }

    @Test
    void expectsReadingsDeadAndLive() {
        List<TestStep> steps = TestSheet.of(TRAILER, Quantity.of(12.8, Units.VOLT));
        assertEquals(TestStep.Phase.DEAD, steps.get(0).phase());
        TestStep dead = step(steps, TestStep.Phase.DEAD, "bench-run");
        // 8.4 m ÷ (58 × 6) Ω = 24.138 mΩ at least, 28.449 mΩ at most
        assertEquals(24.138, dead.low().value(), 1e-3);
        assertEquals(28.449, dead.high().value(), 1e-3);
        assertEquals(0, step(steps, TestStep.Phase.TRIGGER_OFF, "outlet-switch").high().value());
        // with no load on, 20 mA and less lose no millivolt worth reading
        assertEquals(12.8, step(steps, TestStep.Phase.TRIGGER_ON, "outlet-pair").low().value(), 1e-3);
        TestStep loaded = step(steps, TestStep.Phase.LOADED, "accessory-outlet");
        assertTrue(loaded.low().value() < loaded.high().value() && loaded.high().value() < 12.8);
        assertEquals(12.8, step(steps, TestStep.Phase.LOADED, "battery").low().value(), 1e-12);
        for (int i = 1; i < steps.size(); i++) {
            assertTrue(steps.get(i).phase().ordinal() >= steps.get(i - 1).phase().ordinal());
        }
    }

    @Test
    void saysThatACircuitThatCannotWorkIsNotTestedUnderLoad() {
        Circuit thin = CircuitEdits.changed(TRAILER, "bench-run", "size", "0.35 mm²").circuit();
        thin = CircuitEdits.changed(thin, "bench-run", "route-length", "50 m").circuit();
        List<TestStep> steps = TestSheet.of(thin, Quantity.of(12.8, Units.VOLT));
        TestStep step = step(steps, TestStep.Phase.LOADED, "battery");
        assertNull(step.low());
        assertTrue(step.expected().contains("no operating point"));
    }

    private static TestStep step(List<TestStep> steps, TestStep.Phase phase, String partId) {
        return steps.stream().filter(step -> step.phase() == phase && step.partId().equals(partId)).findFirst().orElseThrow();
    }
}
