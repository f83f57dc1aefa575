package loomwright.supply;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.Description;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the comparison of two ways to charge asks and answers. */
final class RouteFields {
    static final Description DESCRIPTION = new Description(
            "two-routes",
            "Direct from 12 V, or by inverter",
            "How much does it cost to charge by inverter and mains adapter instead of direct from 12 V?",
            List.of(
                    "Both ways put the same energy into the device.",
                    "An efficiency counts while the device charges; a standing draw counts for the rest of the time that the part is switched on.",
                    "A mains adapter that idles loads the inverter with its standing draw and no more.",
                    "The efficiencies are those you enter: they fall at small loads, and labels give the best."),
            List.of(
                    QuantityField.of("device-power", "Power at the device", "Watts that go into the device while it charges.", 0.1, 5000, Units.WATT),
                    hours("charging-hours", "Time it charges in a day", "Hours of a day with this power."),
                    efficiency("direct-efficiency", "Efficiency of the direct charger", "80 % to 90 % is common practice for planning.")
                            .usually("80 %"),
                    standing("direct-standing", "Standing draw of the direct charger", "What it takes with nothing plugged in."),
                    hours("direct-hours", "Time the direct charger is switched on", "Hours of a day, with those it charges.").usually("24 h"),
                    efficiency("inverter-efficiency", "Efficiency of the inverter", "From its data sheet, at this load."),
                    QuantityField.of(
                            "inverter-standing", "Standing draw of the inverter",
                            "Also called no-load draw; from its data sheet. Few inverters have none.", 0, 200, Units.WATT),
                    hours("inverter-hours", "Time the inverter is switched on", "Hours of a day, with those it charges.").usually("24 h"),
                    efficiency("adapter-efficiency", "Efficiency of the mains adapter", "From its label or data sheet."),
                    standing("adapter-standing", "Standing draw of the mains adapter", "What it takes plugged in with nothing to charge."),
                    SupplyFields.SYSTEM_VOLTAGE),
            List.of(
                    new Output("direct-energy", "Direct from 12 V: energy of a day", Units.WATT_HOUR),
                    new Output("inverter-energy", "By inverter: energy of a day", Units.WATT_HOUR),
                    new Output("difference", "Extra energy of the inverter route in a day", Units.WATT_HOUR),
                    new Output("difference-charge", "Extra ampere-hours of the inverter route in a day", Units.AMPERE_HOUR),
                    new Output("device-energy", "Energy into the device in a day", Units.WATT_HOUR),
                    new Output("direct-lost", "Direct from 12 V: energy lost in a day", Units.WATT_HOUR),
                    new Output("inverter-lost", "By inverter: energy lost in a day", Units.WATT_HOUR),
                    new Output("inverter-route-efficiency", "Efficiency of the inverter route over the day", Units.PERCENT),
                    new Output("break-even-efficiency", "Efficiency at which direct charging is no better", Units.PERCENT)),
            List.of(
                    new NamedFormula("device-energy", RouteFormulas.DEVICE_ENERGY),
                    new NamedFormula("direct-energy", RouteFormulas.DIRECT_ENERGY),
                    new NamedFormula("inverter-energy", RouteFormulas.INVERTER_ENERGY),
                    new NamedFormula("inverter-idle", RouteFormulas.INVERTER_IDLE_ENERGY),
                    new NamedFormula("difference", RouteFormulas.EXTRA),
                    new NamedFormula("break-even", RouteFormulas.BREAK_EVEN_EFFICIENCY)));

    private RouteFields() {}

    private static QuantityField efficiency(String key, String label, String help) {
        return QuantityField.of(key, label, help, 1, 100, Units.PERCENT);
    }

    private static QuantityField standing(String key, String label, String help) {
        return QuantityField.of(key, label, help, 0, 200, Units.WATT).usually("0 W");
    }

    private static QuantityField hours(String key, String label, String help) {
        return QuantityField.of(key, label, help, 0.01, 24, Units.HOUR, Units.MINUTE);
    }
}
