package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/** Which results the author asked to put first; read from the printed table. */
final class ShownFirst {
    private ShownFirst() {}

    static List<String> of(HTMLElement section) {
        List<String> keys = new ArrayList<>();
        NodeList<? extends HTMLElement> rows = section.querySelectorAll(".results tr.first");
        for (int i = 0; i < rows.getLength(); i++) {
            keys.add(rows.get(i).getAttribute("data-result"));
        }
        return keys;
    }
}
