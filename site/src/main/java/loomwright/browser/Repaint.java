package loomwright.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.dom.html.HTMLElement;

/**
 * Changes what stands in an element to new markup, touching only what differs.
 *
 * <p>Most words of a working stay while its numbers change; left alone, they need not be laid out again, what a reader unfolded stays
 * unfolded, and the focus stays where it is.
 */
final class Repaint {
    private static final String CHANGED =
            """
                    var children = function (now, next) {
                      var have = now.firstChild, want = next.firstChild, after;
                      while (want) {
                        after = want.nextSibling;
                        if (have) {
                          var then = have.nextSibling;
                          if (!have.isEqualNode(want)) { same(have, want); }
                          have = then;
                        } else {
                          now.appendChild(want);
                        }
                        want = after;
                      }
                      while (have) { after = have.nextSibling; have.remove(); have = after; }
                    };
                    var same = function (now, next) {
                      if (now.nodeName !== next.nodeName) {
                        now.replaceWith(next);
                      } else if (now.nodeType === 3) {
                        now.data = next.data;
                      } else {
                        var i, each;
                        for (i = now.attributes.length - 1; i >= 0; i--) {
                          each = now.attributes[i].name;
                          if (each !== 'open' && !next.hasAttribute(each)) { now.removeAttribute(each); }
                        }
                        for (i = 0; i < next.attributes.length; i++) {
                          each = next.attributes[i];
                          if (now.getAttribute(each.name) !== each.value) { now.setAttribute(each.name, each.value); }
                        }
                        children(now, next);
                      }
                    };
                    var template = document.createElement('template');
                    template.innerHTML = markup;
                    """;

    private Repaint() {}

    /** What stands in an element becomes this markup. */
    @JSBody(params = {"element", "markup"}, script = CHANGED + "children(element, template.content);")
    static native void inside(HTMLElement element, String markup);

    /** An element itself becomes the one of this markup. */
    @JSBody(params = {"element", "markup"}, script = CHANGED + "same(element, template.content.firstChild);")
    static native void item(HTMLElement element, String markup);
}
