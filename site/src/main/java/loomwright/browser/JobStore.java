package loomwright.browser;

import loomwright.plan.JobTexts;
import org.teavm.jso.JSBody;
import org.teavm.jso.browser.Window;

/** Keeps the answers of the page First job on this device as they are typed; a link carries them too. */
final class JobStore {
    private static final String NAME = "loomwright-first-job";

    private JobStore() {}

    /** The answers of the link, or those that are kept, or none. */
    static JobTexts open() {
        JobTexts carried = carried();
        if (carried != null) {
            return carried;
        }
        String kept = read(NAME);
        JobTexts texts = kept.isEmpty() ? null : JobTexts.read(kept.substring(kept.indexOf('|') + 1));
        return texts == null ? JobTexts.fresh(UnitChoice.now()) : texts;
    }

    /** The answers in the address, or null; the address is left without them, or a reload would bring them back over what was typed since. */
    static JobTexts carried() {
        String hash = Window.current().getLocation().getHash();
        JobTexts texts = hash.indexOf('=') < 0 ? null : JobTexts.read(hash.substring(1));
        if (texts != null) {
            CircuitFiles.clearFragment();
            keep(texts, Integer.MAX_VALUE);
        }
        return texts;
    }

    static boolean isAnswered(JobTexts texts) {
        return !texts.written().equals(JobTexts.fresh(UnitChoice.now()).written());
    }

    /** The screen that was shown last; the plan if there are no more so many. */
    static int screen(int screens) {
        String kept = read(NAME);
        int number = 0;
        for (int i = 0; i < Math.max(0, kept.indexOf('|')); i++) {
            int digit = kept.charAt(i) - '0';
            number = digit < 0 || digit > 9 || number > screens ? number : 10 * number + digit;
        }
        return Math.min(number, screens - 1);
    }

    static void keep(JobTexts texts, int screen) {
        write(NAME, screen + "|" + texts.written());
    }

    @JSBody(params = "name", script = "try { return window.localStorage.getItem(name) || ''; } catch (refused) { return ''; }")
    private static native String read(String name);

    @JSBody(params = {"name", "text"}, script = "try { window.localStorage.setItem(name, text); } catch (refused) { }")
    private static native void write(String name, String text);
}
