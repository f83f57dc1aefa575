package loomwright.circuit.sheet;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Conductor;
import loomwright.circuit.Installation;
import loomwright.circuit.check.Examination;
import loomwright.circuit.solve.Solved;
import loomwright.conductor.RatedCurrent;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Refusal;

/** The schedule of circuits: one row a fuse-link or breaker, in the order of the circuit. */
public final class Schedule {
    private final Examination examination;
    private final Installation installation;
    private final Designations designations;

    private Schedule(Examination examination) {
        this.examination = examination;
        this.installation = examination.solution().installation();
        this.designations = Designations.of(examination.circuit());
    }

    /** The schedule of a circuit that has been understood. */
    public static List<ScheduleRow> of(Examination examination) {
        Schedule schedule = new Schedule(examination);
        List<ScheduleRow> rows = new ArrayList<>();
        for (int i = 0; i < schedule.installation.size(); i++) {
            if (schedule.installation.protection(i) != null) {
                rows.add(schedule.row(i));
            }
        }
        return List.copyOf(rows);
    }

    private ScheduleRow row(int device) {
        List<String> conductors = new ArrayList<>();
        List<String> loads = new ArrayList<>();
        Quantity ampacity = null;
        Quantity lowest = examination.faultCurrents().lowest(device);
        Quantity worst = null;
        for (int i = device + 1; i < installation.size(); i++) {
            if (installation.protection(i) != null || installation.deviceBefore(i) != device) {
                continue;
            }
            lowest = smaller(lowest, examination.faultCurrents().lowest(i));
            if (installation.conductor(i) != null) {
                conductors.add(designations.of(installation.part(i).id()) + ", " + installation.conductor(i).words());
                ampacity = smaller(ampacity, ampacity(installation.conductor(i)));
            } else if (installation.load(i) != null) {
                loads.add(designations.titled(installation.part(i).id()));
                worst = larger(worst, drop(i));
            }
        }
        String id = installation.part(device).id();
        return new ScheduleRow(
                id, designations.of(id), designations.title(id), installation.protection(device).words(), List.copyOf(conductors),
                List.copyOf(loads), Quantity.of(examination.solution().designAmperes(device), Units.AMPERE), ampacity,
                examination.faultCurrents().highest(installation.feeding(device)), lowest, worst);
    }

    private Quantity drop(int load) {
        Solved worst = examination.solution().worstFor(load);
        return worst == null ? null : Quantity.of(worst.drop(load), Units.VOLT);
    }

    private static Quantity ampacity(Conductor conductor) {
        try {
            RatedCurrent rated = conductor.ampacity();
            return rated == null ? null : rated.value();
        } catch (Refusal notCovered) {
            return null;
        }
    }

    private static Quantity smaller(Quantity one, Quantity other) {
        return one == null || other != null && other.base() < one.base() ? other : one;
    }

    private static Quantity larger(Quantity one, Quantity other) {
        return one == null || other != null && other.base() > one.base() ? other : one;
    }
}
