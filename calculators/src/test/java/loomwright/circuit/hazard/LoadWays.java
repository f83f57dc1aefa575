package loomwright.circuit.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import loomwright.circuit.Circuit;

/** What advice says about loads. */
final class LoadWays {
    private static final List<String> TAKES = List.of("power", "current", "ports-power", "start-current", "present-load");

    static final List<Way> ALL = List.of(
            Way.of("less load", LoadWays::less),
            Way.of("fewer loads", LoadWays::less),
            Way.of("asks for less", LoadWays::less),
            Way.of("raw less at once", LoadWays::less),
            Way.of("less on at once", LoadWays::lessAtOnce),
            Way.of("gentler start", job -> job.scaled(List.of(job.finding().part()), List.of("start-current", "start-time"), 0.7)),
            Way.of("one at a time", job -> Stream.of(job.finding().part(), job.finding().other()).flatMap(id -> job.with(id, "use", "alone"))),
            Way.of("off the panel", job -> job.scaled(List.of(job.finding().part()), List.of("present-load"), 0.7)),
            Way.of("se less", job -> job.scaled(job.wiring().all("load"), List.of("hours"), 0.7)),
            Way.of("witch off what nobody uses", job -> job.scaled(job.wiring().all("load"), List.of("standing-current"), 0.5)),
            Way.of("load made for this battery", job -> job.with(job.finding().part(), "rated-voltage", "12 V", "24 V")),
            Way.of("the highest voltage it stands, and enter it", LoadWays::stands),
            Way.of("stop using it before the battery is that empty", LoadWays::sooner),
            Way.of("leave it empty", job -> job.with(job.finding().part(), "converter-efficiency", "")),
            Way.of("fewer ports at once", job -> job.scaled(List.of(job.finding().part()), List.of("ports-power"), 0.7)),
            Way.of("that gives more together", job -> job.scaled(List.of(job.finding().part()), List.of("ports-limit"), 1.4)));

    private LoadWays() {}

    private static Stream<Circuit> less(Job job) {
        return less(job, job.loads());
    }

    private static Stream<Circuit> lessAtOnce(Job job) {
        List<String> all = new ArrayList<>(job.wiring().all("load"));
        all.addAll(job.wiring().all("panel"));
        return Stream.concat(less(job, job.loads()), less(job, all));
    }

    private static Stream<Circuit> less(Job job, List<String> ids) {
        return Stream.concat(job.scaled(ids, TAKES, 0.7), job.scaled(ids, List.of("resistance"), 1.4));
    }

    private static Stream<Circuit> stands(Job job) {
        return job.with(job.finding().part(), "highest-working-voltage", Job.text(job.finding().figure(), 1.1));
    }

    /** The battery counts as empty at a higher voltage. */
    private static Stream<Circuit> sooner(Job job) {
        return job.scaled(List.of(job.wiring().battery), List.of("lowest-voltage"), 1.01);
    }
}
