package loomwright.circuit.page;

import java.util.HashMap;
import java.util.Map;
import loomwright.circuit.Conductor;
import loomwright.circuit.Joint;
import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.Panel;
import loomwright.circuit.Protection;
import loomwright.circuit.Supply;
import loomwright.circuit.Switching;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.DayOfCircuit;
import loomwright.circuit.check.Examination;
import loomwright.circuit.solve.Solved;
import loomwright.conductor.CarryingCapacity;
import loomwright.conductor.ConductorFigures;
import loomwright.protection.HeatingFormulas;
import loomwright.protection.OpeningTimes;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.supply.BatteryDay;
import loomwright.worked.NextQuestion;

/** Where the figures of a finding are worked out step by step: the calculator that makes the same comparison, with exactly these figures. */
final class Workings {
    /** More digits than any page shows, so that the calculator comes to the same figure. */
    private static final int DIGITS = 9;
    /** What the choice of a fuse-link takes as a design current, in amperes. */
    private static final double LEAST_DESIGN = 0.001;
    private static final double MOST_DESIGN = 1000;
    private static final String SPAN = "76.2 mm";

    private final Examination examination;
    private final CircuitFinding found;
    private final Node node;
    private final Map<String, String> entries = new HashMap<>();

    private Workings(Examination examination, CircuitFinding found) {
        this.examination = examination;
        this.found = found;
        this.node = examination.circuit().node(found.partId());
    }

    /** The calculator and its entries; null if no calculator makes this comparison. */
    static NextQuestion of(Examination examination, CircuitFinding found) {
        Workings workings = new Workings(examination, found);
        String calculator = workings.calculator();
        return calculator == null ? null : new NextQuestion(calculator, "", workings.entries);
    }

    private String calculator() {
        return switch (found.check()) {
            case AMPACITY -> ampacity(node, figure());
            case CONDUCTOR_PROTECTED -> fuse(node.figures() instanceof Conductor ? node : other());
            case BREAKING_CAPACITY -> breaking();
            case SHORT_CIRCUIT_HEAT -> heating();
            case SELECTIVITY -> selectivity();
            case UNPROTECTED_LENGTH -> place();
            case JOINT_HEAT -> joint();
            case CONTINUOUS_CURRENT -> node.figures() instanceof Panel panel ? headroom(panel) : null;
            case START -> start();
            case SWITCH_HEAT -> node.figures() instanceof Switching switching ? switchHeat(switching) : null;
            case DAY -> sun(examination.day());
            case TRIGGER -> node.figures() instanceof Switching switching ? trigger(switching) : null;
            default -> null;
        };
    }

    private Node other() {
        return found.otherId().isEmpty() ? node : examination.circuit().node(found.otherId());
    }

    private Quantity figure() {
        return found.finding().figure();
    }

    private Quantity limit() {
        return found.finding().limit();
    }

    private void put(String key, Quantity value) {
        if (value != null) {
            entries.put(key, value.text(DIGITS));
        }
    }

    /** What was typed for a part, under the key that the calculator gives the same field. */
    private void copy(Node from, String fieldKey, String key) {
        String text = from.part().text(fieldKey);
        if (!text.isEmpty()) {
            entries.put(key, text);
        }
    }

    private String ampacity(Node run, Quantity current) {
        if (!(run.figures() instanceof Conductor conductor) || conductor.capacity().kind() == CarryingCapacity.Kind.SHEET) {
            return null;
        }
        laid(run, conductor);
        put("design-current", current);
        return "ampacity";
    }

    private void laid(Node run, Conductor conductor) {
        for (String key : new String[] {"rule-set", "insulation-temperature", "engine-space", "ambient", "conductors-together"}) {
            copy(run, key, key);
        }
        put("size", conductor.copper());
    }

    /** Which device such a run may have; the one that is there may be none of those sold as blades. */
    private String fuse(Node run) {
        Quantity design = Quantity.of(examination.solution().designAmperes(run), Units.AMPERE);
        if (!(run.figures() instanceof Conductor conductor) || design.value() < LEAST_DESIGN || design.value() > MOST_DESIGN) {
            return ampacity(run, null);
        }
        laid(run, conductor);
        put("design-current", design);
        copy(run, "sheet-ampacity", "sheet-ampacity");
        copy(examination.circuit().supply(), "fuse-rule", "fuse-rule");
        return "fuse-choice";
    }

