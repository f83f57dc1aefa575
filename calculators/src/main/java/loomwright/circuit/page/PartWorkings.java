package loomwright.circuit.page;

import loomwright.circuit.Node;
import loomwright.circuit.Panel;
import loomwright.circuit.Supply;
import loomwright.circuit.Switching;
import loomwright.circuit.check.DayOfCircuit;
import loomwright.circuit.solve.Solved;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.supply.BatteryDay;

/** The workings of panels, switches and the day. */
record PartWorkings(WorkingFigures of) {
    /** All that flows through the panel, the present load of the panel as its first way. */
    String headroom(Panel panel) {
        double rest = of.figure().base() - panel.presentLoad().base();
        if (rest <= 0.001) {
            return null;
        }
        if (panel.presentLoad().base() > 0) {
            of.put("way-1-current", panel.presentLoad());
        }
        of.put("new-current", Quantity.of(rest, Units.AMPERE));
        of.put("panel-limit", panel.limit());
        return "panel-headroom";
    }

    String trigger(Switching switching) {
        Node from = of.node.trigger();
        if (from == null || of.limit() == null || of.node.isOnTheWayTo(from)) {
            return null;
        }
        of.entries.put("trigger-of", switching.device() == Switching.Device.RELAY ? "relay" : "solid-state");
        of.put("coil-resistance", switching.coil());
        of.put("trigger-current", switching.triggerCurrent());
        for (Solved solved : of.examination.solution().lowest()) {
            if (solved.exists()) {
                of.put("lowest-voltage", Quantity.of(solved.volts(from), Units.VOLT));
                break;
            }
        }
        of.put("highest-voltage", of.examination.circuit().battery().highest());
        of.copy(of.node, "trigger-conductor", "conductor");
        of.copy(of.node, "trigger-size", "size");
        of.copy(of.node, "trigger-route-length", "route-length");
        of.entries.put("temperature", "20 °C");
        if (switching.triggerCapacity().isRated()) {
            of.put("wire-ampacity", switching.triggerCapacity().value());
        }
        of.put("fuse-rating", of.figure().unit() == Units.AMPERE ? of.figure() : switching.triggerFuse());
        return "trigger-loop";
    }

    /** The resistance of a switch as the voltage that its largest current drops in it; the way of the heat in one piece. */
    String switchHeat(Switching switching) {
        double amperes = of.examination.solution().designAmperes(of.node);
        if (switching.junctionToAir() == null || amperes < 0.01) {
            return null;
        }
        of.put("current", Quantity.of(amperes, Units.AMPERE));
        of.put("voltage-drop", Quantity.of(amperes * switching.resistance().base(), Units.VOLT));
        of.entries.put("junction-to-case", "0 K/W");
        of.entries.put("case-to-sink", "0 K/W");
        of.put("sink-to-air", switching.junctionToAir());
        of.put("ambient", switching.air());
        of.put("junction-limit", switching.junctionLimit());
        return "junction-temperature";
    }

    /** What a day takes against what the panel of the battery gives, if nothing else charges it. */
    String sun(DayOfCircuit day) {
        Supply battery = of.examination.circuit().battery();
        if (day.yield() == null || !WorkingFigures.isSame(day.yield(), of.limit()) || battery.solarPower() == null
                || !WorkingFigures.isSame(BatteryDay.yield(battery.solarPower(), battery.peakSunHours()), day.yield())) {
            return null;
        }
        of.put("panel-power", battery.solarPower());
        of.put("peak-sun-hours", battery.peakSunHours());
        of.put("energy-per-day", day.total());
        of.put("battery-voltage", battery.resting());
        return "panel-yield";
    }
}
