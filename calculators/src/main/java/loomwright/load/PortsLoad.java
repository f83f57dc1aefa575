package loomwright.load;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;

/**
 * What USB ports draw from the supply, for a whole circuit, where no single step is shown.
 *
 * <p>P_in = P_out ÷ η, and the current is largest at the lowest voltage: I = P_in ÷ U_low. The ports together give no more than their shared
 * limit.
 *
 * @param asked the watts of all ports together
 * @param sharedLimit the most they give together, or null if the label names none
 * @param efficiency of their converter
 * @param source where the efficiency comes from
 * @source definition of efficiency; table dc-dc-efficiency
 */
public record PortsLoad(Quantity asked, Quantity sharedLimit, Quantity efficiency, Source source) {
    /** Ports whose converter has an efficiency that the reader gave. */
    public static PortsLoad of(Quantity asked, Quantity sharedLimit, Quantity efficiency) {
        return new PortsLoad(asked, sharedLimit, efficiency, Source.of(Document.COMPUTED, "the efficiency is your own entry"));
    }

    /** Ports whose converter is known by its kind only: the least efficiency for that kind is taken. */
    public static PortsLoad of(Quantity asked, Quantity sharedLimit, Converter kind) {
        Row row = kind.row();
        return row == null
                ? of(asked, sharedLimit, Quantity.of(100, Units.PERCENT))
                : new PortsLoad(asked, sharedLimit, row.quantity("efficiency"), row.source());
    }

    /** The watts that the ports give. */
    public Quantity output() {
        return sharedLimit != null && sharedLimit.base() < asked.base() ? sharedLimit : asked;
    }

    /** The watts that their converter takes. */
    public Quantity input() {
        return DeviceFormulas.INPUT_POWER_FROM_DEVICE.value(
                Values.of(DeviceSymbols.DEVICE_POWER, output()).with(DeviceSymbols.EFFICIENCY, efficiency), Units.WATT);
    }

    /** The current at a voltage; at the lowest of the supply it is the design current. */
    public Quantity current(Quantity voltage) {
        return Quantity.of(input().base() / voltage.base(), Units.AMPERE);
    }

    /** The watts asked for held against the shared limit that was entered; null if there is none. */
    public Finding shared(String name) {
        return shared(name, Source.of(Document.COMPUTED, "the limit is your own entry"), new MissingFigure("", "shared limit", "the data sheet"));
    }

    /** The same, with where the limit comes from and the figure that would settle it. */
    public Finding shared(String name, Source limitFrom, MissingFigure figure) {
        return sharedLimit == null
                ? null
                : Comparison.of("What " + name + " asks for", asked)
                        .atMost(sharedLimit, "their shared limit", limitFrom)
                        .exact()
                        .settledBy(figure)
                        .otherwise(Verdict.CAUTION, "With every port busy each gets less: use fewer ports at once, or take an outlet that gives more together.")
                        .finding();
    }
}
