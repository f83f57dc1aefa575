package loomwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loomwright.plan.PrintedRows.Size;

/**
 * A second way of choosing a circuit of its own from the battery, written from the rules and the printed rows alone: every kind of device, every
 * size of feed and every size of run is tried in turn, and the first that keeps every rule is taken.
 */
final class OwnChoice {
    /** A load: watts held, amperes held, or conductance; with its run. */
    record Load(double watts, double amperes, double siemens, boolean lasting, double share, double metres, String place, String beside) {
        double current(double volts) {
            return watts / volts + amperes + siemens * volts;
        }

        double design() {
            return Math.max(current(10.5), current(14.6));
        }

        /** With all lost that may be: the least it draws when it draws most. */
        double kept() {
            return siemens > 0 ? current(14.6 - allowed()) : current(10.5);
        }

        double allowed() {
            return 12 * share;
        }
    }

    /** What was found: rating and size of each load, kind of its device; the same of the feed, or of nothing if there is one load. */
    record Found(boolean mainBlade, double main, Size feed, boolean waysBlade, List<Double> ratings, List<Size> sizes) {}

    private final List<Load> loads;
    private final List<Size> sold;
    private final double batteryOhms;
    private final double boxMetres;
    private final double together;

    OwnChoice(List<Load> loads, boolean gauge, double shortCircuitAmperes, double boxMetres) {
        this.loads = loads;
        this.sold = gauge ? PrintedRows.GAUGE : PrintedRows.METRIC;
        this.batteryOhms = 12.8 / shortCircuitAmperes;
        this.boxMetres = boxMetres;
        this.together = loads.stream().mapToDouble(Load::design).sum();
    }

