package loomwright.markup;

/** The row of rungs of a worked example, from reading it to mending it. */
public final class LadderMarkup {
    /** How many rungs there are. */
    public static final int RUNGS = 4;

    private static final String[] NAMES = {"Follow", "Fill in", "Work alone", "Mend"};

    private LadderMarkup() {}

    /** The name of a rung, counted from 1. */
    public static String name(int rung) {
        return NAMES[rung - 1];
    }

    /** The row for the example of that key, with a place for the rung that is being climbed. */
    public static String row(String key) {
        Html html = new Html().tag("<div class=\"ladder\" role=\"group\"").attribute("aria-labelledby", key + "-ladder " + key + "-title");
        html.tag("><h4").attribute("id", key + "-ladder").tag(">Climb this example</h4><ol class=\"rungs\">");
        for (int rung = 1; rung <= RUNGS; rung++) {
            html.tag("<li><button type=\"button\" class=\"quiet\" data-rung=\"" + rung + "\" aria-pressed=\"" + (rung == 1) + "\">");
            html.tag(name(rung)).tag("<span class=\"mark\" hidden></span></button></li>");
        }
        html.tag("</ol><p class=\"help\"></p><div class=\"rung\" role=\"group\" tabindex=\"-1\" hidden");
        html.attribute("aria-labelledby", key + "-rung").tag("></div>");
        return html.tag("<p class=\"unseen\" role=\"status\"></p></div>").toString();
    }
}
