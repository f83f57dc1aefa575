package loomwright.circuit.hazard;

import java.util.List;
import java.util.stream.Stream;
import loomwright.circuit.Circuit;

/**
 * Something that advice tells the reader to do.
 *
 * @param phrase how the advice says it
 * @param doing the circuits that come of doing it, the smallest change first
 */
record Way(String phrase, Doing doing) {
    /** Does what is said; a person tries the next size if one does not do. */
    interface Doing {
        Stream<Circuit> done(Job job);
    }

    /** Every phrase that a test can follow. Advice in other words fails the test until a way is written for it here. */
    static final List<Way> ALL = Stream.of(ConductorWays.ALL, DeviceWays.ALL, RatingWays.ALL, LoadWays.ALL, SupplyWays.ALL)
            .flatMap(List::stream)
            .toList();

    static Way of(String phrase, Doing doing) {
        return new Way(phrase, doing);
    }

    static List<Way> in(String remedy) {
        return ALL.stream().filter(way -> remedy.contains(way.phrase)).toList();
    }
}