    private String breaking() {
        if (!(node.figures() instanceof Protection device) || device.breakingCapacity() == null || limit() == null) {
            return null;
        }
        boolean typed = device.breakingSource().document() == Document.COMPUTED;
        entries.put("device", typed ? "given" : device.device().key());
        if (typed) {
            put("rated-capacity", device.breakingCapacity());
            put("rated-voltage", device.voltage());
        }
        put("prospective-current", examination.faultCurrents().highest(node.parent()));
        put("system-voltage", examination.circuit().battery().highest());
        return device.voltage() == null || !entries.containsKey("prospective-current") ? null : "breaking-capacity";
    }

    /**
     * At the end of the range of fault current that the finding is about; where one time belongs to both ends, the higher is the harder. A latest
     * time that leaves the check open is not carried: the device may open sooner, and the calculator would take it for the true one.
     */
    private String heating() {
        Node device = node.deviceBefore();
        if (!(node.figures() instanceof Conductor conductor) || device == null || figure().unit() == Units.AMPERE) {
            return null;
        }
        Protection guard = (Protection) device.figures();
        for (Quantity current : new Quantity[] {examination.faultCurrents().highest(node.parent()), examination.faultCurrents().lowest(node)}) {
            OpeningTimes times = current == null ? null : OpeningTimes.of(guard.device().key(), guard.rating(), current);
            Quantity longest = current == null ? null : HeatingFormulas.longestTime(current, conductor.copper(), conductor.insulation().row());
            boolean isOpen = isSame(longest, figure()) || limit() == null && times != null && isSame(times.latest(), figure());
            if (isOpen || isSame(longest, limit())) {
                put("current", current);
                put("clearing-time", isOpen ? null : figure());
                put("size", conductor.copper());
                entries.put("insulation", conductor.insulation().key());
                return "short-circuit-heating";
            }
        }
        return null;
    }

    private static boolean isSame(Quantity one, Quantity other) {
        return one != null && other != null && one.dimension().equals(other.dimension()) && Math.abs(one.base() - other.base()) <= 1e-9 * Math.abs(other.base());
    }

    /** Two times are held against each other at one of the two ends of the range of fault current. */
    private String selectivity() {
        Node before = node.deviceBefore();
        if (figure().unit() == Units.AMPERE || before == null) {
            return null;
        }
        Protection near = (Protection) node.figures();
        Protection far = (Protection) before.figures();
        for (Quantity current : new Quantity[] {examination.faultCurrents().lowestBehind(node), examination.faultCurrents().highest(node)}) {
            OpeningTimes nearTimes = current == null ? null : OpeningTimes.of(near.device().key(), near.rating(), current);
            OpeningTimes farTimes = current == null ? null : OpeningTimes.of(far.device().key(), far.rating(), current);
            if (nearTimes != null && farTimes != null && isSame(OpeningTimes.selectivity(nearTimes, farTimes).figure(), figure())) {
                put("current", current);
                entries.put("downstream-type", near.device().key());
                put("downstream-rating", near.rating());
                entries.put("upstream-type", far.device().key());
                put("upstream-rating", far.rating());
                return "selectivity";
            }
        }
        return null;
    }

    private String place() {
        if (limit() == null) {
            return null;
        }
        put("distance", figure());
        entries.put("rule-set", limit().base() < 1 ? "33-cfr-source" : "33-cfr-sheathed");
        return "fuse-place";
    }

    /** What a meter would read across a joint of this resistance and the piece of conductor beside it. */
    private String joint() {
        Node run = node;
        while (run != null && !(run.figures() instanceof Conductor)) {
            run = run.parent();
        }
        Quantity current = Quantity.of(examination.solution().designAmperes(node), Units.AMPERE);
        if (run == null || !(node.figures() instanceof Joint joint) || current.value() < 0.1) {
            return null;
        }
        Conductor conductor = (Conductor) run.figures();
        Quantity perMetre = ConductorFigures.perMetre(conductor.kind(), conductor.size(), conductor.temperature());
        double ohms = joint.one().base() + perMetre.base() * Quantity.of(76.2, Units.MILLIMETRE).base();
        put("reading", Quantity.ofBase(current.base() * ohms, Units.MILLIVOLT));
        put("test-current", current);
        put("design-current", current);
        put("resistance-per-metre", perMetre);
        entries.put("span", SPAN);
        return "joint-heat";
    }

