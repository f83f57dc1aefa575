package loomwright.circuit.page;

import loomwright.circuit.Part;
import loomwright.circuit.PartKind;

/** Which fields of a part are asked first, which behind a fold, and which not at all because another choice makes them idle. */
final class PartFields {
    private PartFields() {}

    static boolean isFirst(PartKind kind, String key) {
        String first = switch (kind) {
            case SUPPLY -> " chemistry capacity lowest-voltage highest-voltage battery short-circuit-current battery-resistance-low"
                    + " battery-resistance-high ";
            case PROTECTION -> " device rating ";
            case CONDUCTOR -> " conductor size route-length ";
            case SWITCH -> " switching continuous-current on-resistance coil-resistance coil-power trigger-current ";
            case LOAD -> " load-kind power current resistance hours duty use allowance outlet-rating ports-power ";
            case SOURCE -> " source-kind charge-current charge-voltage panel-power ";
            case PANEL, ISOLATOR, JOINT -> " " + key + " ";
        };
        return first.indexOf(" " + key + " ") >= 0;
    }

    static boolean isAsked(Part part, String key) {
        if (part.kind() == PartKind.SWITCH) {
            return isAskedOfSwitch(part.text("switching"), key);
        }
        return true;
    }

    private static boolean isAskedOfSwitch(String device, String key) {
        boolean ofRelay = key.startsWith("coil-") || key.equals("rated-voltage");
        boolean ofSolidState = key.startsWith("junction-") || key.equals("switch-ambient") || key.equals("trigger-current");
        if (ofRelay) {
            return device.equals("relay");
        }
        if (ofSolidState) {
            return device.equals("solid-state");
        }
        return !device.equals("manual") || !(key.startsWith("trigger-") || key.equals("hours-on"));
    }
}
