package loomwright.circuit.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.Part;
import loomwright.circuit.PartFault;
import loomwright.circuit.RandomCircuit;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.WorkedCircuits;
import loomwright.markup.Links;
import loomwright.shape.Golden;
import loomwright.shape.LinesOnce;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.Finding;
import loomwright.worked.Option;
import org.junit.jupiter.api.Test;

/** Findings and pages of many circuits, with every figure masked. */
class CircuitShapeTest {
    private static final String[] FACTORS = {"0.5 ", "2 ", "40 "};

    @Test
    void findsTheSameOnTheCircuitsOfTheLessonsWithOneEntryChanged() {
        LinesOnce found = new LinesOnce();
        for (Circuit circuit : List.of(WorkedCircuits.trailer(), WorkedCircuits.punt())) {
            found.add(circuit.name(), findings(circuit));
            for (Part part : circuit.parts()) {
                for (Field field : part.kind().fields()) {
                    for (String text : others(field, part.text(field.key()))) {
                        Circuit changed = CircuitEdits.changed(circuit, part.id(), field.key(), text).circuit();
                        found.add(part.id() + " " + field.key() + "=" + text, changed == null ? List.of("refused") : findings(changed));
                    }
                }
            }
        }
        Golden.assertIs("circuit/changed.txt", found.text());
    }

    @Test
    void findsTheSameOnCircuitsByChance() {
        LinesOnce found = new LinesOnce();
        for (int seed = 1; seed <= 150; seed++) {
            found.add("seed " + seed, findings(RandomCircuit.of(seed)));
        }
        Golden.assertIs("circuit/by-chance.txt", found.text());
    }

    @Test
    void showsTheCircuitsOfTheLessons() {
        StringBuilder text = new StringBuilder();
        for (Circuit circuit : List.of(WorkedCircuits.trailer(), WorkedCircuits.punt())) {
            Examination examination = Examination.of(circuit);
            text.append(CircuitMarkup.printed(new Links("../"), examination));
            String last = circuit.parts().get(circuit.parts().size() - 1).id();
            text.append(CircuitMarkup.sheets(new Links("../"), Examination.of(CircuitEdits.read(circuit, last, "11.4 V").circuit()), true));
            String chosen = circuit.parts().get(2).id();
            text.append(PlanMarkup.of(circuit, examination, Set.of(circuit.parts().get(1).id()), chosen));
        }
        Golden.assertIs("circuit/pages.txt", Golden.maskedMarkup(text.toString()));
    }

    @Test
    void asksForEveryKindOfPart() {
        StringBuilder text = new StringBuilder();
        Circuit trailer = WorkedCircuits.trailer();
        Set<String> shown = new java.util.TreeSet<>();
        for (Part part : trailer.parts()) {
            if (shown.add(part.kind().key())) {
                text.append(PartFormMarkup.of(trailer, part.id(), Map.of(part.kind().fields().get(0).key(), "rubbish")));
            }
        }
        text.append(CircuitMarkup.faults(trailer, List.of(new PartFault(trailer.parts().get(1).id(), "size", "size is missing"),
                new PartFault("gone", "size", "size is missing"))));
        text.append(ToolsMarkup.tools()).append(ToolsMarkup.said()).append(ToolsMarkup.question("Take it away?", "Take", "Keep"));
        text.append(ToolsMarkup.refusal("No file", List.of("line 3")));
        Golden.assertIs("circuit/forms.txt", Golden.maskedMarkup(text.toString()));
    }

    private static List<String> others(Field field, String text) {
        List<String> others = new ArrayList<>();
        if (field instanceof ChoiceField choice) {
            for (Option option : choice.options()) {
                others.add(option.key());
            }
            others.remove(text);
        } else if (text.indexOf(' ') > 0) {
            String unit = text.substring(text.indexOf(' ') + 1);
            for (String number : FACTORS) {
                others.add(number + unit);
            }
        }
        return others;
    }

    private static List<String> findings(Circuit circuit) {
        Examination examination = Examination.of(circuit);
        List<String> lines = new ArrayList<>();
        for (PartFault fault : examination.faults()) {
            lines.add("fault " + Golden.masked(fault.partId() + " " + fault.fieldKey() + ": " + fault.message()));
        }
        for (CircuitFinding each : examination.findings()) {
            Finding finding = each.finding();
            String limit = finding.limit() == null ? "no limit" : finding.figure() != null
                    && finding.figure().dimension().equals(finding.limit().dimension())
                    ? "figure " + (Double.compare(finding.figure().base(), finding.limit().base())) : "other";
            lines.add(finding.verdict() + " " + each.check() + " " + Golden.masked(each.partId() + " " + limit + " " + finding.words() + " ["
                    + finding.source().document().key() + "] " + finding.remedy()));
        }
        return lines;
    }
}
