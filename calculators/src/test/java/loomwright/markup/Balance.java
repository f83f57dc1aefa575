package loomwright.markup;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Markup whose every element is closed where it was opened. A browser forgives it if not, and shows the rest of the page inside it. */
public final class Balance {
    private static final Set<String> WITHOUT_END = Set.of("br", "hr", "img", "input", "wbr", "meta", "link");
    private static final Pattern TAG = Pattern.compile("<(/?)([a-z][a-z0-9-]*)((?:\"[^\"]*\"|[^\">])*)>", Pattern.CASE_INSENSITIVE);

    private Balance() {}

    /** The same markup. Fails where an element is not closed. */
    public static String held(String html) {
        Deque<String> open = new ArrayDeque<>();
        Matcher tag = TAG.matcher(html);
        while (tag.find()) {
            if (tag.group(1).equals("/")) {
                String last = open.isEmpty() ? "nothing" : open.pop();
                if (!last.equals(tag.group(2))) {
                    throw new AssertionError("</" + tag.group(2) + "> closes " + last + ": " + around(html, tag.start()));
                }
            } else if (!tag.group(3).endsWith("/") && !WITHOUT_END.contains(tag.group(2))) {
                open.push(tag.group(2));
            }
        }
        if (!open.isEmpty()) {
            throw new AssertionError("never closed: " + open + " in " + around(html, html.length()));
        }
        return html;
    }

    private static String around(String html, int at) {
        return html.substring(Math.max(0, at - 200), Math.min(html.length(), at + 40));
    }
}
