package loomwright.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.markup.Words;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** The switch of a circuit: by hand in its run where one is sold that stands device and load, else a relay with a switch in its trigger. */
final class SwitchChoice {
    static final String TRIGGER_SIZE = "1 mm²";
    static final String TRIGGER_GAUGE = "16 AWG";

    private final String name;
    private final Quantity route;
    private final boolean byGauge;
    private final RunChoice loop;
    private double wanted;
    private Quantity byHand;
    private boolean tooThick;

    SwitchChoice(String name, Quantity route, Cables cables) {
        this.name = name;
        this.route = route;
        this.byGauge = cables.byGauge();
        this.loop = new RunChoice("Run to " + Words.small(name) + " and back", route, Situated.INSIDE, 2, false, cables);
    }

    String name() {
        return name;
    }

    /** How far the switch by hand is from the relay. */
    Quantity route() {
        return route;
    }

    /** The way to the switch by hand and back: two conductors of the size of the run that it parts. */
    RunChoice loop() {
        return loop;
    }

    /** Its id, by that of the switch. */
    static String loopId(String id) {
        return "run-to-" + id;
    }

    /** It as parts of a circuit, behind the way there and back if it is by hand. */
    void addTo(List<Part> parts, String id, String fedBy, String trigger) {
        if (isRelay()) {
            parts.add(part(id, fedBy, trigger));
        } else {
            parts.add(loop.part(loopId(id), fedBy));
            parts.add(part(id, loopId(id), trigger));
        }
    }

    /** Takes one of at least so many amperes; false if even the relay is too small. */
    boolean carry(double amperes) {
        wanted = Math.max(wanted, amperes);
        byHand = tooThick ? null : Sold.least(Sold.ratings("switch"), wanted);
        return byHand != null || wanted <= relay().base() * (1 + 1e-9);
    }

    /** From now on it is a relay beside the fuses, since the way to a switch by hand and back would be too thick for its tabs. */
    void takeRelay() {
        tooThick = true;
        byHand = null;
    }

    boolean isTooThick() {
        return tooThick;
    }

    boolean isRelay() {
        return byHand == null;
    }

    /** What a relay of the 70 A class carries all the time in a hot place. */
    static Quantity relay() {
        return row("70-a-at-85-c").quantity("value", Units.AMPERE);
    }

    private static Row row(String item) {
        return PublishedTables.relayData().row(item);
    }

    Quantity rating() {
        return isRelay() ? relay() : byHand;
    }

    /** It as a part of a circuit; a relay takes its trigger from the switch of that id. */
    private Part part(String id, String fedBy, String trigger) {
        Map<String, String> texts = new HashMap<>();
        texts.put("switching", isRelay() ? "relay" : "manual");
        texts.put("continuous-current", Plain.text(rating()));
        if (isRelay()) {
            texts.put("coil-resistance", Plain.text(row("70-a-coil-resistance").quantity("value", Units.OHM)));
            texts.put("trigger-conductor", byGauge ? "nec-stranded" : "iso-6722-1");
            texts.put("trigger-size", byGauge ? TRIGGER_GAUGE : TRIGGER_SIZE);
            texts.put("trigger-route-length", Plain.text(route));
        }
        return Part.read(id, PartKind.SWITCH, name, fedBy, isRelay() ? trigger : "", "", texts).partOrRefuse();
    }
}
