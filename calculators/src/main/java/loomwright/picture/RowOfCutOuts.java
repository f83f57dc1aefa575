package loomwright.picture;

/** The lengths of a row of cut-outs that a lesson or a reader gives, in millimetres. */
public record RowOfCutOuts(double width, double height, double diameter, double pitch, double first, double up, int count) {
    /** Where the centres lie if the row begins at {@code from} and ends at {@code last}. */
    public double[] centres(double from, double last) {
        double[] centres = new double[count];
        for (int i = 0; i < count; i++) {
            centres[i] = count == 1 ? from : from + (last - from) * i / (count - 1);
        }
        return centres;
    }

    /** Without the lengths: the library's printing of numbers would come into the page with them. */
    @Override
    public String toString() {
        return count + " cut-outs in a row";
    }
}
