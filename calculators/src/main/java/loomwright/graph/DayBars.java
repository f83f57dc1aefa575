package loomwright.graph;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Bars;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Result;

/** The energy of a day as bars, one a load. */
final class DayBars implements CalculatorGraph {
    private static final String ENERGY = "-energy";

    @Override
    public String calculator() {
        return "day-energy";
    }

    @Override
    public Picture draw(Rerun here) {
        List<Bars.Bar> bars = new ArrayList<>();
        double largest = 0;
        for (Result result : here.working().results()) {
            if (result.output().key().endsWith(ENERGY)) {
                double energy = result.quantity().in(Units.WATT_HOUR).value();
                largest = Math.max(largest, energy);
                bars.add(new Bars.Bar(
                        name(here, result.output().key()), result.quantity().text(), List.of(new Bars.Part("", energy, Style.SOLID_ACCENT))));
            }
        }
        if (largest == 0) {
            return null;
        }
        return new Bars("Load", Axis.fromZero("Energy of a day (Wh)", largest).parts(4), bars).picture(
                "Energy of a day, load by load",
                "One level bar a load. Together they take " + here.result("energy-per-day").text() + ".");
    }

    /** What a bar stands for: the load with what it draws and for how long. */
    private static String name(Rerun here, String resultKey) {
        String load = resultKey.substring(0, resultKey.length() - ENERGY.length());
        if (load.equals("standing")) {
            return "Standing draw, " + here.entry("standing-current").text();
        }
        Quantity power = here.entry(load + "-power");
        Quantity draw = power == null ? here.entry(load + "-current") : power;
        return "Load " + load.substring(load.length() - 1) + ": " + draw.text() + ", " + here.entry(load + "-hours").text();
    }
}
