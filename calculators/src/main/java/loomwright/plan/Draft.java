package loomwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.protection.DeviceKind;
import loomwright.quantity.Quantity;
import loomwright.worked.Pairs;

/** A circuit while its parts are being chosen: what there is of it, and the circuit that it makes. */
final class Draft {
    static final String LEAD = "lead";
    static final String MAIN = "main-fuse";
    static final String ISOLATOR = "isolator";
    static final String FEED = "feed";
    static final String BOX = "fuse-box";
    static final String SWITCH = "switch";
    static final String TRIGGER_FUSE = "trigger-fuse";
    static final String ON_SWITCH = "on-switch";

    final Battery battery;
    final List<Branch> branches = new ArrayList<>();
    /** The first device behind the battery; that of the only branch if there is one alone. Null where a panel is there already. */
    DeviceChoice main;
    RunChoice lead;
    /** The run to the fuse box; null if there is one branch alone, or the panel that is there has a feed of no known size. */
    RunChoice feed;
    /** What the fuse box may carry. */
    Quantity box;
    Quantity isolator;
    /** The switch of all that is new; null if there is none, or each branch has its own. */
    SwitchChoice allSwitch;
    DeviceChoice triggerFuse;
    /** The panel that is there already; null if the circuit is its own. */
    Feeding panel;

    private final Cables cables;

    Draft(Battery battery, Cables cables) {
        this.battery = battery;
        this.cables = cables;
    }

    boolean isSingle() {
        return feed == null && panel == null;
    }

    /** What is there before anything is bought. */
    List<String> there() {
        List<String> there = new ArrayList<>();
        there.add("battery");
        for (Branch branch : branches) {
            there.add(branch.loadId());
        }
        if (panel != null) {
            there.addAll(List.of(LEAD, MAIN, FEED, BOX));
        }
        return List.copyOf(there);
    }

    /** The rating of the first device behind the battery. */
    Quantity mainRating() {
        return panel == null ? main.rating() : panel.rating();
    }

    boolean hasRelay() {
        if (allSwitch != null && allSwitch.isRelay()) {
            return true;
        }
        for (Branch branch : branches) {
            if (branch.ownSwitch() != null && branch.ownSwitch().isRelay()) {
                return true;
            }
        }
        return false;
    }

    /** The switch of that id; null if there is none. */
    SwitchChoice switchOf(String id) {
        SwitchChoice found = id.equals(SWITCH) ? allSwitch : null;
        for (Branch branch : branches) {
            found = branch.switchId().equals(id) ? branch.ownSwitch() : found;
        }
        return found;
    }

    /** Whether a branch behind the main device has a fuse of the kind that breaks most. */
    boolean hasClassT() {
        for (Branch branch : branches) {
            if (branch.device().kind() == DeviceKind.CLASS_T) {
                return true;
            }
        }
        return false;
    }

    Circuit circuit() {
        List<Part> parts = new ArrayList<>();
        parts.add(battery.part());
        parts.add(lead.part(LEAD, "battery"));
        if (panel != null) {
            parts.add(device(MAIN, "Main fuse of the panel", LEAD, DeviceKind.CLASS_T, panel.rating()));
        } else {
            parts.add(device(MAIN, isSingle() ? "Fuse of " + branches.get(0).need().name() : "Main fuse", LEAD, main.kind(), main.rating()));
        }
        parts.add(Part.read(ISOLATOR, PartKind.ISOLATOR, "Isolating switch", MAIN, "", "", Pairs.of("continuous-current", Plain.text(isolator))).partOrRefuse());
        String end = ISOLATOR;
        if (panel == null && hasRelay()) {
            addTrigger(parts, ISOLATOR);
        }
        if (allSwitch != null) {
            allSwitch.addTo(parts, SWITCH, end, ON_SWITCH);
            end = SWITCH;
        }
        if (isSingle()) {
            addRun(parts, branches.get(0), end);
        } else {
            parts.add(feed.part(FEED, end));
            addBox(parts);
        }
        return new Circuit("First job", parts);
    }

    private void addBox(List<Part> parts) {
        Map<String, String> texts = panel == null
                ? Pairs.of("panel-limit", Plain.text(box))
                : Pairs.of("panel-limit", Plain.text(panel.limit()), "present-load", Plain.text(panel.present()));
        parts.add(Part.read(BOX, PartKind.PANEL, panel == null ? "New fuse box" : "Fuse panel", FEED, "", "", texts).partOrRefuse());
        if (panel != null && hasRelay()) {
            addTrigger(parts, BOX);
        }
        for (Branch branch : branches) {
            parts.add(device(branch.deviceId(), "Fuse of " + branch.need().name(), BOX, branch.device().kind(), branch.device().rating()));
            String end = branch.deviceId();
            if (branch.ownSwitch() != null) {
                branch.ownSwitch().addTo(parts, branch.switchId(), end, ON_SWITCH);
                end = branch.switchId();
            }
            addRun(parts, branch, end);
        }
    }

    private static void addRun(List<Part> parts, Branch branch, String fedBy) {
        parts.add(branch.run().part(branch.runId(), fedBy));
        parts.add(branch.loadPart());
    }

    private void addTrigger(List<Part> parts, String fedBy) {
        parts.add(device(TRIGGER_FUSE, "Fuse of the trigger", fedBy, triggerFuse.kind(), triggerFuse.rating()));
        Quantity rating = Sold.ratings("switch").get(0);
        parts.add(Part.read(
                        ON_SWITCH, PartKind.SWITCH, "On switch", TRIGGER_FUSE, "", "", Pairs.of("switching", "manual", "continuous-current", Plain.text(rating)))
                .partOrRefuse());
    }

    private Part device(String id, String name, String fedBy, DeviceKind kind, Quantity rating) {
        String text = Plain.text(rating);
        String key = id + " " + fedBy + " " + kind.key() + text + name;
        Part known = cables.known(key);
        return known != null ? known
                : cables.keep(key, Part.read(id, PartKind.PROTECTION, name, fedBy, "", "", Pairs.of("device", kind.key(), "rating", text)).partOrRefuse());
    }
}
