package loomwright.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.dom.html.HTMLElement;

/**
 * Hands the entries of an example over to the program of its graph, which is loaded when it is first needed.
 *
 * <p>The entries are left on the figure as {@code loomwrightEntries}; the program draws every figure that has some.
 */
final class GraphLink {
    private GraphLink() {}

    /** @param root the way to the root of the site */
    @JSBody(
            params = {"figure", "root", "entries"},
            script =
                    """
                    var name = figure.getAttribute('data-program');
                    var graphs = window.loomwrightGraphs || (window.loomwrightGraphs = {});
                    figure.loomwrightEntries = entries;
                    if (graphs[name]) {
                      graphs[name](figure);
                    } else if (!(name in graphs)) {
                      graphs[name] = null;
                      var program = document.createElement('script');
                      program.src = root + name + '.js';
                      document.head.appendChild(program);
                    }
                    """)
    static native void redraw(HTMLElement figure, String root, String entries);
}
