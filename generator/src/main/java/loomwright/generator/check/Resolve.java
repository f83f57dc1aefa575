package loomwright.generator.check;

import java.util.ArrayDeque;
import java.util.Deque;

/** Follows a relative path from a page. */
final class Resolve {
    private Resolve() {}

    static String from(String page, String path) {
        Deque<String> parts = new ArrayDeque<>();
        int slash = page.lastIndexOf('/');
        String whole = (slash < 0 ? "" : page.substring(0, slash + 1)) + path;
        for (String part : whole.split("/")) {
            if (part.equals("..")) {
                parts.pollLast();
            } else if (!part.isEmpty() && !part.equals(".")) {
                parts.addLast(part);
            }
        }
        return String.join("/", parts);
    }
}
