package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Bars;
import loomwright.picture.Bars.Bar;
import loomwright.picture.Bars.Part;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.NumberText;
import loomwright.quantity.Units;

/** How much conductor may stay without a fuse or breaker at its source, by rule set. */
final class FuseDistanceByRuleSet implements Drawing {
    @Override
    public String name() {
        return "fuse-distance-by-rule-set";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        List<Bar> bars = List.of(
                bar("33-cfr-source", "33 CFR 183.455(b), in the open"),
                bar("nec-552", "NEC 552, park trailers"),
                bar("iso-13590-battery", "ISO 13590, personal watercraft only"),
                bar("33-cfr-sheathed", "33 CFR 183.455(b), sheathed all the way"),
                bar("abyc-older", "ABYC E-11, older, sheathed battery cable"));
        double longest = bars.get(bars.size() - 1).parts().get(0).value();
        return new Bars("Rule set and case", Axis.fromZero("Length without protection (m)", longest), bars)
                .picture(
                        "Distance from the source, by rule set",
                        "Five bars of the greatest length of conductor between its source and its fuse or breaker. The shortest is 33 CFR 183.455(b)"
                                + " in the open; then NEC 552, ISO 13590 for personal watercraft, 33 CFR sheathed, and the longest, an older ABYC E-11. The longest is"
                                + " about ten times the shortest.");
    }

    private static Bar bar(String rules, String name) {
        double limit = Computed.by("fuse-place").with("rule-set", rules).with("distance", "0 m").number("limit", Units.METRE);
        Style style = rules.startsWith("33-cfr") ? Style.SOLID_ACCENT : Style.SOLID;
        return new Bar(name, NumberText.fixed(limit, 2) + "\u00a0m", List.of(new Part("", limit, style)));
    }
}
