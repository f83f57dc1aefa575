package loomwright.load;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Findings and known mistakes of a USB outlet. */
final class UsbChecks {
    private static final double HAIR = 1 + 1e-9;

    private UsbChecks() {}

    static void addFindings(WorkingBuilder working, Entries entries, List<UsbPort> ports, Values values) {
        addShared(working, entries, ports, values);
        addEfficiency(working, values.of(UsbFormulas.EFFICIENCY));
        for (UsbPort port : ports) {
            if (port.asked() != null) {
                addCable(working, port, values);
            }
        }
    }

    private static void addShared(WorkingBuilder working, Entries entries, List<UsbPort> ports, Values values) {
        Quantity together = values.of(UsbFormulas.TOGETHER);
        if (entries.has("shared-limit")) {
            working.finding(PortsLoad.of(together, entries.quantity("shared-limit"), values.of(UsbFormulas.EFFICIENCY)).shared("all ports together"));
        } else if (ports.size() > 1) {
            working.finding(Finding.notKnown(
                    "No shared limit is entered, so all ports count in full: " + together.text() + ".", together, Source.of(Document.COMPUTED, ""),
                    new MissingFigure("shared-limit", "what the ports share", "the line Total on the label; it may be less")));
        }
    }

    private static void addEfficiency(WorkingBuilder working, Quantity entered) {
        Row row = PublishedTables.dcDcEfficiency().row("vehicle-usb-outlet");
        Quantity low = row.quantity("efficiency");
        Quantity high = row.quantity("efficiency-to");
        boolean below = entered.base() < low.base() / HAIR;
        String range = "what is planned for USB outlets in vehicles, " + low.text() + " to " + high.text() + "; the limit";
        Comparison comparison = Comparison.of("The efficiency", entered).exact();
        comparison = below
                ? comparison.atLeast(low, range, row.source()).otherwise(Verdict.CAUTION, "Check it: an outlet like this runs hot.")
                : comparison.atMost(high, range, row.source())
                        .otherwise(Verdict.CAUTION, "Keep it only if the data sheet gives it at this load.");
        boolean usual = Math.abs(entered.base() - low.base()) <= 1e-9;
        working.finding((usual ? comparison.assuming("the least efficiency that is planned with") : comparison).finding());
    }

    private static void addCable(WorkingBuilder working, UsbPort port, Values values) {
        Quantity most = port.cable().most();
        working.finding(Comparison.of(
                        UsbPort.name(port.number()) + " at " + values.of(port.voltage()).text() + " and " + values.of(port.current()).text(3)
                                + ": its power",
                        values.of(port.power()))
                .atMost(most, "what a cable for " + port.cable().label() + " takes", port.cable().row().source())
                .exact()
                .finding());
    }

    static void addSlips(WorkingBuilder working, List<UsbPort> ports, Values values) {
        List<Symbol> currents = new ArrayList<>();
        for (UsbPort port : ports) {
            currents.add(port.current());
        }
        working.slip(
                "usb-amperes-for-supply-amperes", "current", "Amperes on the USB side taken as amperes at the supply",
                "A converter changes volts and amperes; only the watts pass through.", UsbFormulas.sum(UsbFormulas.CURRENT, currents), values);
        working.slip(
                "watts-at-five-volts", "current", "The watts divided by 5 V", "The cable behind the outlet is at the supply voltage.",
                UsbFormulas.AT_FIVE_VOLTS, values);
        working.slip(
                "multiplied-by-the-efficiency", "current", "Multiplied by the efficiency",
                "More goes in than comes out, so divide.", UsbFormulas.MULTIPLIED, values);
        working.slip(
                "efficiency-left-out", "current", "The efficiency left out", "The converter keeps a part as heat.",
                UsbFormulas.EFFICIENCY_LEFT_OUT, values);
        working.slip(
                "shared-limit-left-out", "current", "The shared limit left out", "Together the ports get no more than the limit.",
                UsbFormulas.LIMIT_LEFT_OUT, values);
        working.slip(
                "supply-voltage-for-lowest", "current-at-lowest", "The usual supply voltage taken",
                "The current is largest when the voltage is lowest.", UsbFormulas.SUPPLY_FOR_LOWEST, values);
        working.slip(
                "current-falls-with-voltage", "current-at-lowest", "The current lowered with the voltage",
                "A lamp does that. A converter holds its watts and draws more.", UsbFormulas.SUPPLY_AMPERES_KEPT, values);
    }
}
