package loomwright.circuit.check;

import loomwright.circuit.Installation;
import loomwright.circuit.Load;
import loomwright.circuit.Protection;
import loomwright.circuit.solve.Solved;
import loomwright.circuit.solve.Starvation;
import loomwright.protection.OpeningTimes;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/** Whether the devices hold while a motor starts, and whether the other loads still get their voltage. */
final class StartCheck {
    private final Installation installation;
    private final Findings findings;

    StartCheck(Installation installation, Findings findings) {
        this.installation = installation;
        this.findings = findings;
    }

    void add(Solved start) {
        int load = start.situation().starting();
        if (!start.exists()) {
            Starvation starvation = Starvation.of(installation, start);
            findings.add(
                    Check.START, load, false, Verdict.STOP, starvation.words(), starvation.asked(), starvation.most(), Findings.computed(),
                    "Take thicker conductors or shorter routes on the way to it.");
            return;
        }
        for (int device = installation.deviceBefore(load); device >= 0; device = installation.deviceBefore(device)) {
            addDevice(start, load, device);
        }
        for (int i = 0; i < installation.size(); i++) {
            addDip(start, load, i);
        }
    }

    private void addDevice(Solved start, int load, int device) {
        Protection protection = installation.protection(device);
        Quantity current = Quantity.of(start.amperes(device), Units.AMPERE);
        Quantity lasts = installation.load(load).startTime();
        String opening = findings.title(load) + " starting: " + current.text(3) + " flow through " + findings.title(device) + " for "
                + lasts.text() + ". ";
        if (Findings.within(current, protection.rating())) {
            findings.add(Check.START, load, new Finding(
                    Verdict.PASSED, opening + "That is within its rating of " + protection.rating().text() + ".", current, protection.rating(),
                    Findings.computed(), ""));
            return;
        }
        OpeningTimes times = OpeningTimes.of(protection.device().key(), protection.rating(), current);
        if (times != null && times.earliest() != null && times.earliest().base() >= lasts.base()) {
            boolean weak = times.earliestIsWeak();
            findings.add(Check.START, load, new Finding(
                    weak ? Verdict.CAUTION : Verdict.PASSED,
                    opening + "A " + protection.words() + " does not open before " + OpeningTimes.words(times.earliest()) + ".", lasts,
                    times.earliest(), times.earliestSource(), weak ? "This time decides nothing: take the data sheet of the device." : ""));
        } else if (times != null && times.latest() != null && Findings.within(times.latest(), lasts)) {
            findings.add(
                    Check.START, load, false, times.latestIsWeak() ? Verdict.CAUTION : Verdict.STOP,
                    opening + "A " + protection.words() + " has opened by " + OpeningTimes.words(times.latest()) + ".", lasts, times.latest(),
                    times.source(), "Take a slower kind or a larger rating, if the conductor carries it.");
        } else {
            findings.caution(
                    Check.START, load, opening + "Nothing in print shows that a " + protection.words() + " holds that long.", current,
                    times == null ? Findings.computed() : times.source(), "Take the curve in its data sheet, and try it out.");
        }
    }

    /** Only loads whose lowest voltage is known, and only where a start takes it away. */
    private void addDip(Solved start, int starting, int i) {
        Load load = installation.load(i);
        boolean on = load != null && load.lowestWorking() != null && start.situation().drawing()[i];
        if (on && start.volts(i) < load.lowestWorking().base()) {
            Quantity volts = Quantity.of(start.volts(i), Units.VOLT);
            findings.add(
                    Check.START, i, false, Verdict.CAUTION,
                    findings.title(starting) + " starting leaves " + volts.text(3) + " for " + findings.title(i) + ", below the "
                            + load.lowestWorking().text() + " it works at.",
                    volts, load.lowestWorking(), Findings.entered(), "Feed the two by runs of their own, or take thicker ones.");
        }
    }
}
