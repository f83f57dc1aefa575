package loomwright.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;

/**
 * Runs the calculators in a browser for the tests that compare it with the JVM. A program of its own, not part of the site.
 *
 * <p>Gives the page a function {@code loomwrightWork(calculator, entries)}; the entries are lines of {@code field=text}, the answer is
 * what {@link ParityAnswer} writes.
 */
public final class ParityProgram {
    private ParityProgram() {}

    /** The function given to the page. */
    @JSFunctor
    interface Work extends JSObject {
        String work(String calculator, String entries);
    }

    public static void main(String[] arguments) {
        give((calculator, entries) -> ParityAnswer.of(calculator, entries, ParityProgram::shortest));
    }

    @JSBody(params = "work", script = "window.loomwrightWork = work;")
    private static native void give(Work work);

    @JSBody(params = "value", script = "return String(value);")
    private static native String shortest(double value);
}
