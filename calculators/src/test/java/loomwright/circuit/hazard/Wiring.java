package loomwright.circuit.hazard;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.quantity.Units;

/** A right circuit as a person with a pencil sees it: what guards what, and roughly which currents flow. Not by the program under test. */
final class Wiring {
    /** Standard ratings of fuse-links. */
    private static final double[] RATINGS = {1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100, 125, 150, 200, 250, 300};

    final Circuit circuit;
    final String battery;

    Wiring(Circuit circuit) {
        this.circuit = circuit;
        this.battery = Bench.ids(circuit).get(0);
    }

    List<String> all(String kind) {
        List<String> found = new ArrayList<>();
        for (String id : Bench.ids(circuit)) {
            if (Bench.kind(circuit, id).equals(kind)) {
                found.add(id);
            }
        }
        return found;
    }

    boolean is(String id, String kind) {
        return Bench.kind(circuit, id).equals(kind);
    }

    /** In the base unit: amperes, volts, ohms, watts, metres. NaN if nothing was entered. */
    double number(String id, String field) {
        return Bench.quantity(circuit, id, field) == null ? Double.NaN : Bench.quantity(circuit, id, field).base();
    }

    double rating(String device) {
        return number(device, "rating");
    }

    /** The nearest device before a part, or an empty text. */
    String deviceBefore(String id) {
        String at = Bench.fedBy(circuit, id);
        while (!at.isEmpty() && !is(at, "protection")) {
            at = Bench.fedBy(circuit, at);
        }
        return at;
    }

    /** The smallest rating on the way to a part: that device guards it, whichever it is. Infinite if there is none. */
    double ratingBefore(String id) {
        double smallest = Double.POSITIVE_INFINITY;
        for (String device = deviceBefore(id); !device.isEmpty(); device = deviceBefore(device)) {
            smallest = Math.min(smallest, rating(device));
        }
        return smallest;
    }

    List<String> behind(String id) {
        List<String> behind = new ArrayList<>();
        for (String other : Bench.ids(circuit)) {
            String fedBy = Bench.fedBy(circuit, other);
            if (fedBy.equals(id) || behind.contains(fedBy)) {
                behind.add(other);
            }
        }
        return behind;
    }

    List<String> loadsBehind(String id) {
        List<String> loads = new ArrayList<>(behind(id));
        loads.removeIf(part -> !is(part, "load"));
        return loads;
    }

    /** The conductors of which a device is the nearest one before them. */
    List<String> guarded(String device) {
        List<String> guarded = new ArrayList<>(behind(device));
        guarded.removeIf(part -> !is(part, "conductor") || !deviceBefore(part).equals(device));
        return guarded;
    }

    double squareMillimetres(String conductor) {
        return Bench.quantity(circuit, conductor, "size").in(Units.SQUARE_MILLIMETRE).value();
    }

    boolean metric(String conductor) {
        return Bench.quantity(circuit, conductor, "size").unit() == Units.SQUARE_MILLIMETRE;
    }

    double ampacity(String conductor, String insulation) {
        return Copper.ampacity(squareMillimetres(conductor), metric(conductor), insulation);
    }

    double ampacity(String conductor) {
        return ampacity(conductor, Bench.text(circuit, conductor, "insulation-temperature"));
    }

    /** The least that a conductor guarded by a device carries; infinite if it guards none. */
    double leastAmpacity(String device) {
        return guarded(device).stream().mapToDouble(this::ampacity).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** The largest lasting current through a part: all that is behind it, at the lowest voltage, a twentieth lost on the way. */
    double amperes(String id) {
        double amperes = is(id, "load") ? ofLoad(id) : 0;
        for (String load : loadsBehind(id)) {
            amperes += ofLoad(load);
        }
        return amperes;
    }

    private double ofLoad(String load) {
        double current = number(load, "current");
        double lowest = 0.95 * number(battery, "lowest-voltage");
        double volts = number(load, "rated-voltage");
        if (Bench.text(circuit, load, "load-kind").equals("resistive")) {
            return number(load, "power") / volts * number(battery, "highest-voltage") / volts;
        }
        return Double.isNaN(current) ? number(load, "power") / lowest : current;
    }

    /** Milliohms from inside the battery to a part and through it, with copper at a temperature. */
    double milliohms(String id, double celsius) {
        double own = switch (Bench.kind(circuit, id)) {
            case "supply" -> 1000 * number(id, "battery-voltage") / number(id, "short-circuit-current");
            case "conductor" -> Copper.milliohms(squareMillimetres(id), number(id, "route-length"), celsius);
            case "protection" -> Double.isNaN(number(id, "cold-resistance")) ? 0 : 1000 * number(id, "cold-resistance");
            default -> 0;
        };
        return own + (Bench.fedBy(circuit, id).isEmpty() ? 0 : milliohms(Bench.fedBy(circuit, id), celsius));
    }

    /** The highest current into a short circuit at the feeding end of a device. */
    double prospective(String device) {
        return number(battery, "highest-voltage") / milliohms(Bench.fedBy(circuit, device), 20) * 1000;
    }

    static double nextAbove(double amperes) {
        for (double rating : RATINGS) {
            if (rating > amperes * 1.001) {
                return rating;
            }
        }
        throw new AssertionError("no rating above " + amperes);
    }

    /** The largest standard rating below; 0 if there is none. */
    static double nextBelow(double amperes) {
        double found = 0;
        for (double rating : RATINGS) {
            found = rating < amperes * 0.999 ? rating : found;
        }
        return found;
    }
}
