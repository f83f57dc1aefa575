package loomwright.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loomwright.picture.Picture;
import org.junit.jupiter.api.Test;

/** The figures in the drawings, worked by hand beside each. */
class DrawnFiguresTest {
    private static Picture draw(String name, Map<String, String> values) {
        return Drawn.ALL.draw(name, values);
    }

    private static Map<String, String> window(String key, String value) {
        return Map.of(key, value, "lowest", "10.5 V", "nominal", "12 V", "highest", "14.6 V");
    }

    /** Labels with their no-break spaces made plain. */
    private static List<String> labels(Picture picture) {
        return new DrawnSvg(picture.svg("k")).texts().stream().map(text -> text.replace('\u00a0', ' ')).toList();
    }

    private static void shows(Picture picture, String... wanted) {
        List<String> labels = labels(picture);
        for (String label : wanted) {
            assertTrue(labels.contains(label), label + " is not among " + labels);
        }
    }

    @Test
    void resistanceOfTheCoil() {
        // 12 V / 90 Ω = 133.3 mA; 12² / 90 = 1.6 W; 14.6 / 90 = 162.2 mA; 14.6² / 90 = 2.368 W
        shows(draw("resistor-power-against-voltage", window("resistance", "90 Ω")), "133 mA", "1.6 W", "162 mA", "2.37 W");
    }

    @Test
    void coldLamp() {
        // 12 V / 0.350 Ω = 34.29 A
        Picture picture = draw("lamp-cold-and-hot", Map.of("voltage", "12.0 V", "cold-resistance", "0.350 Ω", "hot-current", "2.50 A"));
        shows(picture, "34.3 A", "2.50 A");
        List<SvgElement> bars = new DrawnSvg(picture.svg("k"))
                .elements("rect").stream().filter(bar -> bar.attribute("class").startsWith("solid")).toList();
        double tall = Double.parseDouble(bars.get(0).attribute("height"));
        double low = Double.parseDouble(bars.get(1).attribute("height"));
        assertEquals(34.29 / 2.5, tall / low, 0.02);
    }

    @Test
    void chainFromTheLabel() {
        // 5 V × 3 A = 15 W; 15 / 0.85 = 17.65 W; 17.65 / 12 = 1.471 A; 17.65 − 15 = 2.65 W
        Map<String, String> values =
                Map.of("device-voltage", "5 V", "device-current", "3 A", "efficiency", "85 %", "supply-voltage", "12 V");
        shows(draw("label-to-amperes-chain", values), "15 W", "17.6 W", "1.47 A", "heat 2.6 W", "5 V × 3 A");
    }

    @Test
    void stepsOfUsbPowerDelivery() {
        Picture picture = draw("usb-power-levels", Map.of("usual-current", "3 A", "marked-cable-current", "5 A"));
        shows(picture, "15 W", "27 W", "45 W", "60 W", "100 W", "5 A cable");
        assertEquals(List.of("20 V", "5 A", "100 W"), plain(picture.figures().rows().get(4)));
    }

    @Test
    void kindsOfLoad() {
        // 12 W / 10.5 V = 1.143 A; 12 W at 12 V is 12 Ω, and 14.6 V / 12 Ω = 1.217 A, 10.5 V / 12 Ω = 0.875 A; 12 / 14.6 = 0.822 A
        Picture picture = draw("load-kinds-current-against-voltage", window("power-drawn-at-nominal", "12 W"));
        shows(picture, "1.14 A", "1.22 A");
        List<List<String>> rows = picture.figures().rows();
        assertEquals(List.of("10.5", "0.875", "1", "1.14"), rows.get(0));
        assertEquals(List.of("14.6", "1.22", "1", "0.822"), rows.get(rows.size() - 1));
    }

    @Test
    void dropsAt4Point2Metres() {
        // ISO 6722-1: 12.7, 7.60, 4.71, 3.14 mΩ/m; 10 A × 2 × 4.2 m of each: 1.067, 0.638, 0.396, 0.264 V
        Picture picture =
                draw("drop-against-route-length", Map.of("current", "10 A", "conductor", "iso-6722-1", "route-length", "4.2 m"));
        List<String> row = picture.figures().rows().stream().filter(each -> each.get(0).equals("4.2")).findFirst().orElseThrow();
        assertEquals(List.of("4.2", "1.07", "0.638", "0.396", "0.264"), row);
    }

