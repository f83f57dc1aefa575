package loomwright.picture;

/** An upright rectangle on the canvas. */
record Box(double left, double top, double right, double bottom) {

    boolean overlaps(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    boolean inside(Box other) {
        return left >= other.left && right <= other.right && top >= other.top && bottom <= other.bottom;
    }

    Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }
}
