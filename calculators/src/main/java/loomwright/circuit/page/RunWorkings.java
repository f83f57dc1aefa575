package loomwright.circuit.page;

import loomwright.circuit.Conductor;
import loomwright.circuit.Joint;
import loomwright.circuit.Node;
import loomwright.circuit.Protection;
import loomwright.conductor.CarryingCapacity;
import loomwright.conductor.ConductorFigures;
import loomwright.conductor.Surroundings;
import loomwright.protection.HeatingFormulas;
import loomwright.protection.OpeningTimes;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The workings of what a run carries, stands and loses. */
record RunWorkings(WorkingFigures of) {
    /** What the choice of a fuse-link takes as a design current, in amperes. */
    private static final double LEAST_DESIGN = 0.001;
    private static final double MOST_DESIGN = 1000;
    private static final String SPAN = "76.2 mm";

    String ampacity(Node run, Quantity current) {
        if (!(run.figures() instanceof Conductor conductor) || conductor.capacity().kind() == CarryingCapacity.Kind.SHEET) {
            return null;
        }
        laid(run, conductor);
        of.put("design-current", current);
        return "ampacity";
    }

    private void laid(Node run, Conductor conductor) {
        of.copy(run, "rule-set", "rule-set");
        for (String key : Surroundings.KEYS) {
            of.copy(run, key, key);
        }
        of.put("size", conductor.copper());
    }

    /** Which device such a run may have; the one that is there may be none of those sold as blades. */
    String fuse(Node run) {
        Quantity design = Quantity.of(of.examination.solution().designAmperes(run), Units.AMPERE);
        if (!(run.figures() instanceof Conductor conductor) || design.value() < LEAST_DESIGN || design.value() > MOST_DESIGN) {
            return ampacity(run, null);
        }
        laid(run, conductor);
        of.put("design-current", design);
        of.copy(run, "sheet-ampacity", "sheet-ampacity");
        of.copy(of.examination.circuit().supply(), "fuse-rule", "fuse-rule");
        return "fuse-choice";
    }

    /**
     * At the end of the range of fault current that the finding is about; where one time belongs to both ends, the higher is the harder. A latest
     * time that leaves the check open is not carried: the device may open sooner, and the calculator would take it for the true one.
     */
    String heating() {
        Node device = of.node.deviceBefore();
        if (!(of.node.figures() instanceof Conductor conductor) || device == null || of.figure().unit() == Units.AMPERE) {
            return null;
        }
        Protection guard = (Protection) device.figures();
        for (Quantity current : new Quantity[] {of.examination.faultCurrents().highest(of.node.parent()), of.examination.faultCurrents().lowest(of.node)}) {
            OpeningTimes times = current == null ? null : OpeningTimes.of(guard.device().key(), guard.rating(), current);
            Quantity longest = current == null ? null : HeatingFormulas.longestTime(current, conductor.copper(), conductor.insulation().row());
            boolean isOpen = WorkingFigures.isSame(longest, of.figure()) || of.limit() == null && times != null && WorkingFigures.isSame(times.latest(), of.figure());
            if (isOpen || WorkingFigures.isSame(longest, of.limit())) {
                of.put("current", current);
                of.put("clearing-time", isOpen ? null : of.figure());
                of.put("size", conductor.copper());
                of.entries.put("insulation", conductor.insulation().key());
                return "short-circuit-heating";
            }
        }
        return null;
    }

    String place() {
        if (of.limit() == null) {
            return null;
        }
        of.put("distance", of.figure());
        of.entries.put("rule-set", of.limit().base() < 1 ? "33-cfr-source" : "33-cfr-sheathed");
        return "fuse-place";
    }

    /** What a meter would read across a joint of this resistance and the piece of conductor beside it. */
    String joint() {
        Node run = of.node;
        while (run != null && !(run.figures() instanceof Conductor)) {
            run = run.parent();
        }
        Quantity current = Quantity.of(of.examination.solution().designAmperes(of.node), Units.AMPERE);
        if (run == null || !(of.node.figures() instanceof Joint joint) || current.value() < 0.1) {
            return null;
        }
        Conductor conductor = (Conductor) run.figures();
        Quantity perMetre = ConductorFigures.perMetre(conductor.kind(), conductor.size(), conductor.temperature());
        double ohms = joint.one().base() + perMetre.base() * Quantity.of(76.2, Units.MILLIMETRE).base();
        of.put("reading", Quantity.ofBase(current.base() * ohms, Units.MILLIVOLT));
        of.put("test-current", current);
        of.put("design-current", current);
        of.put("resistance-per-metre", perMetre);
        of.entries.put("span", SPAN);
        return "joint-heat";
    }
}
