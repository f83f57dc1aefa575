package loomwright.generator.offline;

import java.util.Locale;

/**
 * The sign of the site: the end of a copper conductor, with its ring lug. Drawn from the same lengths as SVG and as PNG, so no picture file is
 * needed. All lengths are shares of the width; what matters lies within the middle, since some phones cut icons to a circle.
 */
final class Icon {
    static final String GROUND = "#15212a";

    private static final int GROUND_COLOUR = 0x15212a;
    private static final int COPPER = 0xf4b587;
    private static final double RADIUS = 0.2;
    private static final double HALF_STROKE = 0.05;

    private Icon() {}

    static String svg() {
        double end = 50 - 100 * RADIUS;
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 100\"><path fill=\"%s\" d=\"M0 0h100v100H0z\"/>"
                        + "<g fill=\"none\" stroke=\"#%06x\" stroke-width=\"%.0f\"><path d=\"M%.0f 50h%.0f\"/><circle cx=\"50\" cy=\"50\" r=\"%.0f\"/></g></svg>\n",
                GROUND, COPPER, 200 * HALF_STROKE, 50 + 100 * RADIUS, end, 100 * RADIUS);
    }

    static byte[] png(int width) {
        int[] pixels = new int[width * width];
        for (int y = 0; y < width; y++) {
            for (int x = 0; x < width; x++) {
                pixels[y * width + x] = mixed(covered((x + 0.5) / width, (y + 0.5) / width, width));
            }
        }
        return Png.of(width, pixels);
    }

    /** How much of a pixel is copper, from its distance to the middle of the stroke. */
    private static double covered(double x, double y, int width) {
        double fromMiddle = Math.hypot(x - 0.5, y - 0.5);
        double toRing = Math.abs(fromMiddle - RADIUS);
        double toLine = fromMiddle < RADIUS || x < 0.5 ? 1 : Math.abs(y - 0.5);
        double inside = (HALF_STROKE - Math.min(toRing, toLine)) * width + 0.5;
        return Math.max(0, Math.min(1, inside));
    }

    private static int mixed(double copper) {
        int colour = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            double part = (COPPER >> shift & 255) * copper + (GROUND_COLOUR >> shift & 255) * (1 - copper);
            colour |= (int) Math.round(part) << shift;
        }
        return colour;
    }
}
