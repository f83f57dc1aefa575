package loomwright.load;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.worked.Calculator;
import loomwright.worked.Candidate;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * What a set of USB ports draws from the supply behind them.
 *
 * <p>input power = power of the ports ÷ efficiency + own draw, in W; current = input power ÷ voltage. A Power Delivery port of P watts uses
 * the voltage of its power rule. Holds for all ports at their most, up to the shared limit.
 *
 * @source tables usb-power, usb-pd-power-rules; efficiency for planning from the table dc-dc-efficiency (common practice)
 */
public final class UsbPowerBudget implements Calculator {
    @Override
    public Description description() {
        return UsbFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        List<UsbPort> ports = ports(entries);
        requireOrder(entries);
        Values values = Values.of(UsbFormulas.EFFICIENCY, entries.quantity("efficiency"))
                .with(UsbFormulas.OWN, entries.quantity("own-draw"))
                .with(UsbFormulas.SUPPLY, entries.quantity("supply-voltage"))
                .with(UsbFormulas.LOWEST, entries.quantity("lowest-voltage"));
        List<Symbol> powers = new ArrayList<>();
        for (UsbPort port : ports) {
            values = port.work(values, working);
            powers.add(port.power());
        }
        Quantity together = working.compute(
                "Add the ports up", UsbFormulas.sum(UsbFormulas.TOGETHER, powers), values, Units.WATT, "All may be busy at once.");
        Quantity output = output(entries, working, together);
        values = values.with(UsbFormulas.TOGETHER, together).with(UsbFormulas.OUTPUT, output);
        values = finish(working, values);
        for (UsbPort port : ports) {
            working.result(UsbPort.key(port.number(), "power"), values.of(port.power()));
            working.result(UsbPort.key(port.number(), "voltage"), values.of(port.voltage()));
            working.result(UsbPort.key(port.number(), "current"), values.of(port.current()));
        }
        UsbChecks.addFindings(working, entries, ports, values);
        UsbChecks.addSlips(working, ports, values);
        addNext(working, values);
    }

    private static List<UsbPort> ports(Entries entries) {
        List<UsbPort> ports = new ArrayList<>();
        for (int number = 1; number <= UsbFields.PORTS; number++) {
            UsbPort port = UsbPort.read(entries, number);
            if (port != null) {
                ports.add(port);
            }
        }
        if (ports.isEmpty()) {
            throw new Refusal(UsbPort.key(1, "level"), "Port 1: level is \u201cno port\u201d, and so is every other: choose at least one");
        }
        return ports;
    }

    private static void requireOrder(Entries entries) {
        Quantity lowest = entries.quantity("lowest-voltage");
        Quantity supply = entries.quantity("supply-voltage");
        if (lowest.base() > supply.base()) {
            throw new Refusal(
                    "lowest-voltage",
                    "Lowest supply voltage is " + lowest.text() + ", above the Supply voltage of " + supply.text()
                            + ": enter a value at or below it");
        }
    }

    private static Quantity output(Entries entries, WorkingBuilder working, Quantity together) {
        if (!entries.has("shared-limit")) {
            return together;
        }
        Quantity limit = entries.quantity("shared-limit").in(Units.WATT);
        boolean limited = limit.base() < together.base();
        List<Candidate> candidates = List.of(
                new Candidate(together.text(), !limited, "the ports added up"), new Candidate(limit.text(), limited, "the shared limit"));
        return working.choose(
                "Take the smaller of the sum and the shared limit", candidates, limited ? limit : together,
                "One converter feeds all ports, and gives no more than its limit.", Source.of(Document.COMPUTED, "shared limit as you entered it"));
    }

    private static Values finish(WorkingBuilder working, Values given) {
        Quantity input = working.compute(
                "Divide by the efficiency and add the own draw", UsbFormulas.INPUT_POWER, given, Units.WATT,
                "The converter keeps a part as heat, so more goes in than comes out.");
        Values values = given.with(UsbFormulas.INPUT, input);
        Quantity heat = working.compute(
                "Take what comes out from what goes in", UsbFormulas.HEAT_LOST, values, Units.WATT, "The rest warms the outlet.");
        Quantity current = working.compute(
                "Divide by the supply voltage", UsbFormulas.SUPPLY_CURRENT, values, Units.AMPERE, "Watts are volts times amperes.");
        Quantity atLowest = working.compute(
                "Divide by the lowest voltage", UsbFormulas.LOWEST_CURRENT, values, Units.AMPERE,
                "The converter takes the same watts, so fewer volts mean more amperes.");
        working.result("current", current);
        working.result("current-at-lowest", atLowest);
        working.result("output-power", values.of(UsbFormulas.OUTPUT));
        working.result("ports-power", values.of(UsbFormulas.TOGETHER));
        working.result("input-power", input);
        working.result("heat", heat);
        return values.with(UsbFormulas.CURRENT, current).with(UsbFormulas.CURRENT_AT_LOWEST, atLowest);
    }

    private static void addNext(WorkingBuilder working, Values values) {
        String design = values.of(UsbFormulas.CURRENT_AT_LOWEST).text();
        working.next("voltage-drop", "What voltage is lost on the way?", "current", design);
        working.next("fuse-choice", "Which fuse-link protects this circuit?", "design-current", design);
        working.next(
                "day-energy", "What does it take in a day?",
                "load-1-power", values.of(UsbFormulas.INPUT).text());
    }
}
