package loomwright.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The figures in the drawings of ampacity and protection, read from print or worked by hand beside each. */
class ProtectionFiguresTest {
    @Test
    void oneGaugeInThreeBooks() {
        // FAA Table 11-9: 13 A at 105 °C; 33 CFR Table 5: 25 A at 60 °C, 45 A at 105 °C; free-air table: 30 A at 60 °C
        shows("one-gauge-by-rule-set", Map.of("size", "12 AWG"), "13 A", "25 A", "30 A", "45 A");
    }

    @Test
    void engineSpaceByInsulation() {
        // 25 A × 0.58 = 14.5 A; 45 A × 0.85 = 38.25 A
        shows("insulation-and-engine-space", Map.of("size", "12 AWG"), "25 A", "14.5 A", "45 A", "38.25 A");
    }

    @Test
    void windowOfALargeBlade() {
        // gates in print: 135 % 60 to 1800 s, 200 % 2 to 50 s, 350 % 0.2 to 7 s, 600 % 0.04 to 1 s; 30 A × 1.35 = 40.5 A and so on
        Map<String, String> values = Map.of("fuse-type", "large-blade", "rating", "30 A");
        shows(
                "time-current-window", values, "40.5 A", "60 A", "105 A", "180 A", "60 s", "1800 s", "2 s", "50 s", "0.2 s", "7 s", "0.04 s",
                "1 s");
        assertEquals(
                List.of("40.5 A", "135 %", "60 s", "1800 s"),
                Drawn.ALL.draw("time-current-window", values).figures().rows().get(0).stream().map(ProtectionFiguresTest::plain).toList());
    }

    @Test
    void windowNeedsGatesInPrint() {
        // the gates of a 15 A blade are from memory only
        Map<String, String> values = Map.of("fuse-type", "blade", "rating", "15 A");
        String message =
                assertThrows(IllegalArgumentException.class, () -> Drawn.ALL.draw("time-current-window", values)).getMessage();
        assertTrue(message.contains("no opening times in print"), message);
    }

    @Test
    void distancesFromTheSource() {
        // 7 in = 0.178 m; 18 in = 0.457 m; 900 mm; 40 in = 1.016 m; 72 in = 1.83 m
        shows("fuse-distance-by-rule-set", Map.of(), "0.18 m", "0.46 m", "0.90 m", "1.02 m", "1.83 m");
    }

    @Test
    void eachFuseNamesItsPiece() {
        Map<String, String> values =
                Map.of("main-rating", "20 A", "feed-size", "6 mm²", "branch-rating", "15 A", "branch-size", "2.5 mm²");
        shows("what-each-fuse-guards", values, "breaker Q1: 20 A", "6 mm²", "fuse-link F1: 15 A", "the bench, 2.5 mm²");
    }

    private static void shows(String drawing, Map<String, String> values, String... wanted) {
        List<String> labels = new DrawnSvg(Drawn.ALL.draw(drawing, values).svg("k"))
                .texts().stream().map(text -> plain(text)).toList();
        for (String label : wanted) {
            assertTrue(labels.contains(label), label + " is not among " + labels);
        }
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
