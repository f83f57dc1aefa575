package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loomwright.catalogue.Catalogue;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.Part;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.file.StartingCircuits;
import loomwright.circuit.sheet.CutLine;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.PartsAndCuts;
import loomwright.generator.content.Block;
import loomwright.generator.content.Content;
import loomwright.generator.content.ContentReader;
import loomwright.generator.content.Lesson;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.YamlReader;
import loomwright.generator.example.Example;
import loomwright.generator.example.ExampleBook;
import loomwright.generator.problem.Problems;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The circuits of the lessons, the figures typed in lessons 15 to 17, and the scenario say the same, part for part.
 *
 * <p>A line reads {@code part field = where, what}: where is an example of a lesson, a figure of a lesson ({@code #}), or the scenario.
 */
class CircuitsAgreeWithLessonsTest {
    private static final String TRAILER = """
            battery capacity = scenario battery-capacity
            battery battery-voltage = scenario battery-voltage
            battery battery-limit = scenario bms-limit
            battery short-circuit-current = scenario battery-short-circuit
            battery charge-current-most = scenario battery-charge-current
            battery charge-voltage-most = scenario battery-charge-voltage
            solar panel-power = scenario panel-power
            solar panel-power = trailer-sun panel-power
            solar peak-sun-hours = trailer-sun peak-sun-hours
            solar charge-current = scenario controller-current
            solar charge-current = controller-device design-current
            solar-fuse rating = scenario solar-fuse
            solar-fuse rating = #bench-schematic solar-fuse
            solar-fuse rating = #bench-wiring solar-fuse
            solar-fuse rating = #trailer-as-built solar-fuse
            solar-fuse breaking-capacity = scenario class-t-breaking
            solar-run size = scenario solar-size
            solar-run size = controller-device size
            solar-run route-length = scenario solar-route
            isolator continuous-current = scenario isolator-rating
            battery capacity = trailer-sun capacity
            battery highest-voltage = short-circuit-at-the-holder highest-voltage
            battery highest-voltage = can-the-main-fuse-break-it system-voltage
            main-lead route-length = scenario breaker-distance
            main-lead route-length = breaker-distance-on-the-drawing distance
            main-lead route-length = #seven-checks distance
            main-lead size = scenario link-size
            main-fuse rating = scenario main-fuse
            main-fuse rating = #bench-schematic main-fuse
            main-fuse rating = #bench-wiring main-fuse
            main-fuse rating = #trailer-as-built main-fuse
            main-fuse breaking-capacity = scenario main-fuse-breaking
            main-fuse breaking-capacity = can-the-main-fuse-break-it rated-capacity
            main-fuse rated-voltage = can-the-main-fuse-break-it rated-voltage
            main-fuse cold-resistance = scenario main-fuse-resistance
            feed-fuse rating = scenario feed-fuse
            feed-fuse breaking-capacity = scenario class-t-breaking
            feed size = scenario feed-size
            fuse-panel panel-limit = scenario fuse-panel-rating
            fuse-panel panel-limit = panel-or-own-feed panel-limit
            strip power = scenario led-strip-power
            strip power = whole-day-at-the-trailer load-1-power
            strip hours = whole-day-at-the-trailer load-1-hours
            fan power = scenario fan-power
            fan power = whole-day-at-the-trailer load-2-power
            fan hours = whole-day-at-the-trailer load-2-hours
            fan hours = scenario workshop-fan-hours
            pump current = scenario pump-running
            pump current = panel-or-own-feed way-3-current
            pump current = whole-day-at-the-trailer load-3-current
            pump hours = whole-day-at-the-trailer load-3-hours
            pump start-current = scenario pump-starting
            camera power = scenario camera-power
            camera power = whole-day-at-the-trailer load-7-power
            camera hours = whole-day-at-the-trailer load-7-hours
            meter current = scenario standing-current
            meter current = whole-day-at-the-trailer standing-current
            breaker rating = scenario breaker-rating
            breaker rating = #bench-schematic breaker-rating
            breaker breaking-capacity = scenario breaker-breaking
            breaker cold-resistance = scenario breaker-resistance
            breaker cold-resistance = #losses-on-the-way breaker
            relay-link size = scenario link-size
            holder-link size = links-in-the-battery-box size
            outlet-switch on-resistance = #losses-on-the-way relay
            outlet-switch coil-resistance = bench-trigger-wire coil-resistance
            outlet-switch hours-on = scenario relay-hours
            outlet-switch hours-on = whole-day-at-the-trailer load-6-hours
            trigger-fuse rating = scenario trigger-fuse
            trigger-fuse rating = bench-trigger-wire fuse-rating
            trigger-fuse rating = #bench-schematic trigger-fuse
            outlet-switch trigger-size = scenario trigger-size
            outlet-switch trigger-size = bench-trigger-wire size
            outlet-switch trigger-size = trigger-resistance-for-the-list size
            outlet-switch trigger-route-length = scenario trigger-route
            outlet-switch trigger-route-length = bench-trigger-wire route-length
            accessory-fuse rating = scenario accessory-fuse
            accessory-fuse rating = final-bench-size fuse-rating
            accessory-fuse rating = #bench-schematic accessory-fuse
            accessory-fuse rating = #seven-checks fuse
            accessory-fuse breaking-capacity = scenario class-t-breaking
            accessory-fuse breaking-capacity = #seven-checks breaking-capacity
            accessory-outlet outlet-rating = scenario accessory-rating
            accessory-fuse cold-resistance = #losses-on-the-way fuse-link
            bench-run size = scenario bench-size
            bench-run size = drop-with-the-cut-length size
            bench-run size = reading-at-the-accessory-outlet size
            bench-run size = accessory-fuse-link size
            bench-run size = #seven-checks size
            bench-run size = #trailer-as-built bench-size
            bench-run route-length = scenario bench-route
            accessory-outlet power = whole-day-at-the-trailer load-4-power
            accessory-outlet hours = whole-day-at-the-trailer load-4-hours
            usb-fuse rating = scenario usb-fuse
            usb-fuse rating = #bench-wiring usb-fuse
            usb-fuse breaking-capacity = scenario class-t-breaking
            usb-run size = scenario bench-size
            usb-run size = outlet-pair-reading size
            usb-run route-length = scenario bench-route
            outlet-pair outlet-rating = scenario pair-rating
            outlet-pair hours = whole-day-at-the-trailer load-5-hours
            """;

    private static final String PUNT = """
            bilge-pump current = pump-list-says-sixteen current
            bilge-pump current = punt-bilge-pump current
            """;

    private final Problems problems = new Problems();
    private final Content content = ContentReader.read(Path.of("../content"), problems);
    private final ExampleBook book = book();
    private final Circuit trailer = StartingCircuits.reedmereTrailer();
    private final Examination examined = Examination.of(trailer);

    private ExampleBook book() {
        Map<String, Calculator> calculators = new LinkedHashMap<>();
        Catalogue.all().forEach(each -> calculators.put(each.description().key(), each));
        return ExampleBook.of(content, calculators, problems);
    }

    @TestFactory
    Stream<DynamicTest> sayTheSame() {
        return Stream.concat(
                TRAILER.lines().map(line -> DynamicTest.dynamicTest(line, () -> compare(trailer, line))),
                PUNT.lines().map(line -> DynamicTest.dynamicTest(line, () -> compare(StartingCircuits.punt(), line))));
    }

    private void compare(Circuit circuit, String line) {
        String[] words = line.split(" ");
        Part part = circuit.part(words[0]);
        assertNotNull(part, "no part " + words[0]);
        assertEquals(base(told(words[3], words[4])), base(part.text(words[1])), 1e-9);
    }

    /** A quantity as a number. */
    private static double base(String text) {
        assertNotNull(QuantityText.read(text, null).quantity(), "no quantity: " + text);
        return QuantityText.read(text, null).quantity().base();
    }

    private String told(String where, String what) {
        if (where.equals("scenario")) {
            assertNotNull(content.scenario().get(what), "the scenario has no " + what);
            return content.scenario().get(what).value();
        }
        if (where.startsWith("#")) {
            return inBlock("figure", where.substring(1), "values", what);
        }
        Example example = book.find(where);
        return example != null ? example.given().get(what) : inBlock("question", where, "given", what);
    }

    private String inBlock(String kind, String key, String map, String what) {
        for (Lesson lesson : content.lessons()) {
            for (Block block : lesson.article().blocks()) {
                if (block.kind().equals(kind) && block.body().text().contains("key: " + key + "\n")) {
                    Scalar value = YamlReader.read(kind, block.body(), problems).textsByKey(map).get(what);
                    assertNotNull(value, "the " + kind + " " + key + " has no " + what);
                    return value.text();
                }
            }
        }
        throw new AssertionError("no " + kind + " " + key);
    }

    @Test
    void callThePartsAlike() {
        Designations designations = Designations.of(trailer);
        Map<String, String> named = Map.of(
                "battery", "G1", "main-fuse", "F3", "feed-fuse", "F4", "breaker", "Q1", "outlet-switch", "K1", "accessory-fuse", "F1", "usb-fuse", "F2",
                "accessory-outlet", "X1", "outlet-pair", "X2", "fuse-panel", "P1");
        Map<String, String> added = Map.of("isolator", "Q2", "solar-fuse", "F7", "solar", "G2", "solar-run", "11/12", "trigger-fuse", "F6", "on-switch", "S1");
        added.forEach((part, designation) -> assertEquals(designation, designations.of(part)));
        named.forEach((part, designation) -> assertEquals(designation, designations.of(part)));
        // Lesson 15, wire list: 1 and 10, 4 and 6, 5 and 7
        assertEquals("1/10 4/6 5/7", designations.of("main-lead") + " " + designations.of("bench-run") + " " + designations.of("usb-run"));
    }

    @Test
    void cutToTheSameLengths() {
        for (CutLine line : PartsAndCuts.of(examined.circuit()).cuts()) {
            String cut = switch (line.partId()) {
                case "bench-run", "usb-run" -> "bench-cut";
                case "outlet-switch" -> "trigger-cut";
                case "main-lead" -> "breaker-distance";
                case "solar-run" -> "solar-cut";
                default -> "";
            };
            if (!cut.isEmpty()) {
                assertEquals(base(told("scenario", cut)), line.each().base(), 1e-9, line.title());
            }
        }
        assertEquals(base(told("drop-with-the-cut-length", "route-length")), base(told("scenario", "bench-cut")), 1e-9);
        // Half a metre of links in all: 0.15 m + 0.15 m + 0.2 m
        double links = length("main-lead") + length("relay-link") + length("holder-link");
        assertEquals(base(told("short-circuit-at-the-holder", "feed-route-length")), links, 1e-9);
        assertEquals(base(told("links-in-the-battery-box", "route-length")), links, 1e-9);
    }

    private double length(String run) {
        return base(trailer.part(run).text("route-length"));
    }

    /** Links at 20 °C, 1.0 m of 10 mm² at 1.82 mΩ/m; six joints of 0.2 mΩ: 1.82 + 1.2 + 1 + 3 + 4 + 4 = 15.02 mΩ, and 3 mΩ more in F2. */
    @Test
    void addUpTheSameResistanceOfParts() {
        double parts = 0.00182 + 6 * base("0.2 mΩ") + resistance("main-fuse", "cold-resistance") + resistance("breaker", "cold-resistance")
                + resistance("outlet-switch", "on-resistance");
        assertEquals("0.2 mΩ 6", trailer.part("bench-joints").text("joint-resistance") + " " + trailer.part("bench-joints").text("joints"));
        assertEquals(base(told("scenario", "parts-resistance")), parts + resistance("accessory-fuse", "cold-resistance"), 1e-4);
        assertEquals(base(told("scenario", "pair-parts-resistance")), parts + resistance("usb-fuse", "cold-resistance"), 1e-4);
    }

    private double resistance(String part, String field) {
        return base(trailer.part(part).text(field));
    }

    /** What the lesson works out one by one, the whole circuit finds as well. */
    @Test
    void findWhatTheLessonFinds() {
        // 12.8 V ÷ 5000 A = 2.56 mΩ; with 1.0 m of 10 mm² at 1/58 Ω, F3 and Q1: 14.6 V ÷ 8.2841 mΩ = 1762.4 A
        assertEquals(1762.4, finding(Check.BREAKING_CAPACITY, "accessory-fuse").finding().figure().value(), 0.1);
        assertEquals(base(told("can-the-blade-break-it", "prospective-current")), book.find("short-circuit-at-the-holder").results().get("highest-current").base(), 0.5);
        assertEquals(base(told("can-the-main-fuse-break-it", "prospective-current")), book.find("short-circuit-at-the-holder").results().get("battery-current-highest").base(), 0.5);
        // Table 5 at 60 °C: 10 AWG 40 A for 6 mm², 8 AWG 55 A for 10 mm²
        assertEquals(40, finding(Check.AMPACITY, "bench-run").finding().limit().value(), 1e-9);
        assertEquals(55, finding(Check.AMPACITY, "main-lead").finding().limit().value(), 1e-9);
        // The day of the lesson leaves conductors and the coil at 12.8 V out: 510.29 Wh; with them 2 % to 3 % more.
        assertEquals(510.29 * 1.025, examined.day().total().in(Units.WATT_HOUR).value(), 510.29 * 0.01);
        // 60 W at the ports ÷ 0.85 = 70.588 W, which the lesson rounds to 70.6 W
        assertEquals(60 / 0.85, base(told("whole-day-at-the-trailer", "load-5-power")), 0.05);
        assertEquals("60 W 85 %", trailer.part("outlet-pair").text("ports-power") + " " + trailer.part("outlet-pair").text("converter-efficiency"));
        // The blades of the panel stay below what they break: 2 m of 6 mm², out and back, and F4 lie before them
        assertTrue(finding(Check.BREAKING_CAPACITY, "way-1").finding().figure().value() < 1000);
        assertEquals(336, examined.day().yield().in(Units.WATT_HOUR).value(), 1e-9);
        assertEquals(0, examined.count(Verdict.STOP));
    }

    /** By hand in lesson 17: a blade as F1 meets 841 A of a battery of 1100 A, 1762 A of 5000 A and 1993 A of 8000 A, and breaks 1000 A. */
    @ParameterizedTest
    @CsvSource({"1100 A, 841.0, 0", "5000 A, 1762.4, 2", "8000 A, 1993.4, 2"})
    void stopAtABladeWhereTheBatteryGivesMore(String battery, double amperes, int stops) {
        Circuit other = CircuitEdits.changed(trailer, "battery", "short-circuit-current", battery).circuit();
        Examination classT = Examination.of(other);
        assertEquals(0, classT.count(Verdict.STOP));
        assertEquals(3, classT.count(Verdict.CAUTION));
        for (String fuse : List.of("accessory-fuse", "usb-fuse")) {
            for (String field : List.of("breaking-capacity", "rated-voltage", "clearing-i2t")) {
                other = CircuitEdits.changed(other, fuse, field, "").circuit();
            }
            other = CircuitEdits.changed(other, fuse, "device", "blade").circuit();
        }
        Examination blade = Examination.of(other);
        assertEquals(stops, blade.count(Verdict.STOP));
        assertEquals(amperes, breaking(blade, "accessory-fuse").finding().figure().value(), 0.1);
    }

    private static CircuitFinding breaking(Examination examination, String part) {
        return examination.findingsOn(part).stream().filter(each -> each.check() == Check.BREAKING_CAPACITY).findFirst().orElseThrow();
    }

    private CircuitFinding finding(Check check, String part) {
        List<CircuitFinding> found = examined.findingsOn(part).stream().filter(each -> each.check() == check).toList();
        assertTrue(!found.isEmpty(), "no finding " + check + " on " + part);
        return found.get(0);
    }
}
