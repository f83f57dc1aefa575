package loomwright.circuit.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loomwright.circuit.Circuit;

/** What advice says about conductors. */
final class ConductorWays {
    static final List<Way> ALL = List.of(
            Way.of("thicker conductor", ConductorWays::thicker),
            Way.of("thicker wire", job -> job.with(job.finding().part(), "trigger-size", "0.75 mm²", "1 mm²", "1.5 mm²", "2.5 mm²", "4 mm²", "6 mm²")),
            Way.of("nsulation of a higher rating", ConductorWays::insulation),
            Way.of("cooler place", ConductorWays::cooler),
            Way.of("Apart from other conductors", ConductorWays::apart),
            Way.of("leave the field empty", job -> job.with(job.finding().part(), "sheet-ampacity", "")),
            Way.of("shorter", ConductorWays::shorter),
            Way.of("in a sheath", job -> job.allOf(job.way(), "sheath", "yes")));

    private ConductorWays() {}

    private static Stream<Circuit> each(Job job, String field, String... texts) {
        return job.runs().stream().flatMap(run -> job.with(run, field, texts));
    }

    /** One run by itself; then all of them on the way together, as one does who follows the finding from one run to the next. */
    private static Stream<Circuit> thicker(Job job) {
        Stream<Circuit> single = job.runs().stream().flatMap(run -> allThicker(job, List.of(run)));
        return Stream.concat(single, allThicker(job, job.way()));
    }

    /** All of these runs thicker by one size, by two, and so on. */
    static Stream<Circuit> allThicker(Job job, List<String> runs) {
        return IntStream.rangeClosed(1, 9).mapToObj(steps -> {
            Circuit changed = job.circuit();
            for (String run : runs) {
                Circuit next = Bench.tried(changed, run, "size", thicker(job, run, steps));
                changed = next == null ? changed : next;
            }
            return changed;
        });
    }

    private static String thicker(Job job, String run, int steps) {
        boolean metric = job.wiring().metric(run);
        double area = job.wiring().squareMillimetres(run);
        List<String> larger = new ArrayList<>();
        for (String size : metric ? Copper.METRIC : Copper.GAUGES) {
            if ((metric ? Double.parseDouble(size) : Copper.area(size)) > area * 1.001) {
                larger.add(size + (metric ? " mm²" : " AWG"));
            }
        }
        return larger.isEmpty() ? Bench.text(job.circuit(), run, "size") : larger.get(Math.min(steps, larger.size()) - 1);
    }

    private static Stream<Circuit> insulation(Job job) {
        return each(job, "insulation-temperature", "t75", "t80", "t90", "t105", "t125", "t200");
    }

    private static Stream<Circuit> cooler(Job job) {
        Stream<Circuit> runs = each(job, "ambient", "40 °C", "30 °C");
        Stream<Circuit> outside = each(job, "engine-space", "no");
        return Stream.of(runs, outside, job.with(job.finding().part(), "switch-ambient", "20 °C")).flatMap(stream -> stream);
    }

    /** By itself, and with what the sentence before it says of insulation. */
    private static Stream<Circuit> apart(Job job) {
        List<Circuit> apart = each(job, "conductors-together", "2").toList();
        return Stream.concat(apart.stream(), apart.stream().flatMap(circuit -> insulation(new Job(circuit, job.finding()))));
    }

    private static Stream<Circuit> shorter(Job job) {
        Stream<Circuit> single = job.runs().stream().flatMap(run -> job.scaled(List.of(run), List.of("route-length"), 0.7));
        Stream<Circuit> trigger = job.scaled(List.of(job.finding().part()), List.of("trigger-route-length"), 0.7);
        return Stream.of(single, job.scaled(job.way(), List.of("route-length"), 0.7), trigger).flatMap(stream -> stream);
    }
}
