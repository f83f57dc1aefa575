package loomwright.circuit.hazard;

import java.util.List;
import java.util.stream.Stream;
import loomwright.circuit.Circuit;

/** What advice says about the ratings of what a current flows through. */
final class RatingWays {
    private static final String CONTINUOUS = "continuous-current";

    static final List<Way> ALL = List.of(
            Way.of("panel for more", job -> job.raised("panel", "panel-limit")),
            Way.of("outlet for more", job -> job.raised("load", "outlet-rating")),
            Way.of("terminal or joint for more", job -> job.raised("joint", "terminal-rating")),
            Way.of("holder for more", job -> job.raised("protection", "holder-rating")),
            Way.of("switch or relay for more", job -> Stream.concat(job.raised("switch", CONTINUOUS), job.raised("isolator", CONTINUOUS))),
            Way.of("switching device for more", job -> job.raised("switch", CONTINUOUS)),
            Way.of("isolating switch for more", job -> job.raised("isolator", CONTINUOUS)),
            Way.of("rated for more on direct current", job -> job.raised("switch", CONTINUOUS)),
            Way.of("joint anew", RatingWays::joint),
            Way.of("larger heat sink", job -> job.scaled(List.of(job.finding().part()), List.of("junction-to-air"), 0.7)),
            Way.of("switch of less resistance", job -> job.scaled(List.of(job.finding().part()), List.of("on-resistance"), 0.7)));

    private RatingWays() {}

    /** The joint it lies at, or one on the way to what gets too little. */
    private static Stream<Circuit> joint(Job job) {
        return job.wiring().all("joint").stream()
                .filter(joint -> joint.equals(job.finding().part()) || job.wiring().behind(joint).contains(job.finding().part()))
                .flatMap(joint -> job.with(joint, "joint-resistance", "0.2 mΩ"));
    }
}
