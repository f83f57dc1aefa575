package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import loomwright.markup.FieldMarkup;
import loomwright.markup.FormMarkup;
import loomwright.markup.Place;
import loomwright.worked.EntryFault;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/** What needs another look: a message under each field, and a summary above them all. */
final class FaultNotes {
    private final HTMLElement form;
    private final HTMLElement summary;
    private final Place place;
    private List<EntryFault> shown = List.of();
    private String shownSummary = "";

    FaultNotes(HTMLElement form, Place place) {
        this.form = form;
        this.place = place;
        this.summary = form.querySelector(".summary");
        summary.addEventListener("click", event -> Dom.followToField(event));
    }

    /**
     * Shows the faults.
     *
     * @param newOnes whether to show those too that were not shown before; while a reader types, they wait
     */
    void show(List<EntryFault> faults, boolean newOnes) {
        List<EntryFault> show = new ArrayList<>();
        for (EntryFault fault : faults) {
            if (newOnes || isShown(fault.fieldKey())) {
                show.add(fault);
            }
        }
        String markup = show.isEmpty() ? "" : FormMarkup.summary(place, show);
        if (markup.equals(shownSummary)) {
            return;
        }
        removeMessages();
        for (EntryFault fault : show) {
            message(fault);
        }
        summary.setInnerHTML(markup);
        summary.setHidden(show.isEmpty());
        shown = show;
        shownSummary = markup;
    }

    void clear() {
        show(List.of(), true);
    }

    /** What a screen reader is told: the messages shown, or nothing. */
    String spoken() {
        StringBuilder text = new StringBuilder();
        for (EntryFault fault : shown) {
            text.append(text.length() == 0 ? "" : ". ").append(fault.message());
        }
        return text.toString();
    }

    void goToSummary() {
        if (!shown.isEmpty()) {
            summary.focus();
        }
    }

    private boolean isShown(String fieldKey) {
        for (EntryFault fault : shown) {
            if (fault.fieldKey().equals(fieldKey)) {
                return true;
            }
        }
        return false;
    }

    private void message(EntryFault fault) {
        HTMLElement field = form.querySelector("[data-input='" + fault.fieldKey() + "']");
        HTMLElement control = field.querySelector("[name]");
        Dom.append(field, FieldMarkup.error(control.getId(), fault.message()));
        control.setAttribute("aria-invalid", "true");
        String help = control.getAttribute("aria-describedby");
        String error = control.getId() + "-error";
        control.setAttribute("aria-describedby", help == null ? error : help + " " + error);
    }

    /** Marks a control as one to look at again, described by what says why; or takes that away. */
    static void tie(HTMLElement control, String describing, boolean isWrong) {
        if (isWrong) {
            control.setAttribute("aria-invalid", "true");
            control.setAttribute("aria-describedby", describing);
        } else {
            control.removeAttribute("aria-invalid");
            control.removeAttribute("aria-describedby");
        }
    }

    private void removeMessages() {
        NodeList<? extends HTMLElement> controls = form.querySelectorAll("[aria-invalid]");
        for (int i = 0; i < controls.getLength(); i++) {
            HTMLElement control = controls.get(i);
            control.removeAttribute("aria-invalid");
            String error = control.getId() + "-error";
            String left = control.getAttribute("aria-describedby").replace(error, "").strip();
            if (left.isEmpty()) {
                control.removeAttribute("aria-describedby");
            } else {
                control.setAttribute("aria-describedby", left);
            }
            form.getOwnerDocument().getElementById(error).delete();
        }
    }
}
