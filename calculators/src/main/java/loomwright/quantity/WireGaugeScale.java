package loomwright.quantity;

/**
 * American wire gauge against the area of a solid round conductor.
 *
 * <p>diameter in inches = 0.005 × 92^((36 − n)/39), with n = 0, −1, −2, −3 for 1/0, 2/0, 3/0, 4/0: 39 steps from 36 AWG (0.0050 in)
 * to 4/0 (0.4600 in).
 *
 * @source ASTM B258, geometry rule
 */
final class WireGaugeScale implements Scale {
    private static final double METRES_PER_INCH = 0.0254;
    private static final double SMALLEST_DIAMETER_METRES = 0.005 * METRES_PER_INCH;

    @Override
    public double toBase(double gauge) {
        double diameter = SMALLEST_DIAMETER_METRES * Math.pow(92, (36 - gauge) / 39);
        return Math.PI / 4 * diameter * diameter;
    }

    @Override
    public double fromBase(double area) {
        double diameter = Math.sqrt(area * 4 / Math.PI);
        return 36 - 39 * Math.log(diameter / SMALLEST_DIAMETER_METRES) / Math.log(92);
    }
}
