package loomwright.generator.drawing;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Bars;
import loomwright.picture.Bars.Bar;
import loomwright.picture.Bars.Part;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.NumberText;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** One size of conductor in four tables: bars of resistance per metre. */
final class OneSizeFourTables implements Drawing {
    @Override
    public String name() {
        return "one-size-four-tables";
    }

    @Override
    public List<String> takes() {
        return List.of("size", "temperature");
    }

    @Override
    public Picture draw(Given given) {
        given.quantity("size", Units.SQUARE_MILLIMETRE);
        given.quantity("temperature", Units.CELSIUS);
        List<Bar> bars = new ArrayList<>();
        bars.add(bar(given, "copper-by-area", "Ideal copper of that area", Style.BOX));
        bars.add(bar(given, "iec-60228-class-2", "IEC 60228 class 2, limit", Style.SOLID));
        bars.add(bar(given, "iso-6722-1", "ISO 6722-1, limit", Style.SOLID));
        bars.add(bar(given, "iec-60228-class-5", "IEC 60228 class 5, limit", Style.SOLID));
        double largest = bars.get(bars.size() - 1).parts().get(0).value();
        Axis axis = Axis.fromZero("Resistance of one metre (mΩ/m)", largest);
        return new Bars("Table", axis, bars)
                .picture(
                        "One size by four tables",
                        "Four bars of milliohms per metre at " + given.text("temperature") + " for a conductor called " + given.text("size")
                                + ": by area alone, by IEC 60228 class 2, by ISO 6722-1 and by IEC 60228 class 5, each a little longer than the"
                                + " one before.");
    }

    private static Bar bar(Given given, String conductor, String name, Style style) {
        Quantity resistance = Computed.by("conductor-resistance")
                .with("conductor", conductor)
                .with("size", given.text("size"))
                .with("temperature", given.text("temperature"))
                .with("length", "1 m")
                .result("resistance-per-metre", Units.MILLIOHM_PER_METRE);
        return new Bar(name, NumberText.fixed(resistance.value(), 2) + "\u00a0mΩ/m", List.of(new Part("", resistance.value(), style)));
    }
}
