package loomwright.circuit.file;

import java.util.List;

/** Links of version 1 named kinds and fields by their place. These are the places they had; nothing here ever changes. */
final class LinkVersion1 implements LinkNames {
    private static final List<String> KINDS =
            List.of("supply", "panel", "protection", "isolator", "switch", "conductor", "joint", "load");

    @Override
    public String kind(String cell) {
        return cell.equals("p") ? CircuitLink.PANEL : at(KINDS, cell);
    }

    @Override
    public String field(String kind, String cell) {
        return at(fields(kind), cell);
    }

    private static String at(List<String> keys, String cell) {
        int place = LinkReader.number(cell);
        return place >= 0 && place < keys.size() ? keys.get(place) : null;
    }

    private static List<String> fields(String kind) {
        return switch (kind) {
            case "supply" -> List.of(
                    "chemistry", "capacity", "state-of-charge", "usable-depth", "battery-limit", "lowest-voltage", "highest-voltage", "battery",
                    "battery-voltage", "short-circuit-current", "battery-resistance-low", "battery-resistance-high", "batteries-in-parallel",
                    "solar-power", "peak-sun-hours", "fuse-rule", CircuitLink.READING);
            case "panel" -> List.of("panel-limit", "present-load", CircuitLink.READING);
            case "protection" -> List.of("device", "rating", "breaking-capacity", "device-voltage", "cold-resistance", CircuitLink.READING);
            case "isolator" -> List.of("continuous-current", "contact-resistance", CircuitLink.READING);
            case "switch" -> List.of(
                    "switching", "continuous-current", "on-resistance", "coil-resistance", "coil-power", "rated-voltage", "trigger-current",
                    "hours-on", "fuse-rating", "trigger-conductor", "trigger-size", "trigger-route-length", "junction-to-air", "switch-ambient",
                    "junction-limit", CircuitLink.READING);
            case "conductor" -> List.of(
                    "conductor", "size", "route-length", "temperature", "rule-set", "insulation-temperature", "engine-space", "ambient",
                    "conductors-together", "short-circuit-insulation", CircuitLink.READING);
            case "joint" -> List.of("joint-resistance", "joints", CircuitLink.READING);
            case "load" -> List.of(
                    "load-kind", "power", "current", "resistance", "rated-voltage", "hours", "duty", "use", "allowance", "start-current",
                    "start-time", "lowest-working-voltage", "standing-current", CircuitLink.READING);
            case CircuitLink.PANEL -> List.of(
                    "panel-width", "panel-height", "count", "hole-diameter", "centre-distance", "first-centre", "row-height", "edge-distance", "web",
                    "room-behind", "frame-1-from", "frame-1-to", "frame-2-from", "frame-2-to", "clear-depth", "depth-needed");
            default -> List.of();
        };
    }
}
