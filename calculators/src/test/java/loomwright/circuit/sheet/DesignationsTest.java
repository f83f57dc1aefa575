package loomwright.circuit.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.WorkedCircuits;
import org.junit.jupiter.api.Test;

class DesignationsTest {
    private final Circuit punt = WorkedCircuits.punt();

    @Test
    void numbersEachKindFromTheBattery() {
        assertEquals("F2", Designations.of(punt).of("pump-fuse"));
        assertEquals("W3 Run to the stern lamp", Designations.of(punt).titled("lamp-run"));
    }

    @Test
    void keepsADesignationOfTheReadersOwn() {
        Designations designations = Designations.of(named("pump-fuse", "F12 Fuse-link of the pump"));
        assertEquals("F12", designations.of("pump-fuse"));
        assertEquals("F12 Fuse-link of the pump", designations.titled("pump-fuse"));
        assertEquals("Fuse-link of the pump", designations.title("pump-fuse"));
        assertEquals("F2", designations.of("lamp-fuse"), "the others are numbered without it");
    }

    @Test
    void takesNoNumberTwice() {
        // the main fuse would be F1
        Circuit taken = named("lamp-fuse", "F1 Fuse-link of the stern lamp");
        assertEquals("F2 F3 F1", all(Designations.of(taken), "main-fuse", "pump-fuse", "lamp-fuse"));
        Circuit twice = CircuitEdits.named(taken, "pump-fuse", "F1 Fuse-link of the bilge pump").circuit();
        assertEquals("F1 Fuse-link of the bilge pump, F3 F1 Fuse-link of the stern lamp",
                Designations.of(twice).titled("pump-fuse") + ", " + Designations.of(twice).titled("lamp-fuse"));
    }

    @Test
    void takesAWordForAWord() {
        for (String name : new String[] {"F", "F1", "F1234 Fuse-link", "f1 Fuse-link", "FX1 Fuse-link", "4/6 Fuse-link", "12 V fuse", "F1- Fuse"}) {
            assertEquals("F2", Designations.of(named("pump-fuse", name)).of("pump-fuse"), name);
        }
    }

    @Test
    void labelsTheTwoConductorsOfARunByTheirOwnNumbers() {
        Circuit pair = named("pump-run", "4/6 Run to the bilge pump");
        assertEquals("4/6", Designations.of(pair).of("pump-run"));
        List<String> texts = Label.of(pair).stream()
                .filter(label -> label.partId().equals("pump-run"))
                .map(Label::text)
                .toList();
        assertEquals("4 +, 4\u00a0mm² to E1", texts.get(0));
        // The return passes no fuse-link: it ends at the panel's negative, not at F2.
        assertEquals("6 \u2212, 4\u00a0mm² from negative of P1", texts.get(3));
    }

    @Test
    void leadsTheReturnPastDevicesAndKeepsOneWireWhole() {
        Circuit shared = CircuitEdits.named(CircuitEdits.named(punt, "lead", "1/9 Lead").circuit(), "pump-run", "2/9 Run").circuit();
        shared = CircuitEdits.without(shared, "fuse-panel");
        List<String> texts = Label.of(shared).stream().map(Label::text).filter(text -> text.startsWith("9")).toList();
        assertEquals(List.of("9 \u2212, 4\u00a0mm² to E1", "9 \u2212, 4\u00a0mm² from negative of G1"), texts);
    }

    private static String all(Designations designations, String... parts) {
        return String.join(" ", Arrays.stream(parts).map(designations::of).toList());
    }

    private Circuit named(String part, String name) {
        return CircuitEdits.named(punt, part, name).circuit();
    }
}
