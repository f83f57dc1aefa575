package loomwright.circuit.check;

import java.util.List;

/** Every check of a circuit. */
final class Checks {
    static final List<PartCheck> ALL = List.of(
            new OperatingPointCheck(),
            new UnprotectedCheck(),
            new CarryingCheck(),
            new GuardCheck(),
            new SystemVoltageCheck(),
            new SourceCheck(),
            new IsolatorCheck(),
            new PortsCheck(),
            new JointCheck(),
            new AmpacityCheck(),
            new HeatCheck(),
            new BreakingCheck(),
            new SelectivityCheck(),
            new SwitchCheck(),
            new DutyCheck(),
            new LoadCheck(),
            new StartCheck(),
            new DayCheck());

    private Checks() {}
}
