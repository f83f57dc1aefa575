package loomwright.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;

/**
 * Runs the calculators in a browser for the tests that compare it with the JVM. A program of its own, not part of the site.
 *
 * <p>Gives the page two functions, {@code loomwrightWork(calculator, entries)} and {@code loomwrightBrief(calculator, entries)}; the
 * entries are lines of {@code field=text}, the answer is what {@link ParityAnswer} writes, in full or in short.
 */
public final class ParityProgram {
    private ParityProgram() {}

    /** A function given to the page. */
    @JSFunctor
    interface Work extends JSObject {
        String work(String calculator, String entries);
    }

    public static void main(String[] arguments) {
        give(
                (calculator, entries) -> ParityAnswer.of(calculator, entries, ParityProgram::shortest),
                (calculator, entries) -> ParityAnswer.brief(calculator, entries, ParityProgram::shortest));
    }

    @JSBody(params = {"work", "brief"}, script = "window.loomwrightWork = work; window.loomwrightBrief = brief;")
    private static native void give(Work work, Work brief);

    @JSBody(params = "value", script = "return String(value);")
    private static native String shortest(double value);
}
