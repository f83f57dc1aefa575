package loomwright.turned;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.worked.Step;
import loomwright.worked.Working;

/** The answer where a field takes any figure: halved down to the border, then worked out through the formulas turned round if they can be. */
final class Between {
    private static final int HALVINGS = 100;
    private static final double SMOOTH = 1e-6;
    private static final double APART = 1e-5;
    private static final double ROUNDING = 1e-3;
    private static final int DIGITS = 4;
    private static final int MOST_DIGITS = 9;

    private final Asking asking;
    private final Scan scan;
    private double low;
    private double high;

    Between(Asking asking, Scan scan) {
        this.asking = asking;
        this.scan = scan;
    }

    Turned found() {
        if (!bracket() || touchesOnly()) {
            double from = Math.min(low, scan.figures().get(0));
            double to = Math.max(high, scan.figures().get(scan.last()));
            return asking.wish().isMet(scan.given().get(0)) ? Told.allPass(asking, from, to) : Told.nonePasses(asking, from, to);
        }
        halve();
        boolean lowPasses = asking.wish().isMet(asking.given(low));
        double border = asking.wish().border();
        double jump = Math.abs(asking.given(high) - asking.given(low));
        if (asking.wish().output() == null || jump > SMOOTH * Math.max(Math.abs(border), Math.abs(asking.given(high)))) {
            return Told.pair(asking, rounded(lowPasses ? low : high, lowPasses, true), rounded(lowPasses ? high : low, !lowPasses, false));
        }
        boolean upTo = asking.wish().atMost() == scan.rises();
        List<Step> steps = asking.wish().limit() == null ? null : way();
        Quantity answer = Quantity.of(rounded(upTo ? low : high, upTo, true), asking.unit());
        return Told.figure(
                asking, steps == null ? Turned.Kind.TRIED : Turned.Kind.WORKED_OUT, answer, steps == null ? List.of() : steps, upTo);
    }

    /** The least that is given, or the most, may be the limit itself: what is given parts there, but every figure passes. */
    private boolean touchesOnly() {
        return scan.crossing(asking.wish().border()) > 0 && asking.wish().isMet(scan.given().get(0)) && asking.wish().isMet(scan.given().get(scan.last()));
    }

    /** Finds two figures with the border between them; looks up to the very edge of what the calculator answers. */
    private boolean bracket() {
        double border = asking.wish().border();
        int crossing = scan.crossing(border);
        if (crossing > 0) {
            low = scan.figures().get(crossing - 1);
            high = scan.figures().get(crossing);
            return true;
        }
        List<Double> grid = Scan.grid(asking, null);
        double first = scan.figures().get(0);
        double last = scan.figures().get(scan.last());
        low = edge(first, before(grid, first));
        high = edge(last, after(grid, last));
        if (parted(low, first)) {
            high = first;
            return true;
        }
        if (parted(last, high)) {
            low = last;
            return true;
        }
        return false;
    }

    private boolean parted(double one, double other) {
        return asking.given(one) <= asking.wish().border() != asking.given(other) <= asking.wish().border();
    }

    private static double before(List<Double> grid, double figure) {
        double found = figure;
        for (double each : grid) {
            found = each < figure ? each : found;
        }
        return found;
    }

    private static double after(List<Double> grid, double figure) {
        for (double each : grid) {
            if (each > figure) {
                return each;
            }
        }
        return figure;
    }

    /** The figure nearest to one that is refused that is still answered. */
    private double edge(double answered, double refused) {
        double good = answered;
        double bad = refused;
        for (int i = 0; i < HALVINGS / 2 && good != bad; i++) {
            double middle = (good + bad) / 2;
            if (Double.isNaN(asking.given(middle))) {
                bad = middle;
            } else {
                good = middle;
            }
        }
        return good;
    }

    private void halve() {
        boolean lowBelow = asking.given(low) <= asking.wish().border();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            double gives = asking.given(middle);
            if (middle <= low || middle >= high || Double.isNaN(gives)) {
                return;
            }
            if (gives <= asking.wish().border() == lowBelow) {
                low = middle;
            } else {
                high = middle;
            }
        }
    }

    private List<Step> way() {
        double nearby = high + Math.max(Math.abs(high), APART) * APART;
        Working one = asking.with(high);
        Working other = asking.with(nearby);
        if (other == null) {
            other = asking.with(low - Math.max(Math.abs(low), APART) * APART);
        }
        if (one == null || other == null) {
            return null;
        }
        return Way.back(one, other, asking.unknown().key(), one.result(asking.wish().output().key()), asking.wish().limit());
    }

    /** Whether rounding the figure did not move what it gives by more than shows in three digits. */
    private boolean isNear(double gives, double exact) {
        return asking.wish().output() == null || Math.abs(gives - exact) <= ROUNDING * Math.abs(exact);
    }

    /** The figure to few digits, rounded down or up so that it passes, or does not, as it should. */
    private double rounded(double figure, boolean down, boolean shouldPass) {
        for (int digits = DIGITS; digits <= MOST_DIGITS; digits++) {
            double scale = Math.pow(10, digits - 1 - Math.floor(Math.log(Math.abs(figure)) / Math.log(10) + 1e-12));
            double hair = Math.abs(figure) * scale * 1e-9;
            double scaled = down ? Math.floor(figure * scale + hair) : Math.ceil(figure * scale - hair);
            double round = scaled / scale;
            double gives = asking.given(round);
            if (figure != 0 && !Double.isNaN(gives) && asking.wish().isMet(gives) == shouldPass && isNear(gives, asking.given(figure))) {
                return round;
            }
        }
        return figure;
    }
}
