package loomwright.circuit.check;

import loomwright.circuit.Installation;
import loomwright.circuit.Protection;
import loomwright.circuit.solve.FaultCurrents;
import loomwright.protection.OpeningTimes;
import loomwright.quantity.Quantity;
import loomwright.source.Standing;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/** Whether a device opens before the one nearer to the battery, at both ends of the range of fault current behind it. */
final class SelectivityCheck {
    private final Installation installation;
    private final FaultCurrents currents;
    private final Findings findings;

    SelectivityCheck(Installation installation, FaultCurrents currents, Findings findings) {
        this.installation = installation;
        this.currents = currents;
        this.findings = findings;
    }

    void add(int downstream) {
        int upstream = installation.deviceBefore(downstream);
        if (upstream < 0) {
            return;
        }
        Quantity lowest = currents.lowest(farthest(downstream));
        Quantity highest = currents.highest(downstream);
        Finding atLowest = at(lowest, downstream, upstream);
        Finding atHighest = highest == null ? atLowest : at(highest, downstream, upstream);
        boolean lowestIsWorse = !atHighest.verdict().isWorseThan(atLowest.verdict());
        Finding worse = lowestIsWorse ? atLowest : atHighest;
        Quantity current = lowestIsWorse ? lowest : highest;
        boolean memory = currents.source().standing() == Standing.FROM_MEMORY && worse.verdict() != Verdict.CAUTION;
        findings.add(Check.SELECTIVITY, downstream, new Finding(
                memory ? Verdict.CAUTION : worse.verdict(),
                findings.title(downstream) + " before " + findings.title(upstream) + ", at " + current.text(3) + ": " + worse.words(), worse.figure(),
                worse.limit(), memory ? currents.source() : worse.source(),
                memory ? "The range of the current rests on memory and decides nothing. " + worse.remedy() : worse.remedy()));
    }

    private Finding at(Quantity current, int downstream, int upstream) {
        OpeningTimes near = times(downstream, current);
        OpeningTimes far = times(upstream, current);
        if (near != null && far != null) {
            return OpeningTimes.selectivity(near, far);
        }
        Protection missing = installation.protection(near == null ? downstream : upstream);
        return new Finding(
                Verdict.CAUTION, "no opening times are in print for a " + missing.words() + ", so it was not checked.", current, null,
                Findings.computed(), "Hold the curves of both data sheets against each other.");
    }

    private OpeningTimes times(int i, Quantity current) {
        Protection protection = installation.protection(i);
        return OpeningTimes.of(protection.device().key(), protection.rating(), current);
    }

    /** The part behind a device, and before any other device, that a fault current finds it hardest to reach. */
    private int farthest(int device) {
        int farthest = device;
        for (int i = device + 1; i < installation.size(); i++) {
            boolean protectedByIt = installation.protection(i) == null && installation.deviceBefore(i) == device;
            farthest = protectedByIt && currents.lowest(i).base() < currents.lowest(farthest).base() ? i : farthest;
        }
        return farthest;
    }
}
