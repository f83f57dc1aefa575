package loomwright.circuit.hazard;

import java.util.List;
import java.util.stream.Stream;

/** Every kind of mistake that is planted. */
final class Hazards {
    static final List<Hazard> ALL = Stream.of(
                    ConductorHazards.ALL, DeviceHazards.ALL, FaultHazards.ALL, PlaceHazards.ALL, RatingHazards.ALL, SwitchHazards.ALL,
                    SourceHazards.ALL, LoadHazards.ALL)
            .flatMap(List::stream)
            .toList();

    private Hazards() {}
}
