package loomwright.plan;

import loomwright.circuit.Part;

/** One load with what leads to it: the parts of its circuit that are being chosen. */
final class Branch {
    private final Need need;
    private final DeviceChoice device;
    private final RunChoice run;
    private final SwitchChoice ownSwitch;
    private final int number;
    private final Part loadPart;

    Branch(Need need, int number, DeviceChoice device, Cables cables, SwitchChoice ownSwitch) {
        this.need = need;
        this.number = number;
        this.device = device;
        this.ownSwitch = ownSwitch;
        this.run = new RunChoice("Run to " + need.name(), need.route(), need.place(), need.beside().together(), need.sheathed(), cables);
        Part known = cables.known(loadId());
        this.loadPart = known != null ? known : cables.keep(loadId(), need.part(loadId(), runId()));
    }

    Need need() {
        return need;
    }

    DeviceChoice device() {
        return device;
    }

    RunChoice run() {
        return run;
    }

    /** The switch of this branch alone; null if it has none. */
    SwitchChoice ownSwitch() {
        return ownSwitch;
    }

    /** The load as a part of the circuit; nothing that is chosen changes it. */
    Part loadPart() {
        return loadPart;
    }

    String loadId() {
        return "load-" + number;
    }

    String runId() {
        return "run-" + number;
    }

    String deviceId() {
        return "fuse-" + number;
    }

    String switchId() {
        return "switch-" + number;
    }
}
