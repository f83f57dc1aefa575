package loomwright.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.picture.Picture;
import org.junit.jupiter.api.Test;

/** The figures in the drawings of the trailer's new circuit and of its tests, worked by hand beside each. */
class TrailerFiguresTest {
    private static final Map<String, String> CHECKS = Map.ofEntries(
            Map.entry("accessory-current", "10.08 A"), Map.entry("pair-current", "6.72 A"), Map.entry("panel-now", "6.3 A"),
            Map.entry("panel-limit", "20 A"), Map.entry("size", "6 mm²"), Map.entry("cut", "4.7 m"), Map.entry("warmth", "30 °C"), Map.entry("fuse", "15 A"),
            Map.entry("distance", "0.15 m"), Map.entry("short-circuit", "958 A"), Map.entry("breaking-capacity", "20 kA"),
            Map.entry("battery", "13.10 V"),
            Map.entry("test-current", "8 A"), Map.entry("parts", "15 mΩ"));

    private static List<List<String>> rows(Picture picture) {
        return picture.figures().rows().stream().map(row -> row.stream().map(TrailerFiguresTest::plain).toList()).toList();
    }

    private static List<String> labels(Picture picture) {
        return new DrawnSvg(picture.svg("k")).texts().stream().map(text -> plain(text)).toList();
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    /** Spacings of ISO 10133 7.3, the ABYC summary and the FAA manual 11-96 a: 4.2 ÷ 0.45 = 9.3, ÷ 0.457 = 9.2, ÷ 0.61 = 6.9. */
    @Test
    void clipsNeverFurtherApartThanTheRuleSays() {
        assertEquals(
                List.of(
                        List.of("ISO 10133", "0.45 m", "11", "0.42 m"), List.of("ABYC E-11", "0.457 m", "11", "0.42 m"),
                        List.of("FAA AC 43.13-1B", "0.61 m", "8", "0.6 m")),
                rows(Drawn.ALL.draw("supports-along-a-route", Map.of("route-length", "4.2 m"))));
    }

    /** Nine spaces of 0.45 m are exactly 4.05 m: no tenth space for a hair of rounding. */
    @Test
    void clipsOfARouteThatIsAWholeNumberOfSpaces() {
        assertEquals("10", rows(Drawn.ALL.draw("supports-along-a-route", Map.of("route-length", "4.05 m"))).get(0).get(2));
    }

    @Test
    void aRouteTooLongForThePictureIsRefused() {
        String message = assertThrows(
                        IllegalArgumentException.class, () -> Drawn.ALL.draw("supports-along-a-route", Map.of("route-length", "30 m")))
                .getMessage();
        assertTrue(message.contains("too long to draw every clip"), message);
    }

    @Test
    void millivoltsOfEachPart() {
        // 8 A × 3 mΩ = 24 mV; × 4 mΩ = 32 mV; 8 A × 4.7 m × 3.14 mΩ/m = 118.06 mV; in all 356.1 mV
        Map<String, String> values = Map.of(
                "current", "8 A", "conductor", "iso-6722-1", "size", "6 mm²", "route-length", "4.7 m", "breaker", "3 mΩ", "relay", "4 mΩ",
                "fuse-link", "4 mΩ", "joints", "4 mΩ");
        assertEquals(
                List.of("24 mV", "32 mV", "118 mV", "32 mV", "32 mV", "118 mV", "356 mV"),
                rows(Drawn.ALL.draw("volts-lost-in-each-part", values)).stream().map(row -> row.get(1)).toList());
    }

    @Test
    void soundCircuitBesideTwoReadings() {
        // 13.18 V − 7.6 A × 50.5 mΩ = 12.796 V
        Map<String, String> values = new HashMap<>(Map.of(
                "voltage-light", "13.18 V", "current-light", "0.4 A", "voltage-heavy", "12.42 V", "current-heavy", "8.0 A",
                "known-resistance", "50.5 mΩ"));
        assertTrue(rows(Drawn.ALL.draw("two-readings-slope", values)).contains(List.of("8", "12.8", "12.4")));
        values.put("known-resistance", "150 mΩ");
        String message = assertThrows(IllegalArgumentException.class, () -> Drawn.ALL.draw("two-readings-slope", values)).getMessage();
        assertTrue(message.contains("is more than the two readings show"), message);
    }

    @Test
    void checksHandTheirFiguresOn() {
        // 6.3 + 10.08 + 6.72 = 23.1 A; 10.08 A × 9.4 m × 3.14 mΩ/m = 0.2975 V; 10.08 ÷ 0.8 = 12.6 A; Table 5: 40 A; 7 in = 0.1778 m;
        // 13.10 V − 8 A × (29.516 + 15) mΩ = 12.744 V
        List<String> labels = labels(Drawn.ALL.draw("checks-in-order", CHECKS));
        for (String wanted : List.of(
                "10.08 A and 6.72 A", "23.1 A on 20 A: own feed", "6 mm², 0.298 V lost", "15 A, between 12.6 A and 40 A",
                "0.15 m, 0.178 m allowed", "958 A against 20 kA", "12.74 V at 8 A")) {
            assertTrue(labels.contains(wanted), wanted + " is not among " + labels);
        }
        Map<String, String> lighter = new HashMap<>(CHECKS);
        lighter.put("pair-current", "1 A");
        assertTrue(labels(Drawn.ALL.draw("checks-in-order", lighter)).contains("17.4 A on 20 A: it fits"));
    }
}
