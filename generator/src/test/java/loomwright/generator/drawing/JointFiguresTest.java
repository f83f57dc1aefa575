package loomwright.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The figures in the drawings of joints, worked by hand beside each. */
class JointFiguresTest {
    @Test
    void millivoltsOfAJoint() {
        // 10 A × 4.71 mΩ/m × 0.0762 m = 3.589 mV; 5.0 − 3.589 = 1.411 mV
        Map<String, String> values =
                Map.of("reading", "5.0 mV", "test-current", "10 A", "span", "76.2 mm", "resistance-per-metre", "4.71 mΩ/m");
        List<String> labels = new DrawnSvg(Drawn.ALL.draw("millivolts-across-a-joint", values).svg("k"))
                .texts().stream().map(text -> text.replace('\u00a0', ' ')).toList();
        assertEquals(
                List.of("reads 5.0 mV", "10 A →", "span 76.2 mm", "cable between the probes: 3.59 mV", "left for the joint: 1.41 mV"),
                labels.stream().filter(label -> label.length() > 1).toList());
    }

    @Test
    void heatOfAGoodAndABadJoint() {
        // bad: (150 − 1.7945) mV ÷ 5 A = 29.64 mΩ, at 10 A 2.964 W; good: (2.5 − 1.7945) mV ÷ 5 A = 0.1411 mΩ, at 10 A 0.01411 W
        Map<String, String> values = Map.of(
                "good-reading", "2.5 mV", "bad-reading", "150 mV", "test-current", "5 A", "span", "76.2 mm",
                "resistance-per-metre", "4.71 mΩ/m", "design-current", "10 A");
        List<List<String>> rows = Drawn.ALL.draw("joint-heat-against-current", values).figures().rows();
        assertEquals(
                List.of("10", "2.96", "0.0141"),
                rows.stream().filter(row -> row.get(0).equals("10")).findFirst().orElseThrow());
    }
}
