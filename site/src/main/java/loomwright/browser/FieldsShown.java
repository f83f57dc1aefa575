package loomwright.browser;

import java.util.List;
import java.util.Map;
import loomwright.markup.Absent;
import loomwright.markup.FormMarkup;
import loomwright.worked.Description;
import loomwright.worked.EntryFault;
import loomwright.worked.Field;
import org.teavm.jso.dom.html.HTMLElement;

/** Which fields of a form are to be seen: those that belong to the way chosen; what wants a look is unfolded. */
final class FieldsShown {
    private final HTMLElement form;
    private final Description description;

    FieldsShown(HTMLElement form, Description description) {
        this.form = form;
        this.description = description;
    }

    /** From now on these fields do not belong. One that comes in by what the reader chose is unfolded, or nobody would see it. */
    void without(Absent absent) {
        for (Field field : description.fields()) {
            HTMLElement element = element(field.key());
            boolean hidden = absent.has(field.key());
            if (element.isHidden() != hidden) {
                element.setHidden(hidden);
                if (!hidden) {
                    open(element);
                }
            }
        }
        HTMLElement others = form.querySelector(".others");
        if (others != null) {
            int count = others.querySelectorAll(".field:not([hidden])").getLength();
            others.setHidden(count == 0);
            others.querySelector("summary").setTextContent(FormMarkup.more(count));
        }
    }

    /** Fields that need another look can be seen, whether they belong or not. */
    void reveal(List<EntryFault> faults) {
        for (EntryFault fault : faults) {
            HTMLElement element = element(fault.fieldKey());
            element.setHidden(false);
            open(element);
        }
    }

    /** Figures came from elsewhere: the folds that hold some of them open. */
    void unfold(Map<String, String> entries) {
        for (Field field : description.fields()) {
            if (entries.containsKey(field.key())) {
                open(element(field.key()));
            }
        }
    }

    private void open(HTMLElement element) {
        HTMLElement fold = Dom.closest(element, "form.try details");
        if (fold != null) {
            fold.setHidden(false);
            fold.setAttribute("open", "");
        }
    }

    private HTMLElement element(String key) {
        return form.querySelector("[data-input='" + key + "']");
    }
}
