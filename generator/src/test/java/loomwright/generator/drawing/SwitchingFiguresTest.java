package loomwright.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The figures in the drawings of switches and outlets, worked by hand beside each. */
class SwitchingFiguresTest {
    private static final Map<String, String> STAIRCASE = Map.of(
            "current", "10 A", "voltage-drop", "1.2 V", "junction-to-case", "1.3 K/W", "case-to-sink", "0.1 K/W", "sink-to-air", "1.0 K/W",
            "ambient", "40 °C", "junction-limit", "100 °C");

    @Test
    void lossesOfRelayAndSolidState() {
        // relay 12² ÷ 90 = 1.6 W at any current; MOS at 4 A 0.32 + 0.18 = 0.50 W, at 12 A 2.88 + 0.18 = 3.06 W; even at √71 = 8.43 A
        Map<String, String> values = Map.of(
                "coil-resistance", "90 Ω", "on-resistance", "20 mΩ", "trigger-current", "15 mA", "supply-voltage", "12 V",
                "largest-current", "12 A");
        List<List<String>> rows = Drawn.ALL.draw("relay-against-solid-state", values).figures().rows();
        assertTrue(rows.contains(List.of("4", "1.6", "0.5")), rows.toString());
        assertTrue(rows.contains(List.of("12", "1.6", "3.06")), rows.toString());
        assertTrue(labels("relay-against-solid-state", values).contains("even at 8.4 A"));
    }

    @Test
    void climbOfTheHeat() {
        // 12 W: the sink stands 12 × 1.0 = 12 K above 40 °C, the junction 12 × 2.4 = 28.8 K
        List<String> labels = labels("heat-staircase", STAIRCASE);
        assertTrue(labels.containsAll(List.of("40 °C", "52 °C", "68.8 °C", "limit of the junction 100 °C")), labels.toString());
    }

    @Test
    void theStaircaseRefusesAJunctionAboveItsLimit() {
        Map<String, String> hot = new TreeMap<>(STAIRCASE);
        hot.put("junction-limit", "60 °C");
        String message = assertThrows(IllegalArgumentException.class, () -> Drawn.ALL.draw("heat-staircase", hot)).getMessage();
        assertTrue(message.contains("is below the junction"), message);
    }

    @Test
    void terminalsOfARelay() {
        List<String> labels = labels("relay-with-its-terminals", Map.of("breaker", "25 A", "trigger-fuse", "1 A"));
        assertTrue(labels.containsAll(List.of("30", "85", "86", "87", "breaker 25 A", "1 A")), labels.toString());
    }

    @Test
    void heatOfContacts() {
        // 10² × 0.005 = 0.5 W and 10² × 0.030 = 3 W
        Map<String, String> values = Map.of("good", "5 mΩ", "worn", "30 mΩ", "marked-current", "10 A", "largest-current", "12 A");
        List<List<String>> rows = Drawn.ALL.draw("contact-heat", values).figures().rows();
        assertTrue(rows.contains(List.of("10", "3", "0.5")), rows.toString());
    }

    /** ISO 4165 as described: 12 mm; outlet articles: about 21 mm. */
    @Test
    void sizesOfTheTwoOutlets() {
        assertEquals(
                List.of("12 mm", "about 21 mm"),
                labels("two-outlet-faces", Map.of()).stream().filter(label -> label.contains("mm")).toList());
    }

    private static List<String> labels(String drawing, Map<String, String> values) {
        return new DrawnSvg(Drawn.ALL.draw(drawing, values).svg("k")).texts().stream().map(text -> text.replace('\u00a0', ' ')).toList();
    }
}
