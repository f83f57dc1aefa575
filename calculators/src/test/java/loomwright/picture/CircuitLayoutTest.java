package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class CircuitLayoutTest {
    @Provide
    Arbitrary<Component> components() {
        Arbitrary<String> labels = Arbitraries.of(
                "lamp", "fuse-link 15 A", "accessory outlet at the bench", "switch", "", "water pump", "disconnector", "volts: across two points");
        return Combinators.combine(Arbitraries.of(Symbol.class), labels).as(Component::new);
    }

    @Provide
    Arbitrary<List<Component>> branches() {
        return components().list().ofMinSize(1).ofMaxSize(4);
    }

    @Property(tries = 100)
    void labelsOfALoopNeverLieOverEachOther(@ForAll("branches") List<Component> out, @ForAll("branches") List<Component> back) {
        Loop loop = new Loop(Symbol.LAMP, "lamp").across(Symbol.VOLTMETER, "volts");
        out.forEach(component -> loop.out(component.symbol(), component.label()));
        back.forEach(component -> loop.back(component.symbol(), component.label()));
        assertEquals(List.of(), faults(loop.picture("Loop", "A loop.")));
    }

    @Property(tries = 100)
    void labelsOfALadderNeverLieOverEachOther(
            @ForAll("branches") List<Component> supply, @ForAll("branches") List<Component> first, @ForAll("branches") List<Component> second) {
        Ladder ladder = new Ladder(supply)
                .rung(first, "2.5 mm², 4.2 m, from the fuse panel along the floor to the bench and up the wall")
                .rung(second, "");
        assertEquals(List.of(), faults(ladder.picture("Ladder", "A ladder.")));
    }

    @Test
    void aRungGrowsTheLadderAndTouchesBothRails() {
        List<Component> supply = List.of(new Component(Symbol.BATTERY, "battery"), new Component(Symbol.FUSE_LINK, "main"));
        Ladder ladder = new Ladder(supply);
        double bare = ladder.picture("Ladder", "A ladder.").height();
        Picture one = ladder.rung(List.of(new Component(Symbol.LAMP, "lamp")), "").picture("Ladder", "A ladder.");
        assertTrue(one.height() > bare + 40);
        List<Double> joints = new ArrayList<>();
        new DrawnSvg(one.svg("l")).elements("circle").stream()
                .filter(circle -> circle.getAttribute("class").equals("solid"))
                .forEach(circle -> joints.add(Double.parseDouble(circle.getAttribute("cx"))));
        assertEquals(List.of(14.0, 306.0), joints);
    }

    private static List<String> faults(Picture picture) {
        return new DrawnSvg(picture.svg("c")).textFaults();
    }
}
