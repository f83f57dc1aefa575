package loomwright.generator.drawing;

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

/** What may be taken out of batteries with the same label: LiFePO4, lead-acid, and lead-acid in the cold. */
final class UsableAmpereHours implements Drawing {
    @Override
    public String name() {
        return "usable-ampere-hours";
    }

    @Override
    public List<String> takes() {
        return List.of("capacity", "temperature");
    }

    @Override
    public Picture draw(Given given) {
        double printed = given.number("capacity", Units.AMPERE_HOUR);
        given.quantity("temperature", Units.CELSIUS);
        double cold = battery(given, "lead-acid").with("usable-depth", "100 %").with("temperature", given.text("temperature"))
                .number("usable-capacity", Units.AMPERE_HOUR);
        Quantity lithium = usable(battery(given, "lifepo4"));
        Quantity lead = usable(battery(given, "lead-acid"));
        Quantity coldLead = usable(battery(given, "lead-acid").with("temperature", given.text("temperature")));
        List<Bar> bars = List.of(
                bar("LiFePO4", lithium, printed, printed),
                bar("lead-acid", lead, printed, printed),
                bar("lead-acid at " + given.label("temperature"), coldLead, cold, printed));
        Axis axis = Axis.fromZero("Capacity on the label (Ah)", printed);
        return new Bars("Battery", axis, bars)
                .picture(
                        "Ampere-hours to plan with",
                        "Three bars, each as long as the " + given.text("capacity") + " on the label. The part to plan with is " + lithium.text(3)
                                + " for LiFePO4, " + lead.text(3) + " for lead-acid and " + coldLead.text(3) + " for lead-acid at "
                                + given.text("temperature") + ", where another " + NumberText.significant(printed - cold, 3)
                                + " Ah are lost to the cold. The rest stays in.");
    }

    private static Computed battery(Given given, String chemistry) {
        return Computed.by("run-time")
                .with("chemistry", chemistry)
                .with("capacity", given.text("capacity"))
                .with("cold-table", "army-manual")
                .with("load-current", "1 A");
    }

    private static Quantity usable(Computed battery) {
        return battery.result("usable-capacity", Units.AMPERE_HOUR);
    }

    private static Bar bar(String name, Quantity usable, double there, double printed) {
        Part plan = new Part("to plan with", usable.value(), Style.SOLID_ACCENT);
        Part stays = new Part("stays in the battery", there - usable.value(), Style.BOX);
        Part lost = new Part("not given in the cold", printed - there, Style.HATCH);
        return new Bar(name, usable.text(3).replace(' ', '\u00a0'), there < printed ? List.of(plan, stays, lost) : List.of(plan, stays));
    }
}
