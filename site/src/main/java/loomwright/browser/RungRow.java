package loomwright.browser;

import loomwright.markup.LadderMarkup;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/** The row of rungs of one example: which is climbed, which is open, and whether the last one is offered yet. */
final class RungRow {
    private static final int MENDING = 4;

    private final HTMLElement ladder;
    private final String key;
    private String noMending = "";

    RungRow(HTMLElement ladder, String key) {
        this.ladder = ladder;
        this.key = key;
    }

    /** The button that an event came from, as the number of its rung; 0 if it was none. */
    static int pressed(HTMLElement target) {
        HTMLElement button = Dom.closest(target, "button[data-rung]");
        return button == null ? 0 : Integer.parseInt(button.getAttribute("data-rung"));
    }

    boolean isClimbed(int rung) {
        return Progress.has(key + ":" + rung);
    }

    void climb(int rung) {
        Progress.add(key + ":" + rung);
        paint();
    }

    /** The working with a slip comes last: it helps those who can already do it without. */
    boolean mayMend() {
        return whyNotMend().isEmpty();
    }

    /** What stands in the way of mending; an empty text if nothing does. */
    String whyNotMend() {
        boolean ready = isClimbed(1) && isClimbed(2) && isClimbed(3);
        return !noMending.isEmpty() || ready ? noMending : LadderMarkup.name(MENDING) + " opens when the first three rungs are climbed.";
    }

    void open(int rung) {
        NodeList<? extends HTMLElement> buttons = buttons();
        for (int i = 0; i < buttons.getLength(); i++) {
            buttons.get(i).setAttribute("aria-pressed", i + 1 == rung ? "true" : "false");
        }
    }

    /** Says for good that an example has no rung for mending. */
    void leaveOutMending(String words) {
        noMending = words;
        buttons().get(MENDING - 1).getParentNode().delete();
        paint();
    }

    void paint() {
        NodeList<? extends HTMLElement> buttons = buttons();
        for (int i = 0; i < buttons.getLength(); i++) {
            HTMLElement mark = buttons.get(i).querySelector(".mark");
            boolean climbed = isClimbed(i + 1);
            mark.setTextContent(climbed ? " (climbed)" : "");
            mark.setHidden(!climbed);
            if (i + 1 == MENDING) {
                buttons.get(i).setAttribute("aria-disabled", mayMend() ? "false" : "true");
            }
        }
        ladder.querySelector(".help").setTextContent(note());
    }

    private String note() {
        String mending = whyNotMend();
        String memory = Progress.isRemembered() ? "" : "This browser does not let the page remember which rungs you have climbed.";
        return mending.isEmpty() || memory.isEmpty() ? mending + memory : mending + " " + memory;
    }

    void say(String words) {
        ladder.querySelector("[role=status].unseen").setTextContent(words);
    }

    private NodeList<? extends HTMLElement> buttons() {
        return ladder.querySelectorAll(".rungs button");
    }
}
