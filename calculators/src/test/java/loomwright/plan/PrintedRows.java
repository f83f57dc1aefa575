package loomwright.plan;

import java.util.List;

/** Rows typed from the publications a second time, for choosing without the program under test. */
final class PrintedRows {
    /**
     * A size of conductor.
     *
     * @param mm2 copper area
     * @param ohmsPerKm resistance at {@code at} °C
     * @param t60 33 CFR 183.425 Table 5, insulation for 60 °C, of the row that may stand for it
     * @param t105 the same for 105 °C
     */
    record Size(String text, double mm2, double ohmsPerKm, double at, double t60, double t105) {}

    /** ISO 6722-1, highest resistance at 20 °C; 3 mm² is left out, no terminal is made for it; beside each the next thinner row of Table 5. */
    static final List<Size> METRIC = List.of(
            new Size("1 mm²", 1, 18.5, 20, 10, 20), // 18 AWG is 0.823 mm²
            new Size("1.5 mm²", 1.5, 12.7, 20, 15, 25), // 16 AWG is 1.31 mm²
            new Size("2 mm²", 2, 9.42, 20, 15, 25), // 14 AWG is 2.08 mm²: too thick to stand in
            new Size("2.5 mm²", 2.5, 7.6, 20, 20, 35), // 14 AWG
            new Size("4 mm²", 4, 4.71, 20, 25, 45), // 12 AWG is 3.31 mm²
            new Size("6 mm²", 6, 3.14, 20, 40, 60), // 10 AWG is 5.26 mm²
            new Size("10 mm²", 10, 1.82, 20, 55, 80), // 8 AWG is 8.37 mm²
            new Size("16 mm²", 16, 1.16, 20, 80, 120)); // 6 AWG is 13.3 mm²

    /** NEC chapter 9 Table 8, stranded uncoated copper at 75 °C: ohms per 1000 ft over 0.3048; Table 5 by its own rows. */
    static final List<Size> GAUGE = List.of(
            new Size("16 AWG", 1.3088, 4.99 / 0.3048, 75, 15, 25), new Size("14 AWG", 2.0809, 3.14 / 0.3048, 75, 20, 35),
            new Size("12 AWG", 3.3088, 1.98 / 0.3048, 75, 25, 45), new Size("10 AWG", 5.2612, 1.24 / 0.3048, 75, 40, 60),
            new Size("8 AWG", 8.3656, 0.778 / 0.3048, 75, 55, 80), new Size("6 AWG", 13.3018, 0.491 / 0.3048, 75, 80, 120),
            new Size("4 AWG", 21.1506, 0.308 / 0.3048, 75, 105, 160));

    /** Blade fuse-links that are sold; 4 A is only remembered. */
    static final List<Double> BLADE = List.of(1., 2., 3., 5., 7.5, 10., 15., 20., 25., 30., 35., 40.);

    /** Class T fuses that are sold. */
    static final List<Double> CLASS_T = List.of(1., 2., 3., 6., 10., 15., 20., 25., 30., 35., 40., 45., 50., 60.);

    /** NEC 210.20(A): of its rating a device carries this share for hours. */
    static final double HOURS = 0.8;

    /** Re-rating of a large blade fuse-link: 34 A of 40 A at 65 °C, the next row above 40 °C. */
    static final double WARM = 34 / 40.;

    /** A blade fuse-link breaks 1 kA at 32 V. */
    static final double BLADE_BREAKS = 1000;

    private PrintedRows() {}

    /** NEC factors for 36 to 40 °C and 51 to 55 °C; 33 CFR for the engine space of 50 °C. The column of 90 °C stands in for 105 °C but in the engine space. */
    static double warmth(String place, boolean better) {
        return switch (place) {
            case "inside" -> better ? 0.91 : 0.82;
            case "roof" -> better ? 0.76 : 0.41;
            case "engine" -> better ? 0.85 : 0.58;
            default -> throw new IllegalArgumentException(place);
        };
    }

    static double degrees(String place) {
        return switch (place) {
            case "inside" -> 40;
            case "roof" -> 55;
            case "engine" -> 50;
            default -> throw new IllegalArgumentException(place);
        };
    }

    /** 33 CFR 183.425 Table 5 note 2: 2 conductors 1, 4 to 6 0.60, 7 to 24 0.50. */
    static double bundle(String beside) {
        return switch (beside) {
            case "alone" -> 1;
            case "few" -> 0.6;
            case "many" -> 0.5;
            default -> throw new IllegalArgumentException(beside);
        };
    }

    /** Resistance in Ω of one metre, warmed as copper is: 234.5 °C + t. */
    static double ohmsPerMetre(Size size, double celsius) {
        return size.ohmsPerKm() / 1000 * (234.5 + celsius) / (234.5 + size.at());
    }

    /** Copper of 58 m/(Ω·mm²) at 20 °C: the least there is. */
    static double coldOhmsPerMetre(Size size) {
        return 1 / 58. / size.mm2();
    }

    static double ampacity(Size size, boolean better, String place, String beside) {
        return (better ? size.t105() : size.t60()) * warmth(place, better) * bundle(beside);
    }
}
