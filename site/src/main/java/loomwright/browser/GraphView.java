package loomwright.browser;

import java.util.Map;
import loomwright.graph.Graphs;
import loomwright.markup.PictureMarkup;
import loomwright.picture.Picture;
import loomwright.worked.Calculator;
import loomwright.worked.Working;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLElement;

/** The graph of one example. It follows a moment later, so that a reader who types on is not kept waiting by it. */
final class GraphView {
    private static final int PAUSE_MILLISECONDS = 80;

    private final HTMLElement figure;
    private final Calculator calculator;
    private final OldMark old;
    private int timer;

    /** @param figure null if the example has no graph */
    GraphView(HTMLElement figure, Calculator calculator) {
        this.figure = figure;
        this.calculator = calculator;
        this.old = figure == null ? null : new OldMark(figure);
    }

    /** From now on the graph is that of these entries, which gave that working. */
    void show(Map<String, String> entries, Working working) {
        if (figure != null) {
            Window.clearTimeout(timer);
            timer = Window.setTimeout(() -> draw(entries, working), PAUSE_MILLISECONDS);
        }
    }

    /** An entry is being typed. */
    void typing() {
        if (old != null) {
            Window.clearTimeout(timer);
            old.typing();
        }
    }

    /** An entry cannot be used. */
    void refused() {
        if (old != null) {
            Window.clearTimeout(timer);
            old.refused();
        }
    }

    /** A graph that cannot be drawn of these entries leaves the one from before, and its mark. */
    private void draw(Map<String, String> entries, Working working) {
        Picture picture = Graphs.draw(calculator, entries, working);
        if (picture == null) {
            old.typing();
        } else {
            old.clear();
            Repaint.inside(figure, PictureMarkup.inside(figure.getAttribute("id"), picture));
        }
    }
}
