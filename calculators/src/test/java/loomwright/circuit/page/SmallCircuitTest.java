package loomwright.circuit.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.Schedule;
import loomwright.circuit.sheet.ScheduleRow;
import loomwright.markup.Links;
import loomwright.markup.PartFigures;
import loomwright.worked.Typing;
import org.junit.jupiter.api.Test;

/** A circuit that can be worked in the head, as the results, the workings and the figures for the lessons show it. */
class SmallCircuitTest {
    private static List<String> lines(Circuit circuit, Check check, String part, String words) {
        Examination examination = Examination.of(circuit);
        CircuitFinding found = examination.findings(check).stream()
                .filter(each -> each.partId().equals(part) && each.finding().words().contains(words)).findFirst().orElseThrow();
        return Unfolded.lines(examination, Designations.of(circuit), found).stream().map(SmallCircuitTest::plain).toList();
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    private static List<String> rows(Circuit circuit, String label) {
        return Written.read(ResultsSheet.of(new Links(""), Examination.of(circuit))).select("table[aria-label=" + label + "] > tbody > tr").stream()
                .map(row -> plain(String.join(" | ", row.children().eachText()))).toList();
    }

    /** 10.5 V less 6 A · 12.192 mΩ = 73.2 mV, then less 2 A · 123.282 mΩ = 246.6 mV; 14.6 V likewise. */
    @Test
    void everyPointHasItsLeastVoltageAndItsLargestCurrent() {
        List<String> points = rows(SmallCircuit.of(), "'Voltage and current at each point'");
        assertEquals(7, points.size());
        assertTrue(points.get(0).startsWith("G1 battery | 10.5 V | 6 A | 14.6 V | 6 A | "), points.get(0));
        assertTrue(points.get(3).startsWith("P1 panel | 10.43 V | 6 A | 14.53 V | 6 A | "), points.get(3));
        assertTrue(points.get(5).startsWith("E1 lamp | 10.18 V | 2 A | 14.28 V | 2 A | "), points.get(5));
        assertTrue(points.get(6).startsWith("E2 pump | 10.43 V | 4 A | 14.53 V | 4 A | "), points.get(6));
        // 3 mΩ · 100 ÷ 60 of the battery: 14.6 V ÷ 5 mΩ.
        assertTrue(points.get(1).endsWith(" | 2920 A"), points.get(1));
        assertEquals(List.of("E1 lamp | 2 A | 0.32 V | 10.18 V | all loads", "E2 pump | 4 A | 0.0732 V | 10.43 V | all loads"), rows(SmallCircuit.of(), "'Drop to each load'"));
    }

    /** Of two loads that take turns only one is on: 2 A and 4 A, never 6. */
    @Test
    void loadsThatTakeTurnsShowTheWorstOfEach() {
        Circuit turns = CircuitEdits.changed(CircuitEdits.changed(SmallCircuit.of(), "lamp", "use", "alone").circuit(), "pump", "use", "alone").circuit();
        List<String> points = rows(turns, "'Voltage and current at each point'");
        // 10.5 V − 4 A · 12.192 mΩ = 10.451 V.
        assertTrue(points.get(3).startsWith("P1 panel | 10.45 V | 4 A | 14.55 V | 4 A | "), points.get(3));
    }

    /** 2 A · 12.8 V · 3 h and 4 A · 12.8 V · 1 h; half of 60 Ah. 60 W · 2 h · 70 % = 84 Wh. */
    @Test
    void theDayIsAddedUp() {
        assertEquals(
                List.of(
                        "E1 lamp | 76.8 Wh", "E2 pump | 51.2 Wh", "Standing draw: triggers, coils and what idles | 0 Wh", "Standing draw, as charge | 0 Ah", "The whole day | 128 Wh",
                        "The whole day, as charge | 10 Ah", "What a plan may take from the battery | 30 Ah", "Run time with nothing charging it | 3 d"),
                rows(SmallCircuit.of(), "'A day'"));
        Circuit sun = CircuitEdits.changed(CircuitEdits.changed(SmallCircuit.of(), "battery", "panel-power", "60 W").circuit(), "battery", "peak-sun-hours", "2 h").circuit();
        assertTrue(rows(sun, "'A day'").contains("What the solar panel gives in a day | 84 Wh"), rows(sun, "'A day'").toString());
    }

    @Test
    void whatIsLostOnTheWayIsTakenPieceByPiece() {
        assertEquals(
                List.of("W1 lead: 6 A × 12.2 mΩ = 0.0732 V", "W2 run: 2 A × 123 mΩ = 0.247 V", "Together 0.32 V", "0.32 V ≤ 0.36 V"),
                lines(SmallCircuit.of(), Check.VOLTAGE_DROP, "lamp", ""));
        Circuit sure = CircuitEdits.changed(SmallCircuit.of(), "lamp", "lowest-working-voltage", "10 V").circuit();
        assertEquals(
                List.of("W1 lead: 6 A × 12.2 mΩ = 0.0732 V", "W2 run: 2 A × 123 mΩ = 0.247 V", "Together 0.32 V", "10.5 V − 0.32 V = 10.2 V", "10.2 V > 10 V"),
                lines(sure, Check.VOLTAGE_DROP, "lamp", "What reaches"));
    }

    @Test
    void whatFlowsThroughADeviceIsThatOfTheBranches() {
        assertEquals(
                List.of("W2 run: 2 A", "E2 pump: 4 A", "Together 6 A with all loads on", "6 A ≤ 30 A"), lines(SmallCircuit.of(), Check.CONTINUOUS_CURRENT, "panel", ""));
        assertEquals(
                List.of("W2 run: 2 A", "E2 pump: 4 A", "Present loads of P1 panel: 1 A", "Together 7 A with all loads on", "7 A ≤ 30 A"),
                lines(SmallCircuit.with("1 A"), Check.CONTINUOUS_CURRENT, "panel", ""));
        assertEquals(
                List.of("W2 run: 2 A", "E2 pump: 4 A", "Together 6 A with all loads on", "6 A ≤ 15 A"), lines(SmallCircuit.of(), Check.DEVICE_LOADING, "fuse", "its rating"));
    }

    /** 24 W behind a device of its own at the panel: the panel has 10.5 V − (6 A + I) · 12.192 mΩ, so I = 2.307 A at 10.4 V. */
    @Test
    void aLoadThatHoldsItsPowerIsDividedByWhatReachesIt() {
        Circuit more = SmallCircuit.of(
                SmallCircuit.part("way", PartKind.PROTECTION, "panel", "device=blade", "rating=5 A"),
                SmallCircuit.part("radio", PartKind.LOAD, "way", "load-kind=constant-power", "power=24 W"));
        assertEquals(List.of("E3 radio: 24 W ÷ 10.4 V = 2.31 A", "2.31 A ≤ 5 A"), lines(more, Check.DEVICE_LOADING, "way", "its rating"));
    }

    @Test
    void theDayOfAFindingIsAddedUpAndDivided() {
        assertEquals(
                List.of("E1 lamp: 76.8 Wh", "E2 pump: 51.2 Wh", "Together 128 Wh, at 12.8 V 10 Ah", "10 Ah ≤ 30 Ah"), lines(SmallCircuit.of(), Check.DAY, "battery", "What a day takes of"));
        assertEquals(
                List.of("E1 lamp: 76.8 Wh", "E2 pump: 51.2 Wh", "Together 128 Wh, at 12.8 V 10 Ah", "30 Ah ÷ 10 Ah a day = 3 d", "3 d > 2 d"),
                lines(SmallCircuit.of(), Check.DAY, "battery", "lasts with nothing charging it"));
        // 0.1 A all day and night: 2.4 Ah, 30.7 Wh; 30 ÷ 2.4 = 12.5 days.
        Circuit idles = CircuitEdits.changed(SmallCircuit.of(), "lamp", "standing-current", "0.1 A").circuit();
        assertEquals(List.of("30 Ah ÷ 2.4 Ah a day = 12.5 d", "12.5 d > 7 d"), lines(idles, Check.STANDING_DRAW, "battery", ""));
        assertTrue(lines(idles, Check.DAY, "battery", "What a day takes of").contains("Triggers, coils and standing currents: 30.7 Wh"));
    }

    @Test
    void whatChargesIsAddedUpFromItsSources() {
        Part[] sources = {
            SmallCircuit.part("sun-fuse", PartKind.PROTECTION, "battery", "device=blade", "rating=20 A"),
            SmallCircuit.part("sun", PartKind.SOURCE, "sun-fuse", "charge-current=10 A", "panel-power=120 W"),
            SmallCircuit.part("mains", PartKind.SOURCE, "sun-fuse", "source-kind=mains-charger", "charge-current=5 A")};
        Circuit charged = CircuitEdits.changed(SmallCircuit.of(sources), "battery", "charge-current-most", "12 A").circuit();
        assertEquals(List.of("T1 sun: 10 A", "T2 mains: 5 A", "15 A > 12 A"), sorted(lines(charged, Check.CHARGING, "battery", "What all sources give")));
        assertTrue(lines(charged, Check.DEVICE_LOADING, "sun-fuse", "").stream().anyMatch(each -> each.endsWith("sun: 10 A")), "what a source gives flows through its device");
        assertTrue(lines(charged, Check.DEVICE_LOADING, "fuse", "").stream().noneMatch(each -> each.endsWith("sun: 10 A")));
    }

    /** The designation of a source is not what this is about. */
    private static List<String> sorted(List<String> lines) {
        return lines.stream().map(each -> each.endsWith("sun: 10 A") ? "T1 sun: 10 A" : each.endsWith("mains: 5 A") ? "T2 mains: 5 A" : each).toList();
    }

    private static Map<String, String> figures(Circuit circuit, String name) {
        return PartFigures.read(PublishedFigures.of(Examination.of(circuit))).stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow().entries();
    }

    private static void assertHas(Map<String, String> figures, String... entries) {
        Typing.of(entries).forEach((key, text) -> assertEquals(text, plain(String.valueOf(figures.get(key))), key));
    }

    @Test
    void theLessonsGetTheFiguresOfEachPartUnderTheKeysOfTheirCalculators() {
        Circuit circuit = SmallCircuit.of();
        Map<String, String> run = figures(circuit, "run");
        assertHas(run, "size=1.5 mm²", "copper=1.5 mm²", "route-length=4.5 m", "length-counts=one-way", "current=2 A", "design-current=2 A", "load-current=2 A", "fuse-rating=15 A");
        assertFalse(run.containsKey("prospective-current"));
        // A device with the first run behind it, the lead, and what may flow into a short circuit where it stands: 14.6 V ÷ 5 mΩ.
        assertHas(figures(circuit, "fuse"), "rating=15 A", "fuse-rating=15 A", "device=blade", "size=4 mm²", "route-length=1.2 m", "current=6 A", "prospective-current=2920 A");
        Map<String, String> lamp = figures(circuit, "lamp");
        assertHas(lamp, "current=2 A", "load-1-current=2 A", "load-1-hours=3 h", "load-1-duty=100 %", "hours=3 h");
        assertFalse(lamp.containsKey("fuse-rating") || lamp.containsKey("length-counts"));
        Map<String, String> battery = figures(circuit, "battery");
        assertHas(battery, "capacity=60 Ah", "chemistry=lead-acid", "battery-voltage=12.8 V");
        assertFalse(battery.containsKey("current"), "what flows from the battery is no current of one run");
        assertHas(figures(circuit, "panel"), "panel-limit=30 A");
        assertFalse(figures(circuit, "panel").containsKey("current"));
    }

    @Test
    void aCircuitWithoutFiguresOffersNone() {
        Circuit bare = new Circuit("", List.of(Part.read("battery", PartKind.SUPPLY, "", "", "", "", Map.of()).partOrRefuse()));
        assertEquals("", PublishedFigures.of(Examination.of(bare)));
        assertFalse(PublishedFigures.of(Examination.of(CircuitEdits.changed(bare, "battery", "capacity", "55 Ah").circuit())).isEmpty());
        Circuit idle = SmallCircuit.of(SmallCircuit.part("spare", PartKind.CONDUCTOR, "panel", "size=1.5 mm²", "route-length=2 m"));
        assertFalse(figures(idle, "spare").containsKey("current"), "nothing flows yet");
    }

    /**
     * Behind the fuse are lead, run and both loads: the run carries least, 25 A · 0.91 by Table 5, and the lamp loses most, 6 A · 12.192 mΩ + 2 A · 123.282 mΩ = 0.3197 V. A heater behind
     * 6 m of 1.5 mm² more loses 2 A · 164.4 mΩ.
     */
    @Test
    void theScheduleTakesTheWeakestBehindADevice() {
        ScheduleRow row = Schedule.of(Examination.of(SmallCircuit.of())).get(0);
        assertEquals(List.of("E1 lamp", "E2 pump"), row.loads());
        assertEquals(2, row.conductors().size());
        assertEquals(22.75, row.ampacity().base(), 1e-9);
        assertEquals(0.31972, row.worstDrop().base(), 1e-4);
        assertEquals(6, row.designCurrent().base(), 1e-9);
        Circuit more = SmallCircuit.of(
                SmallCircuit.part("long", PartKind.CONDUCTOR, "panel", "size=1.5 mm²", "route-length=6 m", "insulation-temperature=t105"),
                SmallCircuit.part("heater", PartKind.LOAD, "long", "load-kind=constant-current", "current=2 A"));
        // 8 A · 12.192 mΩ + 2 A · 12.7 · 1.078585 · 12 m.
        assertEquals(8 * 0.012192 + 2 * 0.164376, Schedule.of(Examination.of(more)).get(0).worstDrop().base(), 1e-4);
    }
}
