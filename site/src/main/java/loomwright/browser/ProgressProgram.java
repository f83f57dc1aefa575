package loomwright.browser;

import loomwright.markup.LadderMarkup;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/**
 * The small program of every page that shows progress: the row of rungs of each example, the lessons read, the button that forgets.
 *
 * <p>The exercises themselves are a program for each subject, which is loaded when a rung is asked for.
 */
final class ProgressProgram {
    private ProgressProgram() {}

    public static void main(String[] arguments) {
        HTMLDocument document = HTMLDocument.current();
        String root = root(document);
        NodeList<? extends HTMLElement> sections = document.querySelectorAll("section.example[data-subject]");
        for (int i = 0; i < sections.getLength(); i++) {
            mount(sections.get(i), root);
        }
        LessonMarks.mount(document);
        ForgetButton.mount(document);
    }

    private static void mount(HTMLElement section, String root) {
        String key = section.getAttribute("data-key");
        HTMLElement story = section.querySelector(".story");
        Dom.insertAfter(story == null ? section.querySelector(".title") : story, LadderMarkup.row(key));
        HTMLElement ladder = section.querySelector(".ladder");
        RungRow row = new RungRow(ladder, key);
        row.paint();
        ladder.querySelector(".rungs").addEventListener("click", event -> {
            int rung = RungRow.pressed((HTMLElement) event.getTarget());
            // Once the exercises are there, they take the row over.
            if (rung > 0 && ladder.getAttribute("data-live") == null) {
                wanted(ladder, row, rung, root + "practice-" + section.getAttribute("data-subject") + ".js");
            }
        });
    }

    private static void wanted(HTMLElement ladder, RungRow row, int rung, String address) {
        if (rung == 1) {
            row.climb(1);
            row.say("The whole working stands below.");
            return;
        }
        if (rung == LadderMarkup.RUNGS && !row.mayMend()) {
            row.say(ladder.querySelector(".help").getTextContent());
            return;
        }
        ladder.setAttribute("data-wanted", Integer.toString(rung));
        Dom.load(address, () -> row.say("The exercises could not be loaded: is the file " + address + " there?"));
    }

    /** The way to the root of the site, as the page's own link to this program has it. */
    private static String root(HTMLDocument document) {
        String address = document.querySelector("script[src$='progress.js']").getAttribute("src");
        return address.substring(0, address.length() - "progress.js".length());
    }
}
