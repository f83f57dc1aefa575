package loomwright.plan;

import java.util.HashMap;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.check.DayOfCircuit;
import loomwright.circuit.check.Examination;
import loomwright.conductor.ConductorKind;
import loomwright.conductor.Surroundings;
import loomwright.protection.DeviceKind;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.NextQuestion;
import loomwright.worked.Pairs;

/** The calculator behind each choice, with the entries that work it out again. */
final class Workings {
    private final Job job;
    private final Draft draft;
    private final Examination examination;

    Workings(Job job, Draft draft, Examination examination) {
        this.job = job;
        this.draft = draft;
        this.examination = examination;
    }

    private static NextQuestion of(String calculator, Map<String, String> entries) {
        return new NextQuestion(calculator, "", entries);
    }

    /** What a load draws. */
    NextQuestion current(Need need) {
        Map<String, String> entries = new HashMap<>();
        Map<String, String> texts = need.texts();
        entries.put("load-kind", texts.get("load-kind"));
        if (texts.containsKey("current")) {
            entries.put("device-voltage", "12 V");
            entries.put("device-current", texts.get("current"));
        } else {
            entries.put("power", texts.containsKey("power") ? texts.get("power") : texts.get("ports-power"));
        }
        entries.put("converter", need.kind() == ItemKind.USB ? "usb-outlet" : "none");
        return of("device-current", entries);
    }

    /** The device of a run: that of the run's copper where it lies, in the warm. */
    NextQuestion device(double amperes, boolean lasting, RunChoice run, DeviceChoice device) {
        Map<String, String> entries = new HashMap<>();
        entries.put("design-current", Plain.text(Quantity.of(amperes, Units.AMPERE)));
        entries.put("continuous", lasting ? "yes" : "no");
        entries.put("size", Plain.text(run.size()));
        Map<String, String> texts = run.texts();
        for (String key : Surroundings.KEYS) {
            entries.put(key, texts.get(key));
        }
        entries.put("fuse-type", DeviceKind.BLADE.key());
        entries.put("fuse-ambient", device.isCool() ? "20 °C" : DeviceChoice.WARM);
        return of("fuse-choice", entries);
    }

    /** The size of a run; what may be lost is what the runs before it leave. */
    NextQuestion run(RunChoice run, double amperes, Quantity rating, double volts) {
        Map<String, String> entries = new HashMap<>(run.texts());
        entries.remove("size");
        entries.put("current", Plain.text(Quantity.of(amperes, Units.AMPERE)));
        entries.put("allowance", Plain.text(Quantity.of(volts, Units.VOLT)));
        entries.put("rule-set", "33-cfr-183");
        entries.put("fuse-rating", Plain.text(rating));
        return of("size-for-run", entries);
    }

    /** What a device has to break. */
    NextQuestion breaking(String id, DeviceKind kind) {
        Circuit circuit = examination.circuit();
        Quantity highest = examination.faultCurrents().highest(circuit.node(id).parent());
        if (highest == null) {
            return null;
        }
        return of("breaking-capacity", Pairs.of(
                "device", kind.key(), "prospective-current", Plain.text(highest), "system-voltage", Plain.text(circuit.battery().highest())));
    }

    NextQuestion headroom() {
        Map<String, String> entries = new HashMap<>();
        Feeding panel = job.panel();
        if (panel.present().base() > 0) {
            entries.put("way-1-current", Plain.text(panel.present()));
        }
        entries.put("new-current", Plain.text(Quantity.of(job.amperes(), Units.AMPERE)));
        entries.put("panel-limit", Plain.text(panel.limit()));
        entries.put("feed-fuse", Plain.text(panel.rating()));
        entries.put("feed-ampacity", Plain.text(draft.feed.capacity().value()));
        return of("panel-headroom", entries);
    }

    NextQuestion place() {
        return of("fuse-place", Pairs.of("distance", Plain.text(job.lead()), "rule-set", "33-cfr-source"));
    }

    NextQuestion trigger(SwitchChoice chosen) {
        Map<String, String> entries = new HashMap<>();
        entries.put("trigger-of", "relay");
        entries.put("coil-resistance", examination.circuit().part(relayId()).text("coil-resistance"));
        entries.put("conductor", job.byGauge() ? ConductorKind.NEC_STRANDED.key() : ConductorKind.ISO_6722_1.key());
        entries.put("size", job.byGauge() ? SwitchChoice.TRIGGER_GAUGE : SwitchChoice.TRIGGER_SIZE);
        entries.put("route-length", Plain.text(chosen.route()));
        entries.put("fuse-rating", Plain.text(Sizing.triggerRating()));
        return of("trigger-loop", entries);
    }

    private String relayId() {
        if (draft.allSwitch != null) {
            return Draft.SWITCH;
        }
        for (Branch branch : draft.branches) {
            if (branch.ownSwitch().isRelay()) {
                return branch.switchId();
            }
        }
        throw new IllegalStateException("no relay");
    }

    /** The battery that the day asks for. */
    NextQuestion battery(DayOfCircuit day, Quantity days) {
        return of("battery-size", Pairs.of(
                "energy-per-day", Plain.text(day.total()), "days", Plain.text(Quantity.number(days.in(Units.DAY).value())), "battery-voltage",
                Plain.text(examination.circuit().battery().resting()), "chemistry", examination.circuit().battery().chemistry().key()));
    }

    NextQuestion sun(DayOfCircuit day) {
        return of("panel-yield", Pairs.of(
                "panel-power", Plain.text(examination.circuit().battery().solarPower()), "peak-sun-hours",
                Plain.text(examination.circuit().battery().peakSunHours()), "energy-per-day", Plain.text(day.total())));
    }
}
