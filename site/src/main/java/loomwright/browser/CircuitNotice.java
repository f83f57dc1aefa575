package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.file.FileFault;
import loomwright.circuit.page.ToolsMarkup;
import org.teavm.jso.dom.html.HTMLElement;

/** What the page has to ask or to refuse, above everything else; one thing at a time. */
final class CircuitNotice {
    private static final int MOST_REASONS = 5;

    private final HTMLElement element;
    private Runnable take;
    private Runnable keep;

    CircuitNotice(HTMLElement element) {
        this.element = element;
        element.addEventListener("click", event -> answered(Dom.closest((HTMLElement) event.getTarget(), "[data-does]")));
    }

    /** Whether an answer is awaited. */
    boolean isAsking() {
        return take != null;
    }

    void ask(String words, String takeWords, Runnable whenTaken, String keepWords, Runnable whenKept) {
        take = whenTaken;
        keep = whenKept;
        element.setInnerHTML(ToolsMarkup.question(words, takeWords, keepWords));
    }

    void refuse(String words, List<FileFault> faults) {
        take = null;
        keep = null;
        List<String> reasons = new ArrayList<>();
        for (int i = 0; i < faults.size() && i < MOST_REASONS; i++) {
            reasons.add(faults.get(i).text());
        }
        if (faults.size() > MOST_REASONS) {
            reasons.add("and " + (faults.size() - MOST_REASONS) + " more");
        }
        element.setInnerHTML(ToolsMarkup.refusal(words, reasons));
        Focus.go(element);
    }

    void clear() {
        take = null;
        keep = null;
        element.setInnerHTML("");
    }

    private void answered(HTMLElement button) {
        if (button == null) {
            return;
        }
        String answer = button.getAttribute("data-does");
        Runnable action = answer.equals("take") ? take : keep;
        clear();
        Focus.go(element);
        if (action != null && !answer.equals("dismiss")) {
            action.run();
        }
    }
}
