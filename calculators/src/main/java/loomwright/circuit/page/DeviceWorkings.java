package loomwright.circuit.page;

import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.Protection;
import loomwright.circuit.solve.Solved;
import loomwright.protection.OpeningTimes;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;

/** The workings of what a fuse-link or breaker breaks, and of when it opens. */
record DeviceWorkings(WorkingFigures of) {
    String breaking() {
        if (!(of.node.figures() instanceof Protection device) || device.breakingCapacity() == null || of.limit() == null) {
            return null;
        }
        boolean typed = device.breakingSource().document() == Document.COMPUTED;
        of.entries.put("device", typed ? "given" : device.device().key());
        if (typed) {
            of.put("rated-capacity", device.breakingCapacity());
            of.put("rated-voltage", device.voltage());
        }
        of.put("prospective-current", of.examination.faultCurrents().highest(of.node.parent()));
        of.put("system-voltage", of.examination.circuit().battery().highest());
        return device.voltage() == null || !of.entries.containsKey("prospective-current") ? null : "breaking-capacity";
    }

    /** Two times are held against each other at one of the two ends of the range of fault current. */
    String selectivity() {
        Node before = of.node.deviceBefore();
        if (of.figure().unit() == Units.AMPERE || before == null) {
            return null;
        }
        Protection near = (Protection) of.node.figures();
        Protection far = (Protection) before.figures();
        for (Quantity current : new Quantity[] {of.examination.faultCurrents().lowestBehind(of.node), of.examination.faultCurrents().highest(of.node)}) {
            OpeningTimes nearTimes = current == null ? null : OpeningTimes.of(near.device().key(), near.rating(), current);
            OpeningTimes farTimes = current == null ? null : OpeningTimes.of(far.device().key(), far.rating(), current);
            if (nearTimes != null && farTimes != null && WorkingFigures.isSame(OpeningTimes.selectivity(nearTimes, farTimes).figure(), of.figure())) {
                of.put("current", current);
                of.entries.put("downstream-type", near.device().key());
                of.put("downstream-rating", near.rating());
                of.entries.put("upstream-type", far.device().key());
                of.put("upstream-rating", far.rating());
                return "selectivity";
            }
        }
        return null;
    }

    /** Whether a device holds a start: its opening times at that current. Where none are published there is nothing to work out. */
    String start() {
        Node starting = of.other();
        if (!(of.node.figures() instanceof Load load) || !(starting.figures() instanceof Protection device)) {
            return null;
        }
        for (Solved solved : of.examination.solution().starts()) {
            Quantity current = Quantity.of(solved.exists() ? solved.amperes(starting) : 0, Units.AMPERE);
            OpeningTimes times = solved.situation().starting() == of.node ? OpeningTimes.of(device.device().key(), device.rating(), current) : null;
            if (times != null && of.limit() != null && (WorkingFigures.isSame(times.latest(), of.limit()) || WorkingFigures.isSame(times.earliest(), of.limit()))) {
                of.entries.put("fuse-type", device.device().key());
                of.put("rating", device.rating());
                of.put("current", current);
                of.put("time-limit", load.startTime());
                return "time-current";
            }
        }
        return null;
    }
}
