package loomwright.circuit.check;

import java.util.List;

/** Every check of a circuit. */
final class Checks {
    static final List<PartCheck> ALL = List.of(
            new OperatingPointCheck(),
            new CarryingCheck(),
            new AmpacityCheck(),
            new HeatCheck(),
            new BreakingCheck(),
            new SelectivityCheck(),
            new SwitchCheck(),
            new LoadCheck(),
            new StartCheck(),
            new DayCheck());

    private Checks() {}
}
