package loomwright.circuit.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import loomwright.circuit.Circuit;

/** What advice says about fuse-links, breakers and isolating switches. */
final class DeviceWays {
    static final List<Way> ALL = List.of(
            Way.of("smaller rating", job -> job.smaller(job.device())),
            Way.of("that guards what is behind it", job -> job.smaller(job.finding().part())),
            Way.of("larger rating", job -> job.larger(job.device())),
            Way.of("larger breaker", job -> job.larger(job.device())),
            Way.of("thicker conductor with it", DeviceWays::largerWithRuns),
            Way.of("thicker conductor where it asks for one", DeviceWays::largerWithRuns),
            Way.of("larger one before it", job -> job.larger(job.wiring().deviceBefore(job.finding().part()))),
            Way.of("slower kind", DeviceWays::kinds),
            Way.of("a device before", job -> job.deviceBefore(job.weak())),
            Way.of("one of its own before", job -> job.deviceBefore(job.weak())),
            Way.of("a device at the battery", DeviceWays::atBattery),
            Way.of("between the battery and", DeviceWays::atBattery),
            Way.of("opens sooner", DeviceWays::sooner),
            Way.of("lets less through", job -> job.scaled(List.of(job.device()), List.of("clearing-i2t"), 0.5)),
            Way.of("greater breaking capacity", DeviceWays::breaking),
            Way.of("made for this direct voltage", job -> Stream.of(Job.classT(job.circuit(), job.device()))),
            Way.of("an isolating switch near the battery", DeviceWays::isolator),
            Way.of("where the trigger wire begins", job -> job.with(job.finding().part(), "fuse-rating", "2 A")),
            Way.of("Choose the part its trigger wire comes from", DeviceWays::trigger),
            Way.of("from a part that is live without it", DeviceWays::trigger));

    private DeviceWays() {}

    private static Stream<Circuit> largerWithRuns(Job job) {
        return job.larger(job.device()).flatMap(
                larger -> ConductorWays.allThicker(new Job(larger, job.finding()), job.guardedRuns()));
    }

    /** Every other kind with a figure for its breaking capacity, of the same rating. */
    private static Stream<Circuit> kinds(Job job) {
        return Stream.of("large-blade", "marine-breaker", "class-t", "bolted-window")
                .map(kind -> Bench.tried(Job.classT(job.circuit(), job.device()), job.device(), "device", kind))
                .filter(Objects::nonNull);
    }

    private static Stream<Circuit> sooner(Job job) {
        Stream<Circuit> curve = job.scaled(List.of(job.device()), List.of("opening-time"), 0.5);
        return Stream.concat(curve, job.with(job.device(), "device", "blade", "large-blade"));
    }

    private static Stream<Circuit> breaking(Job job) {
        Job classT = new Job(Job.classT(job.circuit(), job.device()), job.finding());
        Job sameKind = new Job(Bench.set(job.circuit(), job.device(), "rated-voltage", "125 V"), job.finding());
        return Stream.concat(
                classT.with(job.device(), "breaking-capacity", "20 kA", "50 kA", "100 kA"), sameKind.with(job.device(), "breaking-capacity", "20 kA", "50 kA"));
    }

    /** Before the first part on the way from the battery, or before the part itself. */
    private static Stream<Circuit> atBattery(Job job) {
        List<String> way = new ArrayList<>();
        for (String at = job.finding().part(); !at.equals(job.wiring().battery); at = Bench.fedBy(job.circuit(), at)) {
            way.add(0, at);
        }
        return way.stream().flatMap(job::deviceBefore);
    }

    /** Before the part it names, or as near behind the battery as it goes. */
    private static Stream<Circuit> isolator(Job job) {
        Circuit circuit = job.circuit();
        List<String> places = new ArrayList<>(List.of(job.finding().part()));
        places.addAll(job.wiring().behind(job.finding().part()));
        return places.stream().map(place -> Bench.insertedBefore(circuit, "isolator", place));
    }

    private static Stream<Circuit> trigger(Job job) {
        String part = job.finding().part();
        List<String> behind = job.wiring().behind(part);
        return Bench.ids(job.circuit()).stream()
                .filter(id -> !id.equals(part) && !behind.contains(id))
                .filter(id -> List.of("protection", "switch", "panel").contains(Bench.kind(job.circuit(), id)))
                .map(id -> Bench.triggered(job.circuit(), part, id));
    }
}