    /** All that flows through the panel, the present load of the panel as its first way. */
    private String headroom(Panel panel) {
        double rest = figure().base() - panel.presentLoad().base();
        if (rest <= 0.001) {
            return null;
        }
        if (panel.presentLoad().base() > 0) {
            put("way-1-current", panel.presentLoad());
        }
        put("new-current", Quantity.of(rest, Units.AMPERE));
        put("panel-limit", panel.limit());
        return "panel-headroom";
    }

    private String trigger(Switching switching) {
        Node from = node.trigger();
        if (from == null || limit() == null || node.isOnTheWayTo(from)) {
            return null;
        }
        entries.put("trigger-of", switching.device() == Switching.Device.RELAY ? "relay" : "solid-state");
        put("coil-resistance", switching.coil());
        put("trigger-current", switching.triggerCurrent());
        for (Solved solved : examination.solution().lowest()) {
            if (solved.exists()) {
                put("lowest-voltage", Quantity.of(solved.volts(from), Units.VOLT));
                break;
            }
        }
        put("highest-voltage", examination.circuit().battery().highest());
        copy(node, "trigger-conductor", "conductor");
        copy(node, "trigger-size", "size");
        copy(node, "trigger-route-length", "route-length");
        entries.put("temperature", "20 °C");
        if (switching.triggerCapacity().isRated()) {
            put("wire-ampacity", switching.triggerCapacity().value());
        }
        put("fuse-rating", figure().unit() == Units.AMPERE ? figure() : switching.triggerFuse());
        return "trigger-loop";
    }

    /** Whether a device holds a start: its opening times at that current. Where none are published there is nothing to work out. */
    private String start() {
        Node starting = other();
        if (!(node.figures() instanceof Load load) || !(starting.figures() instanceof Protection device)) {
            return null;
        }
        for (Solved solved : examination.solution().starts()) {
            Quantity current = Quantity.of(solved.exists() ? solved.amperes(starting) : 0, Units.AMPERE);
            OpeningTimes times = solved.situation().starting() == node ? OpeningTimes.of(device.device().key(), device.rating(), current) : null;
            if (times != null && limit() != null && (isSame(times.latest(), limit()) || isSame(times.earliest(), limit()))) {
                entries.put("fuse-type", device.device().key());
                put("rating", device.rating());
                put("current", current);
                put("time-limit", load.startTime());
                return "time-current";
            }
        }
        return null;
    }

    /** The resistance of a switch as the voltage that its largest current drops in it; the way of the heat in one piece. */
    private String switchHeat(Switching switching) {
        double amperes = examination.solution().designAmperes(node);
        if (switching.junctionToAir() == null || amperes < 0.01) {
            return null;
        }
        put("current", Quantity.of(amperes, Units.AMPERE));
        put("voltage-drop", Quantity.of(amperes * switching.resistance().base(), Units.VOLT));
        entries.put("junction-to-case", "0 K/W");
        entries.put("case-to-sink", "0 K/W");
        put("sink-to-air", switching.junctionToAir());
        put("ambient", switching.air());
        put("junction-limit", switching.junctionLimit());
        return "junction-temperature";
    }

    /** What a day takes against what the panel of the battery gives, if nothing else charges it. */
    private String sun(DayOfCircuit day) {
        Supply battery = examination.circuit().battery();
        if (day.yield() == null || !isSame(day.yield(), limit()) || battery.solarPower() == null
                || !isSame(BatteryDay.yield(battery.solarPower(), battery.peakSunHours()), day.yield())) {
            return null;
        }
        put("panel-power", battery.solarPower());
        put("peak-sun-hours", battery.peakSunHours());
        put("energy-per-day", day.total());
        put("battery-voltage", battery.resting());
        return "panel-yield";
    }

    /** The lesson that explains a check. */
    static String lesson(Check check) {
        return switch (check) {
            case STANDING_DRAW, DAY -> "04-a-days-energy";
            case CHARGING -> "05b-what-charges-it";
            case SYSTEM_VOLTAGE -> "05-the-battery-behind-it";
            case UNPROTECTED_LENGTH, ISOLATOR -> "06-where-to-tap-in";
            case OPERATING_POINT, VOLTAGE_DROP -> "08-voltage-drop";
            case AMPACITY -> "09-ampacity";
            case TRIGGER, SWITCH_DUTY, SWITCH_HEAT, START -> "11-switching";
            case PORTS -> "12-outlets";
            case JOINT_HEAT -> "13-joints";
            default -> "10-fuse-links-and-breakers";
        };
    }
}
