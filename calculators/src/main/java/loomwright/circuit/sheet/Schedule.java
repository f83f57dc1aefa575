package loomwright.circuit.sheet;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Conductor;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.Protection;
import loomwright.circuit.check.Examination;
import loomwright.circuit.solve.Solved;
import loomwright.conductor.CarryingCapacity;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The schedule of circuits: one row a fuse-link or breaker, in the order of the circuit. */
public final class Schedule {
    private final Examination examination;
    private final Designations designations;

    private Schedule(Examination examination) {
        this.examination = examination;
        this.designations = Designations.of(examination.circuit());
    }

    /** The schedule of a circuit that has been understood. */
    public static List<ScheduleRow> of(Examination examination) {
        Schedule schedule = new Schedule(examination);
        List<ScheduleRow> rows = new ArrayList<>();
        for (Node node : examination.circuit().nodes()) {
            if (node.figures() instanceof Protection protection) {
                rows.add(schedule.row(node, protection));
            }
        }
        return List.copyOf(rows);
    }

    private ScheduleRow row(Node device, Protection protection) {
        List<String> conductors = new ArrayList<>();
        List<String> loads = new ArrayList<>();
        Quantity ampacity = null;
        Quantity lowest = examination.faultCurrents().lowest(device);
        Quantity worst = null;
        for (Node node : device.protectedBehind()) {
            lowest = smaller(lowest, examination.faultCurrents().lowest(node));
            if (node.figures() instanceof Conductor conductor) {
                conductors.add(designations.of(node.id()) + ", " + conductor.words());
                ampacity = smaller(ampacity, ampacity(conductor));
            } else if (node.kind() == PartKind.LOAD) {
                loads.add(designations.titled(node.id()));
                worst = larger(worst, drop(node));
            }
        }
        return new ScheduleRow(
                device.id(), designations.of(device.id()), designations.title(device.id()), protection.words(), List.copyOf(conductors),
                List.copyOf(loads), Quantity.of(examination.solution().designAmperes(device), Units.AMPERE), ampacity,
                examination.faultCurrents().highest(device.parent()), lowest, worst);
    }

    private Quantity drop(Node load) {
        Solved worst = examination.solution().worstFor(load);
        return worst == null ? null : Quantity.of(worst.drop(load), Units.VOLT);
    }

    private static Quantity ampacity(Conductor conductor) {
        CarryingCapacity capacity = conductor.capacity();
        return capacity.isRated() ? capacity.value() : null;
    }

    private static Quantity smaller(Quantity one, Quantity other) {
        return one == null || other != null && other.base() < one.base() ? other : one;
    }

    private static Quantity larger(Quantity one, Quantity other) {
        return one == null || other != null && other.base() > one.base() ? other : one;
    }
}
