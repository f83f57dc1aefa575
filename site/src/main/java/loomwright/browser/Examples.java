package loomwright.browser;

import java.util.HashMap;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.markup.FormerEntries;
import loomwright.markup.Fragment;
import loomwright.markup.Links;
import loomwright.worked.Calculator;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** The worked examples of a page. Each is taken over when it comes near the window or is touched, so that nothing waits for the others. */
final class Examples {
    private static final String EXAMPLE = "section.example[data-calculator]";

    private final HTMLDocument document;
    private final Links links;
    private final Map<String, LiveExample> live = new HashMap<>();

    private Examples(HTMLDocument document) {
        this.document = document;
        this.links = PageProgram.links(document);
    }

    static void watch(HTMLDocument document) {
        Examples examples = new Examples(document);
        document.addEventListener("focusin", event -> examples.touched((HTMLElement) event.getTarget()));
        document.addEventListener("click", event -> examples.touched((HTMLElement) event.getTarget()));
        Window.current().addEventListener("hashchange", event -> examples.carry());
        document.addEventListener(UnitChoice.EVENT, event -> examples.live.values().forEach(each -> each.inUnits(UnitChoice.now())));
        examples.carry();
        Nearness.watch(document, EXAMPLE, examples::of, PageProgram::isReady);
    }

    private void touched(HTMLElement target) {
        HTMLElement section = Dom.closest(target, EXAMPLE);
        if (section != null) {
            of(section);
        }
    }

    /** Figures in the address go to the first example of the page; an address that only names a place changes nothing. */
    private void carry() {
        Map<String, String> carried = Fragment.read(Window.current().getLocation().getHash());
        HTMLElement first = carried.isEmpty() ? null : document.querySelector(EXAMPLE);
        LiveExample example = first == null ? null : of(first);
        if (example != null) {
            example.fill(FormerEntries.now(first.getAttribute("data-calculator"), carried));
        }
    }

    /** The example in that section, taken over if it was not yet; null if its calculator is not of this house. */
    private LiveExample of(HTMLElement section) {
        String key = section.getAttribute("data-key");
        LiveExample example = live.get(key);
        Calculator calculator = example == null ? Catalogue.find(section.getAttribute("data-calculator")) : null;
        if (calculator != null) {
            example = LiveExample.takeOver(section, calculator, links);
            live.put(key, example);
        }
        return example;
    }
}
