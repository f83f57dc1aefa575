package loomwright.browser;

import java.util.HashMap;
import java.util.Map;
import loomwright.along.Belongings;
import loomwright.along.Joining;
import org.teavm.jso.JSBody;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** Takes everything the pages keep for a reader along, as one file. It goes to the end of the page's section on that, which is known by its heading. */
final class TakeAlong {
    private static final String SECTION = "#take-your-work-along";

    private TakeAlong() {}

    static void mount(HTMLDocument document) {
        HTMLElement paragraph = document.querySelector("h2" + SECTION + " + p, h2:has(" + SECTION + ") + p");
        if (paragraph == null) {
            return;
        }
        Dom.insertAfter(
                paragraph,
                "<p class=\"moves\"><button type=\"button\" id=\"along-save\">Download my work</button></p>"
                        + "<div class=\"field\"><label for=\"along-file\">Open the file from another device</label><input id=\"along-file\" type=\"file\" accept=\".txt,text/plain\"></div>"
                        + "<p id=\"along-said\" role=\"status\"></p>");
        HTMLElement said = document.getElementById("along-said");
        document.getElementById("along-save").addEventListener("click", event -> save(said));
        HTMLElement file = document.getElementById("along-file");
        file.addEventListener("change", event -> CircuitFiles.read(file, Belongings.MOST_LETTERS, text -> said.setTextContent(open(text))));
    }

    private static void save(HTMLElement said) {
        Belongings here = here();
        if (here == null || here.kept().isEmpty()) {
            said.setTextContent(here == null ? "This browser does not let the page remember anything." : "Nothing of yours is kept on this device yet.");
            return;
        }
        CircuitFiles.download("loomwright-work.txt", here.file());
        said.setTextContent("Downloaded as loomwright-work.txt. Carry it to your other device and open it there, on this page.");
    }

    private static String open(String text) {
        Belongings.Reading reading = Belongings.read(text == null ? "" : text);
        if (reading.fault() != null) {
            return "Refused. " + reading.fault() + " What is kept here stays as it is.";
        }
        Belongings here = here();
        if (here == null) {
            return "This browser does not let the page remember anything, so nothing could be taken from the file.";
        }
        Joining joined = Joining.of(here, reading.belongings());
        if (joined.fault() != null) {
            return joined.fault();
        }
        Map<String, String> done = new HashMap<>();
        for (String name : joined.changes().keySet()) {
            if (!keep(name, joined.changes().get(name))) {
                takeBack(done);
                return "The browser has no room left for what the file holds. Nothing was changed.";
            }
            done.put(name, here.kept().get(name));
        }
        return joined.words();
    }

    private static void takeBack(Map<String, String> before) {
        for (String name : before.keySet()) {
            String text = before.get(name);
            if (text == null) {
                erase(name);
            } else {
                keep(name, text);
            }
        }
    }

    /** What this device keeps, or null if the browser forbids it. */
    private static Belongings here() {
        int count = count();
        if (count < 0) {
            return null;
        }
        Map<String, String> all = new HashMap<>();
        for (int i = 0; i < count; i++) {
            String name = name(i);
            if (name.startsWith(Belongings.PREFIX)) {
                all.put(name, text(name));
            }
        }
        return Belongings.of(all);
    }

    @JSBody(script = "try { return window.localStorage.length; } catch (refused) { return -1; }")
    private static native int count();

    @JSBody(params = "at", script = "return window.localStorage.key(at) || '';")
    private static native String name(int at);

    @JSBody(params = "name", script = "return window.localStorage.getItem(name) || '';")
    private static native String text(String name);

    @JSBody(
            params = {"name", "text"},
            script = "try { window.localStorage.setItem(name, text); return true; } catch (refused) { return false; }")
    private static native boolean keep(String name, String text);

    @JSBody(params = "name", script = "window.localStorage.removeItem(name);")
    private static native void erase(String name);
}
