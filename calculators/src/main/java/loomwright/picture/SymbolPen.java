package loomwright.picture;

/** Draws one symbol; its own coordinates run along the conductor and across it, to the right of the heading. */
final class SymbolPen {
    private static final double DIAGONAL = 0.7071;

    private final Canvas canvas;
    private final double x;
    private final double y;
    private final Heading heading;

    SymbolPen(Canvas canvas, double x, double y, Heading heading) {
        this.canvas = canvas;
        this.x = x;
        this.y = y;
        this.heading = heading;
    }

    void draw(Symbol symbol) {
        switch (symbol) {
            case BATTERY -> battery();
            case FUSE_LINK -> fuseLink();
            case SWITCH_OPEN, MAKE_CONTACT -> contact();
            case BREAKER -> breaker();
            case LAMP -> lamp();
            case LAMP_LIT -> litLamp();
            case MOTOR -> lettered("M");
            case RESISTOR -> rectangle(18, 7);
            case VOLTMETER -> lettered("V");
            case OUTLET -> outlet();
            case CONVERTER -> converter();
            default -> throw new IllegalArgumentException("no symbol");
        }
    }

    private void battery() {
        erase(12, 5);
        for (double cell = -11; cell < 5; cell += 15) {
            line(Style.MINUS, cell, -6, cell, 6);
            line(Style.INK, cell + 7, -14, cell + 7, 14);
        }
    }

    private void fuseLink() {
        rectangle(16, 6);
        line(Style.INK, -16, 0, 16, 0);
    }

    private void contact() {
        erase(14, 4);
        line(Style.INK, -14, 0, 12, -13);
        circle(Style.SYMBOL, -14, 0, 3);
        circle(Style.SYMBOL, 14, 0, 3);
    }

    private void breaker() {
        erase(14, 4);
        line(Style.INK, -14, 0, 12, -13);
        circle(Style.SYMBOL, -14, 0, 3);
        line(Style.INK, 9, -5, 19, 5);
        line(Style.INK, 9, 5, 19, -5);
    }

    private void lamp() {
        circle(Style.SYMBOL, 0, 0, 14);
        double arm = 14 * DIAGONAL;
        line(Style.INK, -arm, -arm, arm, arm);
        line(Style.INK, -arm, arm, arm, -arm);
    }

    private void litLamp() {
        lamp();
        for (int side = -1; side <= 1; side += 2) {
            for (int slant = -1; slant <= 1; slant++) {
                double along = slant * DIAGONAL;
                double across = side * (slant == 0 ? 1 : DIAGONAL);
                line(Style.INK, 18 * along, 18 * across, 25 * along, 25 * across);
            }
        }
    }

    private void lettered(String letter) {
        circle(Style.SYMBOL, 0, 0, 15);
        canvas.text(x, y + 6, Anchor.MIDDLE, Lettering.STRONG, letter);
    }

    private void outlet() {
        erase(15, 3);
        canvas.path(Style.INK, new Outline().move(x(-7, -9), y(-7, -9)).halfCircle(9, false, x(-7, 9), y(-7, 9)));
        canvas.path(Style.INK, new Outline().move(x(7, -9), y(7, -9)).halfCircle(9, true, x(7, 9), y(7, 9)));
    }

    private void converter() {
        rectangle(17, 17);
        line(Style.INK, -17, 17, 17, -17);
    }

    /** Clears the conductor under the symbol. */
    private void erase(double along, double across) {
        area(Style.PAPER, along, across);
    }

    private void rectangle(double along, double across) {
        area(Style.SYMBOL, along, across);
    }

    private void area(Style style, double along, double across) {
        double halfWidth = heading.isLevel() ? along : across;
        double halfHeight = heading.isLevel() ? across : along;
        canvas.rectangle(style, x - halfWidth, y - halfHeight, 2 * halfWidth, 2 * halfHeight);
    }

    private void circle(Style style, double along, double across, double radius) {
        canvas.circle(style, x(along, across), y(along, across), radius);
    }

    private void line(Style style, double along1, double across1, double along2, double across2) {
        canvas.line(style, x(along1, across1), y(along1, across1), x(along2, across2), y(along2, across2));
    }

    private double x(double along, double across) {
        return x + along * heading.dx() - across * heading.dy();
    }

    private double y(double along, double across) {
        return y + along * heading.dy() + across * heading.dx();
    }
}
