package loomwright.circuit.hazard;

import java.util.List;

/** Every kind of mistake that is planted. */
final class Hazards {
    /** Kinds of one subject, as a page for readers lists them. */
    record Subject(String title, List<Hazard> kinds) {}

    static final List<Subject> SUBJECTS = List.of(
            new Subject("Conductors", ConductorHazards.ALL),
            new Subject("Fuse-links and breakers", DeviceHazards.ALL),
            new Subject("Short circuits", FaultHazards.ALL),
            new Subject("What stands where", PlaceHazards.ALL),
            new Subject("Ratings and joints", RatingHazards.ALL),
            new Subject("Switches, relays and their triggers", SwitchHazards.ALL),
            new Subject("Sources of charge", SourceHazards.ALL),
            new Subject("Loads and the day's energy", LoadHazards.ALL));

    static final List<Hazard> ALL = SUBJECTS.stream().flatMap(subject -> subject.kinds().stream()).toList();

    private Hazards() {}
}
