package loomwright.circuit.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.worked.Typing;

/**
 * A circuit to be worked in the head. Loads that hold their current: a lamp of 2 A behind a run of its own and a pump of 4 A at the panel, so 6 A in the lead. At 40 °C the lead has
 * 4.71 · 1.078585 · 2.4 m = 12.192 mΩ, the run 12.7 · 1.078585 · 9 m = 123.282 mΩ.
 */
final class SmallCircuit {
    private SmallCircuit() {}

    static Circuit of(Part... more) {
        return with("0 A", more);
    }

    /** The panel carries something already. */
    static Circuit with(String present, Part... more) {
        List<Part> parts = new ArrayList<>(List.of(
                part("battery", PartKind.SUPPLY, "", "chemistry=lead-acid", "capacity=60 Ah", "battery-voltage=12.8 V", "lowest-voltage=10.5 V", "highest-voltage=14.6 V"),
                part("fuse", PartKind.PROTECTION, "battery", "device=blade", "rating=15 A"),
                part("lead", PartKind.CONDUCTOR, "fuse", "size=4 mm²", "route-length=1.2 m", "insulation-temperature=t105"),
                part("panel", PartKind.PANEL, "lead", "panel-limit=30 A", "present-load=" + present),
                part("run", PartKind.CONDUCTOR, "panel", "size=1.5 mm²", "route-length=4.5 m", "insulation-temperature=t105"),
                part("lamp", PartKind.LOAD, "run", "load-kind=constant-current", "current=2 A", "hours=3 h"),
                part("pump", PartKind.LOAD, "panel", "load-kind=constant-current", "current=4 A", "hours=1 h")));
        parts.addAll(List.of(more));
        return new Circuit("", parts);
    }

    static Part part(String id, PartKind kind, String fedBy, String... typed) {
        return Part.read(id, kind, id, fedBy, "", "", Typing.of(typed)).partOrRefuse();
    }
}
