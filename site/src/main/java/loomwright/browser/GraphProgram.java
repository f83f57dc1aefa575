package loomwright.browser;

import loomwright.graph.Graphs;
import loomwright.markup.Fragment;
import loomwright.markup.PictureMarkup;
import loomwright.picture.Picture;
import org.teavm.jso.JSBody;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/** Draws the graphs of the examples anew. {@link GraphLink} loads the program and calls it. */
final class GraphProgram {
    /** A reader who types on is not kept waiting by a graph of the keystroke before. */
    private static final int PAUSE_MILLISECONDS = 80;

    private GraphProgram() {}

    /** The function given to the page. */
    @JSFunctor
    interface Redraw extends JSObject {
        void redraw(HTMLElement figure);
    }

    static void start(Graphs graphs) {
        give(graphs.program(), figure -> Window.setTimeout(() -> redraw(graphs, figure), PAUSE_MILLISECONDS));
        NodeList<? extends HTMLElement> figures = HTMLDocument.current().querySelectorAll("[data-program=" + graphs.program() + "]");
        for (int i = 0; i < figures.getLength(); i++) {
            redraw(graphs, figures.get(i));
        }
    }

    private static void redraw(Graphs graphs, HTMLElement figure) {
        String entries = taken(figure);
        if (entries == null) {
            return;
        }
        Picture picture = graphs.draw(calculator(figure), Fragment.read(entries));
        if (picture != null) {
            Repaint.inside(figure, PictureMarkup.inside(figure.getAttribute("id"), picture));
        }
    }

    @JSBody(params = {"name", "redraw"}, script = "(window.loomwrightGraphs || (window.loomwrightGraphs = {}))[name] = redraw;")
    private static native void give(String name, Redraw redraw);

    @JSBody(params = "figure", script = "return figure.closest('[data-calculator]').getAttribute('data-calculator');")
    private static native String calculator(HTMLElement figure);

    /** The entries left on a figure; null if they are drawn already. */
    @JSBody(
            params = "figure",
            script = "var entries = figure.loomwrightEntries; figure.loomwrightEntries = null; return entries || null;")
    private static native String taken(HTMLElement figure);
}
