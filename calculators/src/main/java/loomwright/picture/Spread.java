package loomwright.picture;

/** Pushes things in a row apart until none touches the next, each staying as near to its wish as the room allows. */
final class Spread {
    private Spread() {}

    /**
     * Where each thing begins.
     *
     * @param middles where each would like its middle to be, in rising order
     * @param sizes how much room each takes
     * @param gap the room between two
     * @param from where the row may begin
     * @param to where the row must end; if all do not fit, the row begins before {@code from}
     */
    static double[] apart(double[] middles, double[] sizes, double gap, double from, double to) {
        double[] starts = new double[middles.length];
        double free = from;
        for (int i = 0; i < starts.length; i++) {
            starts[i] = Math.max(middles[i] - sizes[i] / 2, free);
            free = starts[i] + sizes[i] + gap;
        }
        double limit = to;
        for (int i = starts.length - 1; i >= 0; i--) {
            starts[i] = Math.min(starts[i], limit - sizes[i]);
            limit = starts[i] - gap;
        }
        return starts;
    }
}
