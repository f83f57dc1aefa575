package loomwright.circuit.hazard;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a conductor carries by 33 CFR 183.425 Table 5, as typed for the tests, and what it has for resistance by its area. */
final class Copper {
    static final List<String> METRIC = List.of("1", "1.5", "2.5", "4", "6", "10", "16", "25", "35", "50");
    static final List<String> GAUGES = List.of("18", "16", "14", "12", "10", "8", "6", "4", "2", "1");
    private static final Map<String, Double> TABLE_5 = table();

    private Copper() {}

    /** Amperes at 30 °C; the row of the next thinner gauge with at most 95 % of a metric area stands in. 0 below the table. */
    static double ampacity(double squareMillimetres, boolean metric, String insulation) {
        double most = 0;
        for (String gauge : GAUGES) {
            if (area(gauge) <= squareMillimetres * (metric ? 0.95 : 1.001)) {
                most = Math.max(most, TABLE_5.get(gauge + " AWG " + insulation));
            }
        }
        return most;
    }

    /** ASTM B258: 0.127 mm · 92^((36 − n)/39), squared, times π/4. */
    static double area(String gauge) {
        double diameter = 0.127 * Math.pow(92, (36 - Integer.parseInt(gauge)) / 39.0);
        return Math.PI / 4 * diameter * diameter;
    }

    /** Milliohms out and back; annealed copper has 17.241 mΩ·mm²/m at 20 °C (IEC 60028), and 0.393 % more for each kelvin. */
    static double milliohms(double squareMillimetres, double metres, double celsius) {
        return 2 * 17.241 * metres / squareMillimetres * (1 + 0.00393 * (celsius - 20));
    }

    private static Map<String, Double> table() {
        Map<String, Double> table = new LinkedHashMap<>();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Copper.class.getResourceAsStream("/published/33-cfr-183-425-table-5.csv"), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String[] cells = line.split(",");
                if (cells[0].endsWith("AWG")) {
                    table.put(cells[0] + " " + cells[1], Double.parseDouble(cells[3]));
                }
            }
        } catch (IOException exception) {
            throw new UncheckedIOException(exception);
        }
        return table;
    }
}
