package loomwright.circuit.check;

import loomwright.circuit.Installation;
import loomwright.circuit.Protection;
import loomwright.circuit.solve.FaultCurrents;
import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Verdict;

/** Whether each device can break the highest prospective current at its place. */
final class BreakingCheck {
    private BreakingCheck() {}

    static void add(Installation installation, FaultCurrents currents, int i, Findings findings) {
        Protection device = installation.protection(i);
        Quantity prospective = currents.highest(installation.feeding(i));
        if (device.breakingCapacity() == null) {
            findings.caution(
                    Check.BREAKING_CAPACITY, i,
                    findings.title(i) + ": no breaking capacity is in print for a " + device.device().words()
                            + " and none was entered, so it was not checked.",
                    prospective, currents.source(), "Enter the breaking capacity and its direct voltage from the data sheet.");
            return;
        }
        if (prospective == null) {
            findings.caution(
                    Check.BREAKING_CAPACITY, i,
                    findings.title(i) + ": the highest prospective current is not known, because nothing says how little resistance the battery "
                            + "has.",
                    device.breakingCapacity(), currents.source(), "Enter the short-circuit current from the battery's maker.");
            return;
        }
        boolean passed = Findings.within(prospective, device.breakingCapacity());
        Source source = Findings.weaker(device.breakingSource(), currents.source());
        findings.add(
                Check.BREAKING_CAPACITY, i, passed, Verdict.STOP,
                findings.title(i) + ": the highest prospective current of " + prospective.text(3) + " is " + Findings.withinOrAbove(passed)
                        + " the " + device.breakingCapacity().text() + " that the " + device.device().words() + " can break.",
                prospective, device.breakingCapacity(), source,
                "Take a device of greater breaking capacity here, or put one before it nearer to the battery.");
        addVoltage(installation.supply().highest(), device, i, findings);
    }

    private static void addVoltage(Quantity highest, Protection device, int i, Findings findings) {
        if (device.voltage() != null && !Findings.within(highest, device.voltage())) {
            findings.add(
                    Check.BREAKING_CAPACITY, i, false, Verdict.STOP,
                    findings.title(i) + ": the circuit reaches " + highest.text() + ", above the " + device.voltage().text()
                            + " that its breaking capacity holds for.",
                    highest, device.voltage(), device.breakingSource(), "Take a device made for this direct voltage.");
        }
    }
}