    /** Null if nothing that is sold will do. */
    Found find() {
        for (boolean[] blades : new boolean[][] {{true, true}, {false, true}, {false, false}}) {
            Found found = loads.size() == 1 ? single(blades[1]) : many(blades[0], blades[1]);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private static double least(double amperes, boolean lasting) {
        return amperes / Math.min(0.95, (lasting ? PrintedRows.HOURS : 1) * PrintedRows.WARM);
    }

    private static Double rating(boolean blade, double least) {
        return (blade ? PrintedRows.BLADE : PrintedRows.CLASS_T).stream().filter(each -> each >= least - 1e-9).findFirst().orElse(null);
    }

    private Found single(boolean blade) {
        Load load = loads.get(0);
        Double rating = rating(blade, least(load.design(), load.lasting()));
        for (double closeness : new double[] {0.95, 1}) {
            for (Size size : rating == null ? List.<Size>of() : sold) {
                double lead = 2 * 0.15 * PrintedRows.ohmsPerMetre(size, 40);
                double highest = 14.6 / (batteryOhms + 2 * 0.15 * PrintedRows.coldOhmsPerMetre(size));
                boolean breaks = !blade || highest <= PrintedRows.BLADE_BREAKS;
                boolean last = closeness < 1 || size == sold.get(sold.size() - 1);
                if (last && carries(size, rating, load) && keeps(List.of(size), lead, closeness) && opens(load, size, rating, lead) && breaks) {
                    return new Found(blade, rating, null, blade, List.of(rating), List.of(size));
                }
            }
        }
        return null;
    }

    private Found many(boolean mainBlade, boolean waysBlade) {
        List<Double> ratings = new ArrayList<>();
        for (Load load : loads) {
            ratings.add(rating(waysBlade, least(load.design(), load.lasting())));
        }
        if (ratings.contains(null)) {
            return null;
        }
        double largest = ratings.stream().mapToDouble(each -> each).max().orElseThrow();
        Double main = rating(mainBlade, Math.max(least(together, true), largest + 1e-6));
        for (double closeness : new double[] {0.95, 1}) {
            for (Size feed : main == null ? List.<Size>of() : sold) {
                List<Size> sizes = behind(feed, main, ratings, closeness);
                boolean last = closeness < 1 || feed == sold.get(sold.size() - 1);
                if (last && sizes != null && breaks(feed, mainBlade, waysBlade)) {
                    return new Found(mainBlade, main, feed, waysBlade, ratings, sizes);
                }
            }
        }
        return null;
    }

    /** The runs behind a feed; null if it is too thin for its device, loses more than half of what may be lost, or leaves too little for a run. */
    private List<Size> behind(Size feed, double main, List<Double> ratings, double closeness) {
        double feedOhms = 2 * boxMetres * PrintedRows.ohmsPerMetre(feed, 40);
        double leadOhms = 2 * 0.15 * PrintedRows.ohmsPerMetre(feed, 40);
        double strictest = loads.stream().mapToDouble(Load::allowed).min().orElseThrow();
        boolean thickest = feed == sold.get(sold.size() - 1);
        boolean fits = PrintedRows.ampacity(feed, false, "inside", "alone") >= main - 1e-9 && lowest(leadOhms + feedOhms) >= 2 * main;
        if (!fits || !thickest && together * feedOhms > strictest / 2) {
            return null;
        }
        List<Size> sizes = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
            Size least = null;
            for (Size size : sold) {
                boolean enough = carries(size, ratings.get(i), loads.get(i)) && opens(loads.get(i), size, ratings.get(i), leadOhms + feedOhms);
                least = least == null && enough ? size : least;
            }
            if (least == null) {
                return null;
            }
            sizes.add(least);
        }
        for (int i = 0; i < loads.size(); i++) {
            double left = 0.95 * loads.get(i).allowed() - loads.stream().mapToDouble(Load::kept).sum() * feedOhms;
            while (sizes.get(i) != sold.get(sold.size() - 1) && loads.get(i).kept() * ohms(i, sizes.get(i)) > left * (1 + 1e-9)) {
                sizes.set(i, sold.get(sold.indexOf(sizes.get(i)) + 1));
            }
        }
        return thickenUntilKept(sizes, leadOhms + feedOhms, closeness) ? sizes : null;
    }

    /** Each run is thickened until its own drop is kept, all others being what they are: less current could only lose less. */
    private boolean thickenUntilKept(List<Size> sizes, double ohmsBefore, double closeness) {
        for (boolean changed = true; changed;) {
            changed = false;
            List<Double> drops = drops(sizes, ohmsBefore);
            for (int i = 0; i < sizes.size(); i++) {
                int at = sold.indexOf(sizes.get(i));
                boolean last = at == sold.size() - 1;
                if (drops.get(i) > (last ? closeness : 0.95) * loads.get(i).allowed() * (1 + 1e-9)) {
                    if (last) {
                        return false;
                    }
                    sizes.set(i, sold.get(at + 1));
                    changed = true;
                }
            }
        }
        return true;
    }

    private boolean keeps(List<Size> sizes, double ohmsBefore, double closeness) {
        List<Double> drops = drops(sizes, ohmsBefore);
        return drops.get(0) <= closeness * loads.get(0).allowed() * (1 + 1e-9);
    }

    /** What each load loses from the battery on, the worse of both ends of the voltage, all on; by going round until nothing changes. */
    private List<Double> drops(List<Size> sizes, double ohmsBefore) {
        List<Double> worst = new ArrayList<>();
        for (double volts : new double[] {10.5, 14.6}) {
            double[] at = new double[loads.size()];
            Arrays.fill(at, volts);
            for (int round = 0; round < 200; round++) {
                double sum = 0;
                for (int i = 0; i < at.length; i++) {
                    sum += loads.get(i).current(Math.max(1, at[i]));
                }
                for (int i = 0; i < at.length; i++) {
                    at[i] = volts - ohmsBefore * sum - ohms(i, sizes.get(i)) * loads.get(i).current(Math.max(1, at[i]));
                }
            }
            for (int i = 0; i < at.length; i++) {
                double drop = volts - at[i];
                if (worst.size() <= i) {
                    worst.add(drop);
                } else {
                    worst.set(i, Math.max(worst.get(i), drop));
                }
            }
        }
        return worst;
    }

    private double ohms(int load, Size size) {
        return 2 * loads.get(load).metres() * PrintedRows.ohmsPerMetre(size, PrintedRows.degrees(loads.get(load).place()));
    }

    /** By its ampacity; insulation for 60 °C inside if any size of it will do, else for 105 °C. */
    private boolean carries(Size size, double rating, Load load) {
        boolean plain = load.place().equals("inside")
                && PrintedRows.ampacity(sold.get(sold.size() - 1), false, load.place(), load.beside()) >= rating - 1e-9;
        return PrintedRows.ampacity(size, !plain, load.place(), load.beside()) >= rating - 1e-9;
    }

    /** A short circuit at the far end drives at least twice the rating. */
    private boolean opens(Load load, Size size, double rating, double ohmsBefore) {
        return lowest(ohmsBefore + 2 * load.metres() * PrintedRows.ohmsPerMetre(size, PrintedRows.degrees(load.place()))) >= 2 * rating;
    }

    private double lowest(double ohms) {
        return 10.5 / (batteryOhms + ohms);
    }

    private boolean breaks(Size feed, boolean mainBlade, boolean waysBlade) {
        double cold = PrintedRows.coldOhmsPerMetre(feed);
        boolean main = !mainBlade || 14.6 / (batteryOhms + 2 * 0.15 * cold) <= PrintedRows.BLADE_BREAKS;
        boolean ways = !waysBlade || 14.6 / (batteryOhms + 2 * (0.15 + boxMetres) * cold) <= PrintedRows.BLADE_BREAKS;
        return main && ways;
    }
}
