package loomwright.circuit.hazard;

import java.util.List;
import java.util.stream.Stream;
import loomwright.circuit.Circuit;

/** What advice says about the battery and what charges it. */
final class SupplyWays {
    static final List<Way> ALL = List.of(
            Way.of("larger battery", job -> job.scaled(List.of(job.wiring().battery), List.of("capacity"), 1.4)),
            Way.of("battery that may give more", job -> job.scaled(List.of(job.wiring().battery), List.of("battery-limit"), 1.4)),
            Way.of("battery that takes more", job -> job.scaled(List.of(job.wiring().battery), List.of("charge-current-most"), 1.4)),
            Way.of("larger panel", SupplyWays::sun),
            Way.of("Set the charger to what", SupplyWays::voltage),
            Way.of("Set the charger to less", job -> job.scaled(job.wiring().all("source"), List.of("charge-current"), 0.7)),
            Way.of("its own run from the battery", SupplyWays::ownRun),
            Way.of("smaller rating at that end", job -> job.with(
                    job.finding().part(), "device-at-source", Job.descending().map(rating -> rating + " A"))),
            Way.of("where the run leaves it", job -> job.with(
                    job.finding().part(), "device-at-source", Job.descending().map(rating -> rating + " A"))));

    private SupplyWays() {}

    private static Stream<Circuit> sun(Job job) {
        Stream<Circuit> battery = job.scaled(List.of(job.wiring().battery), List.of("panel-power"), 1.4);
        return Stream.concat(battery, job.scaled(job.wiring().all("source"), List.of("panel-power", "charge-current"), 1.4));
    }

    private static Stream<Circuit> voltage(Job job) {
        String field = Bench.has(Bench.kind(job.circuit(), job.finding().part()), "charge-voltage") ? "charge-voltage" : "highest-voltage";
        return job.with(job.finding().part(), field, Job.text(job.finding().limit(), 1));
    }

    /** The run of the source goes to the battery, behind a new device; what then feeds nothing is taken out. */
    private static Stream<Circuit> ownRun(Job job) {
        return job.wiring().all("source").stream().flatMap(source -> {
            String first = source;
            while (!List.of("supply", "protection").contains(Bench.kind(job.circuit(), Bench.fedBy(job.circuit(), first)))) {
                first = Bench.fedBy(job.circuit(), first);
            }
            String old = Bench.fedBy(job.circuit(), first);
            Circuit moved = Bench.moved(job.circuit(), first, job.wiring().battery);
            Circuit rest = old.equals(job.wiring().battery) || !new Wiring(moved).behind(old).isEmpty() ? moved : Bench.without(moved, old);
            return new Job(rest, job.finding()).deviceBefore(first);
        });
    }
}
