package loomwright.circuit.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loomwright.circuit.Circuit;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** A finding and the circuit it lies in, as the one sees them who does what it says. */
record Job(Circuit circuit, Bench.Named finding) {
    /** Standard ratings of devices, smallest first. */
    private static final List<Double> RATINGS = List.of(
            1., 2., 3., 5., 7.5, 10., 15., 20., 25., 30., 40., 50., 60., 70., 80., 100., 125., 150., 175., 200., 225., 250., 300., 350., 400.);

    private boolean is(String id, String kind) {
        return !id.isEmpty() && Bench.kind(circuit, id).equals(kind);
    }

    /** The device it is about: the part itself, the other, or the one before the part. */
    String device() {
        if (is(finding.part(), "protection")) {
            return finding.part();
        }
        return is(finding.other(), "protection") ? finding.other() : wiring().deviceBefore(finding.part());
    }

    /** What stands behind that device and is too weak: the other part, or the part itself. */
    String weak() {
        return is(finding.part(), "protection") && !finding.other().isEmpty() ? finding.other() : finding.part();
    }

    Wiring wiring() {
        return new Wiring(circuit);
    }

    /** The run it is about; without one the runs on the way to the part, from the battery. */
    List<String> runs() {
        return is(weak(), "conductor") ? List.of(weak()) : way();
    }

    /** The runs on the way to the part, itself among them, from the battery. */
    List<String> way() {
        List<String> runs = new ArrayList<>();
        for (String at = weak(); !at.isEmpty(); at = Bench.fedBy(circuit, at)) {
            if (is(at, "conductor")) {
                runs.add(0, at);
            }
        }
        return runs;
    }

    /** The runs that the device it is about guards. */
    List<String> guardedRuns() {
        return wiring().guarded(device());
    }

    /** The loads behind the part it is about, or itself, and panels with what else hangs on them. */
    List<String> loads() {
        List<String> loads = new ArrayList<>(wiring().behind(finding.part()));
        loads.add(finding.part());
        loads.removeIf(part -> !is(part, "load") && !is(part, "panel"));
        return loads;
    }

    /** The circuit with another text in a field of a part, for each text that can be used. */
    Stream<Circuit> with(String id, String field, Stream<String> texts) {
        return texts.map(text -> Bench.tried(circuit, id, field, text)).filter(Objects::nonNull);
    }

    Stream<Circuit> with(String id, String field, String... texts) {
        return with(id, field, Stream.of(texts));
    }

    /** The circuit with one text in a field of all these parts. */
    Stream<Circuit> allOf(List<String> ids, String field, String text) {
        Circuit changed = circuit;
        for (String id : ids) {
            changed = Bench.set(changed, id, field, text);
        }
        return Stream.of(changed);
    }

    /** The part and its other, each with a field of its own rating raised by steps. */
    Stream<Circuit> raised(String kind, String field) {
        return Stream.of(finding.part(), finding.other()).filter(id -> is(id, kind)).flatMap(
                id -> with(id, field, RATINGS.stream().map(rating -> rating + " A")));
    }

    /** Every part of a kind with a field scaled, all at once, by powers of a factor. */
    Stream<Circuit> scaled(List<String> ids, List<String> fields, double factor) {
        return IntStream.rangeClosed(1, 18).mapToObj(power -> {
            Circuit changed = circuit;
            for (String id : ids) {
                for (String field : fields) {
                    Quantity was = Bench.quantity(circuit, id, field);
                    Circuit next = was == null ? null : Bench.tried(changed, id, field, text(was, Math.pow(factor, power)));
                    changed = next == null ? changed : next;
                }
            }
            return changed;
        });
    }

    /** The ratings of a device below its own, largest first. */
    Stream<Circuit> smaller(String device) {
        double was = wiring().rating(device);
        return descending().filter(rating -> rating < was).flatMap(rating -> with(device, "rating", rating + " A"));
    }

    Stream<Circuit> larger(String device) {
        double was = wiring().rating(device);
        return RATINGS.stream().filter(rating -> rating > was).flatMap(rating -> with(device, "rating", rating + " A"));
    }

    static Stream<Double> descending() {
        return IntStream.range(0, RATINGS.size()).mapToObj(i -> RATINGS.get(RATINGS.size() - 1 - i));
    }

    /** A fuse of high breaking capacity put before a part, of every rating, largest first. */
    Stream<Circuit> deviceBefore(String id) {
        if (id.equals(wiring().battery)) {
            return Stream.empty();
        }
        Circuit inserted = Bench.insertedBefore(circuit, "protection", id);
        String fresh = Bench.fresh(circuit, inserted);
        return descending().map(rating -> Bench.set(classT(inserted, fresh), fresh, "rating", rating + " A"));
    }

    /** A device as a fuse of high breaking capacity. */
    static Circuit classT(Circuit circuit, String device) {
        Circuit kind = Bench.set(circuit, device, "device", "class-t");
        return Bench.set(Bench.set(kind, device, "breaking-capacity", "20 kA"), device, "rated-voltage", "125 V");
    }

    /** A quantity times a factor, as one would type it. */
    static String text(Quantity was, double factor) {
        String number = String.format(Locale.ROOT, "%.6f", was.value() * factor);
        return was.unit() == Units.ONE ? number : number + " " + was.unit().symbol();
    }
}