    @Test
    void limitsAreOneTenthAndThreeHundredthsOf12Volts() {
        DrawnSvg svg = new DrawnSvg(
                draw("drop-against-route-length", Map.of("current", "10 A", "conductor", "iso-6722-1", "route-length", "4.2 m")).svg("k"));
        List<Double> limits = svg.elements("path").stream()
                .filter(path -> path.attribute("class").equals("warn"))
                .map(path -> height(path))
                .sorted()
                .toList();
        List<Double> grid = svg.elements("path").stream()
                .filter(path -> path.attribute("class").equals("faint") && path.attribute("d").startsWith("M" + left(svg)))
                .map(path -> height(path))
                .sorted()
                .toList();
        double top = grid.get(0);
        double bottom = grid.get(grid.size() - 1);
        assertEquals(1.2 / 1.4, (bottom - limits.get(0)) / (bottom - top), 1e-3);
        assertEquals(0.36 / 1.4, (bottom - limits.get(1)) / (bottom - top), 1e-3);
    }

    @Test
    void oneSizeInFourTables() {
        // 1000 / 58 / 2.5 mm² = 6.897 mΩ/m; the other three are printed limits for 2.5 mm²
        Picture picture = draw("one-size-four-tables", Map.of("size", "2.5 mm2", "temperature", "20 °C"));
        shows(picture, "6.90 mΩ/m", "7.41 mΩ/m", "7.60 mΩ/m", "7.98 mΩ/m");
    }

    @Test
    void warmCopper() {
        // 1 + 0.00393 × 55 = 1.216; 1 + 0.00393 × 5 = 1.020; 1 − 0.00393 × 40 = 0.843
        List<List<String>> rows = draw("resistance-against-temperature", Map.of()).figures().rows();
        assertTrue(rows.contains(List.of("20", "100")), rows.toString());
        assertTrue(rows.contains(List.of("25", "102")), rows.toString());
        assertTrue(rows.contains(List.of("75", "122")), rows.toString());
        assertTrue(rows.contains(List.of("−20", "84.3")), rows.toString());
    }

    @Test
    void discsAreInTheRatioOfTheirDiameters() {
        // 12 AWG 3.31 mm², 12 SAE 2.96 mm² (5833 cmil); diameters go as the roots
        Picture picture = draw("cross-sections-side-by-side", Map.of());
        shows(picture, "3.31 mm²", "2.96 mm²", "2.5 mm²");
        List<Double> radii = new DrawnSvg(picture.svg("k"))
                .elements("circle").stream()
                        .filter(circle -> circle.attribute("class").equals("solid"))
                        .map(circle -> Double.parseDouble(circle.attribute("r")))
                        .toList();
        assertEquals(Math.sqrt(2.96 / 3.31), radii.get(1) / radii.get(0), 2e-3);
        assertEquals(Math.sqrt(2.5 / 3.31), radii.get(2) / radii.get(0), 2e-3);
        // √(4 × 3.31 / π) = 2.053 mm at 48 units a millimetre
        assertEquals(2.053 * 48 / 2, radii.get(0), 0.1);
    }

    @Test
    void outAndBackIsTwiceTheRoute() {
        shows(draw("out-and-back-run", Map.of("route-length", "4.2 m")), "route 4.2 m", "circuit length = 2 × route = 8.4 m");
    }

    @Test
    void constantsAtTheirTemperatures() {
        // 0.0164 / (1/58) = 0.9512, 12.4 K below 20 °C; the others as listed in the table of constants
        List<List<String>> rows = draw("constants-on-a-thermometer", Map.of()).figures().rows();
        List<String> temperatures = rows.stream().map(row -> row.get(2).replace('\u00a0', ' ')).toList();
        assertEquals(List.of("8 °C", "20 °C", "29 °C", "29 °C", "82 °C"), temperatures);
    }

