package loomwright.browser;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.PartFault;
import loomwright.circuit.check.Examination;
import loomwright.circuit.page.BenchMarkup;
import loomwright.circuit.page.CircuitMarkup;
import loomwright.circuit.page.PartFound;
import loomwright.circuit.page.PlanMarkup;
import loomwright.circuit.page.PlanMarkup.Plan;
import loomwright.circuit.page.Sheet;
import loomwright.markup.Links;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;
import org.teavm.jso.dom.xml.NodeList;

/** Drawing, verdict, and the sheet that is chosen. What cannot be worked out leaves the last good figures in place, marked as old. */
final class CircuitView {
    /** Up to so many parts all that is in sight is shown at once. */
    private static final int SMALL_CIRCUIT = 100;

    private static final Links LINKS = new Links("");

    private final HTMLDocument document;
    private final HTMLElement plan;
    private final HTMLElement rows;
    private final HTMLElement bar;
    private final HTMLElement sheets;
    private final HTMLElement faultList;
    private final HTMLElement found;
    private final HTMLElement own;
    private final CircuitDrawing drawing;
    private final OldMark oldFindings;
    private final SheetTabs tabs;
    /** The circuit that each sheet shows. */
    private final Map<Sheet, Circuit> painted = new HashMap<>();
    /** The last circuit that could be worked out; null if there was none. */
    private Examination good;
    private int timer;

    CircuitView(HTMLDocument document) {
        this.document = document;
        this.plan = document.getElementById("circuit-plan");
        this.rows = document.getElementById("circuit-rows");
        this.bar = document.getElementById("circuit-bar");
        this.drawing = new CircuitDrawing(rows);
        this.sheets = document.getElementById("circuit-sheets");
        this.faultList = document.getElementById("circuit-faults");
        this.found = document.getElementById("circuit-findings");
        this.own = document.getElementById("part-found");
        this.oldFindings = new OldMark(document.getElementById("circuit-verdicts"));
        this.tabs = new SheetTabs(document, this::showChosen);
        Folds.listen(found, () -> {
            painted.remove(Sheet.FINDINGS);
            show(Sheet.FINDINGS);
        });
    }

    private void showChosen() {
        show(tabs.chosen());
    }

    /** An entry is being typed: what stands here is from before it. */
    void typing() {
        oldFindings.typing();
        Dom.mark(bar, "typing", true);
    }

    /**
     * Shows a circuit.
     *
     * @param faults what stands in the way: entries that cannot be used, and what does not go together
     */
    void show(Examination examination, List<PartFault> faults, String chosen) {
        Circuit circuit = examination.circuit();
        if (examination.faults().isEmpty()) {
            good = examination;
        }
        Set<String> faulty = new HashSet<>();
        for (PartFault fault : faults) {
            faulty.add(fault.partId());
        }
        // The drawing follows the circuit; only an entry that cannot be used leaves it behind.
        Dom.mark(plan, "old", faults.size() > examination.faults().size());
        Dom.mark(sheets, "old", !faults.isEmpty());
        Dom.mark(bar, "typing", false);
        oldFindings.clear();
        if (!faults.isEmpty()) {
            oldFindings.refused();
        }
        Repaint.inside(faultList, faults.isEmpty() ? "" : CircuitMarkup.faults(circuit, faults));
        Repaint.inside(bar.querySelector("[data-pane=verdict]"), BenchMarkup.verdict(examination, faults.size()));
        Repaint.inside(own, PartFound.of(LINKS, examination, chosen));
        Window.clearTimeout(timer);
        Dom.mark(document.getDocumentElement(), "large", !isSmall(circuit));
        Supplier<Runnable> drawn = () -> {
            Plan now = PlanMarkup.of(circuit, examination, faulty, chosen);
            return () -> drawing.show(circuit, now);
        };
        if (isSmall(circuit)) {
            drawn.get().run();
            show(Sheet.FINDINGS);
            showChosen();
            return;
        }
        List<Supplier<Runnable>> left = new ArrayList<>(List.of(() -> written(Sheet.FINDINGS), () -> written(tabs.chosen())));
        if (drawing.lacksAnyOf(circuit)) {
            drawn.get().run();
        } else {
            left.add(0, drawn);
        }
        oneByOne(left);
    }

    /** One after the other, each written first and then painted, so that a key pressed in between is not held up. */
    private void oneByOne(List<Supplier<Runnable>> left) {
        if (!left.isEmpty()) {
            timer = Window.setTimeout(() -> {
                Runnable painted = left.remove(0).get();
                timer = Window.setTimeout(() -> {
                    painted.run();
                    oneByOne(left);
                }, 0);
            }, 0);
        }
    }

    /** Whether all can be done at once without holding up a key. */
    static boolean isSmall(Circuit circuit) {
        return circuit.parts().size() <= SMALL_CIRCUIT;
    }

    /** For paper: every sheet, with all that passed. */
    void showAllSheets() {
        if (good != null) {
            painted.remove(Sheet.FINDINGS);
            Repaint.inside(found, CircuitMarkup.found(LINKS, good, true));
        }
        for (Sheet sheet : CircuitMarkup.CHOSEN) {
            show(sheet);
        }
    }

    private void show(Sheet sheet) {
        written(sheet).run();
    }

    /** A sheet put into words; what comes back shows it. Nothing is done if it stands there already, or does by then. */
    private Runnable written(Sheet sheet) {
        if (good == null || sheet == Sheet.DRILLING || painted.get(sheet) == good.circuit()) {
            return () -> { };
        }
        Circuit circuit = good.circuit();
        boolean isFound = sheet == Sheet.FINDINGS;
        String words = isFound ? CircuitMarkup.found(LINKS, good, Folds.isOpen(found)) : CircuitMarkup.inside(sheet, LINKS, good);
        HTMLElement element = isFound ? found : document.getElementById(CircuitMarkup.id(sheet));
        return () -> {
            if (painted.get(sheet) == circuit) {
                return;
            }
            painted.put(sheet, circuit);
            Repaint.inside(element, words);
            NodeList<?> boxes = element.querySelectorAll("[data-reading]");
            for (int i = 0; i < boxes.getLength(); i++) {
                fill((HTMLInputElement) boxes.get(i), circuit);
            }
        };
    }

    /** A box holds what was read, unless just that is being typed in other letters. */
    private static void fill(HTMLInputElement box, Circuit circuit) {
        Part part = circuit.part(box.getAttribute("data-reading"));
        if (part != null && !box.getValue().strip().equals(part.reading())) {
            box.setValue(part.reading());
        }
    }

    /** The row of a part. */
    HTMLElement row(String id) {
        return rows.querySelector("[data-part='" + id + "'] .pick");
    }

    /** Brings the row of a part into what can be seen of the drawing. */
    void follow(String id) {
        CircuitPanes.follow(row(id), plan);
    }
}
