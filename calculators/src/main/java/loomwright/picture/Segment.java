package loomwright.picture;

/** A straight piece of a line on the canvas. */
record Segment(double x1, double y1, double x2, double y2) {

    /** Whether any part of it lies inside the box. */
    boolean crosses(Box box) {
        double from = 0;
        double to = 1;
        double[] steps = {x1 - x2, x2 - x1, y1 - y2, y2 - y1};
        double[] rooms = {x1 - box.left(), box.right() - x1, y1 - box.top(), box.bottom() - y1};
        for (int side = 0; side < 4; side++) {
            if (steps[side] == 0) {
                if (rooms[side] < 0) {
                    return false;
                }
            } else {
                double at = rooms[side] / steps[side];
                if (steps[side] < 0) {
                    from = Math.max(from, at);
                } else {
                    to = Math.min(to, at);
                }
            }
        }
        return from <= to;
    }
}