    @Test
    void ampereHoursToPlanWith() {
        // comparison chart: 80 % and 50 % of 100 Ah; army manual: 75 % at 0 °C, half of it 37.5 Ah
        shows(draw("usable-ampere-hours", Map.of("capacity", "100 Ah", "temperature", "0 °C")), "80 Ah", "50 Ah", "37.5 Ah");
    }

    @Test
    void twoFormsOfPeukert() {
        // 20 × (100 ÷ 200)^1.2 = 8.71 h and 100 ÷ 10^1.2 = 6.31 h, by hand; 100 ÷ 10 = 10 h; 100 ÷ 5^1.2 = 14.5 h
        Picture picture = draw("peukert-two-forms", Map.of("capacity", "100 Ah", "rated-time", "20 h", "exponent", "1.2"));
        shows(picture, "20 h");
        assertTrue(new DrawnSvg(picture.svg("k")).words("desc").replace('\u00a0', ' ').endsWith("begins at only 14.5 h."));
        assertTrue(picture.figures().rows().contains(List.of("10", "10", "8.71", "6.31")), picture.figures().rows().toString());
    }

    @Test
    void restingVoltagesOfTwoTables() {
        // at 50 %: magazine 12.30 V, sheet credited to BCI 12.24 V
        Picture picture = draw("resting-voltage-tables", Map.of("voltage", "12.30 V"));
        assertTrue(picture.figures().rows().contains(List.of("50", "12.3", "12.2")), picture.figures().rows().toString());
    }

    @Test
    void feedOfThePanel() {
        // 1 + 0.5 + 4 + 1 = 6.5 A; + 6 = 12.5 A; + 10 = 22.5 A; 80 % of 20 A = 16 A
        Map<String, String> values = Map.of(
                "lights", "1 A", "fan", "0.5 A", "pump", "4 A", "camera-charger", "1 A", "usb-pair", "6 A", "outlet", "10 A", "panel-limit",
                "20 A", "feed-fuse", "20 A");
        shows(draw("feed-against-its-limits", values), "20 A", "16 A", "6.5 A", "12.5 A", "22.5 A");
    }

    @Test
    void returnsAddUp() {
        // 20 A + 30 A
        shows(draw("return-currents-add-up", Map.of("feed-fuse", "20 A", "breaker-rating", "30 A")), "≤ 50 A");
    }

    @Test
    void faultAlongTheRun() {
        // 12 V ÷ 3 mΩ and ÷ 12 mΩ at the battery; 4 m: 8 m ÷ (58 × 6) = 22.99 mΩ and 8 × 3.14 = 25.12 mΩ more: 462 A and 323 A
        Map<String, String> values = Map.of("size", "6 mm²", "voltage", "12 V", "route-length", "4.2 m");
        List<List<String>> rows = draw("fault-current-along-a-run", values).figures().rows();
        assertEquals(List.of("0", "4000", "1000"), plain(rows.get(0)));
        assertTrue(rows.contains(List.of("4", "462", "323")), rows.toString());
        Map<String, String> far = Map.of("size", "6 mm²", "voltage", "12 V", "route-length", "9 m");
        assertThrows(IllegalArgumentException.class, () -> draw("fault-current-along-a-run", far));
    }

    @Test
    void voltagesOutOfOrderAreRefused() {
        Map<String, String> values = Map.of("lowest", "10.5 V", "nominal", "9 V", "battery", "12.8 V", "highest", "14.6 V");
        String message = assertThrows(
                        IllegalArgumentException.class, () -> draw("supply-window", values))
                .getMessage();
        assertEquals("In the drawing supply-window, nominal \u201c9 V\u201d must be above lowest, 10.5 V.", message);
    }

    private static List<String> plain(List<String> row) {
        return row.stream().map(cell -> cell.replace('\u00a0', ' ')).toList();
    }

    private static double height(SvgElement path) {
        String data = path.attribute("d");
        return Double.parseDouble(data.substring(data.lastIndexOf(' ') + 1));
    }

    /** The left edge of the plot as it is written: where the limits begin. */
    private static String left(DrawnSvg svg) {
        String data = svg.elements("path").stream()
                .filter(path -> path.attribute("class").equals("warn"))
                .findFirst()
                .orElseThrow()
                .attribute("d");
        return data.substring(1, data.indexOf(' ')) + " ";
    }
}
