package loomwright.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;
import org.teavm.jso.dom.html.HTMLElement;

/** Files and links of the page, which no server sees. */
final class CircuitFiles {
    private CircuitFiles() {}

    /** What is done with the text of a file; null if it could not be read or is too large. */
    @JSFunctor
    interface Reader extends JSObject {
        void read(String text);
    }

    @JSBody(
            params = {"name", "text"},
            script =
                    "var link = document.createElement('a'); link.href = URL.createObjectURL(new Blob([text], {type: 'application/json'}));"
                            + " link.download = name; document.body.appendChild(link); link.click(); link.remove();"
                            + " setTimeout(function () { URL.revokeObjectURL(link.href); }, 10000);")
    static native void download(String name, String text);

    /** Reads the file chosen, and forgets the choice, so that the same file can be chosen again. */
    @JSBody(
            params = {"input", "most", "done"},
            script =
                    "var file = input.files[0]; if (!file) { return; }"
                            + " if (file.size > most) { input.value = ''; done(null); return; }"
                            + " var reader = new FileReader();"
                            + " reader.onload = function () { input.value = ''; done(reader.result); };"
                            + " reader.onerror = function () { input.value = ''; done(null); };"
                            + " reader.readAsText(file);")
    static native void read(HTMLElement input, int most, Reader done);

    /** The address of this page without what follows {@code #}. */
    @JSBody(script = "return window.location.href.split('#')[0];")
    static native String address();

    /** Takes the circuit out of the address, so that opening the page again does not bring it once more. */
    @JSBody(script = "try { window.history.replaceState(null, '', window.location.href.split('#')[0]); } catch (refused) { }")
    static native void clearFragment();

    @JSBody(params = "input", script = "input.focus(); input.select();")
    static native void select(HTMLElement input);
}
