package loomwright.browser;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import loomwright.markup.PartFigures;
import loomwright.markup.Place;
import loomwright.worked.Description;
import org.teavm.jso.JSBody;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLSelectElement;

/** Puts figures of the reader's own circuit into an example. The page "Your circuit" leaves them beside the circuit that it keeps. */
final class OwnFigures {
    private OwnFigures() {}

    /**
     * Puts the choice of parts into an example, if there is a circuit with a part that has figures for it.
     *
     * @param take what to do with the figures of the part chosen
     * @param back goes back to the printed figures
     */
    static void mount(HTMLElement form, Place place, Description description, Consumer<Map<String, String>> take, Runnable back) {
        List<PartFigures> all = PartFigures.read(kept(PartFigures.KEPT_AS));
        String markup = PartFigures.choice(place, description, all);
        if (markup.isEmpty()) {
            return;
        }
        Dom.insertBefore(form, markup);
        HTMLSelectElement select = (HTMLSelectElement) form.getOwnerDocument().getElementById(place.id("figures-of"));
        form.addEventListener("reset", event -> select.setValue(""));
        select.addEventListener("change", event -> {
            String chosen = select.getValue();
            back.run();
            select.setValue(chosen);
            if (!chosen.isEmpty()) {
                // The form is as printed only when what listens to its reset has run.
                Window.setTimeout(() -> take.accept(named(all, chosen).forFieldsOf(description)), 0);
            }
        });
    }

    private static PartFigures named(List<PartFigures> all, String name) {
        PartFigures found = null;
        for (PartFigures each : all) {
            found = found == null && each.name().equals(name) ? each : found;
        }
        return found;
    }

    @JSBody(params = "name", script = "try { return window.localStorage.getItem(name) || ''; } catch (refused) { return ''; }")
    private static native String kept(String name);
}
