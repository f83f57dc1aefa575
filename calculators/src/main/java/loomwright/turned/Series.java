package loomwright.turned;

/** The answer among sizes, ratings or whole numbers: each was tried. */
final class Series {
    private final Asking asking;
    private final Scan scan;

    Series(Asking asking, Scan scan) {
        this.asking = asking;
        this.scan = scan;
    }

    Turned found() {
        for (int i = 1; i <= scan.last(); i++) {
            boolean before = passes(i - 1);
            if (before != passes(i)) {
                int last = before ? i - 1 : i;
                return Told.pair(asking, scan.figures().get(last), scan.figures().get(before ? i : i - 1));
            }
        }
        double from = scan.figures().get(0);
        double to = scan.figures().get(scan.last());
        return passes(0) ? Told.allPass(asking, from, to) : Told.nonePasses(asking, from, to);
    }

    private boolean passes(int at) {
        return asking.wish().isMet(scan.given().get(at));
    }
}
