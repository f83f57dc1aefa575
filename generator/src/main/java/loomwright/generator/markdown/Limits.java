package loomwright.generator.markdown;

import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.ast.Node;
import java.util.function.Function;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.Span;

/** How deep a text may be nested and how many brackets and open links it may hold: past that it is no text, and would take minutes or all the memory. */
final class Limits {
    private static final int MOST_DEEP = 50;
    private static final int MOST_OPEN_LINKS = 20;
    private static final int MOST_INDENTED = 3 * MOST_DEEP;
    private static final int MOST_BESIDE = 100;
    private static final String LINK = "](";
    private static final String VALUE = "{{";
    private static final String BESIDE = "][";
    /** What a line of a quote or a list begins with. */
    private static final String OPENING = " \t>-+*";

    private final Origin origin;
    private final Problems problems;

    Limits(Origin origin, Problems problems) {
        this.origin = origin;
        this.problems = problems;
    }

    /** The text as a tree, or an empty one with a problem if it is beyond a limit. */
    Document tree(String text, Function<String, Document> parser) {
        int open = openLink(text);
        if (open >= 0) {
            refuse(
                    open, open + LINK.length(), "more than " + MOST_OPEN_LINKS + " links are opened and not closed, this one first",
                    "Close each with ), or write \\] for the bracket itself.");
            return parser.apply("");
        }
        int brace = openValue(text);
        if (brace >= 0) {
            refuse(brace, brace + VALUE.length(), "the name of a value is opened and not closed", "Write {{name}} on one line.");
            return parser.apply("");
        }
        int brackets = besides(text);
        if (brackets >= 0) {
            refuse(brackets, brackets + BESIDE.length(), "more than " + MOST_BESIDE + " brackets stand side by side, these first", "Put words between them.");
            return parser.apply("");
        }
        int deepLine = deepLine(text);
        if (deepLine >= 0) {
            nested(deepLine, Math.max(deepLine, text.indexOf('\n', deepLine)));
            return parser.apply("");
        }
        try {
            Document tree = parser.apply(text);
            Node deep = tooDeep(tree);
            if (deep == null) {
                return tree;
            }
            nested(deep.getStartOffset(), deep.getEndOffset());
        } catch (StackOverflowError thrown) {
            int start = overflowing(text, parser);
            int end = text.indexOf('\n', start);
            nested(start, end < 0 ? text.length() : end);
        }
        return parser.apply("");
    }

    private void nested(int start, int end) {
        refuse(start, end, "the text is nested more than " + MOST_DEEP + " deep here", "Take quotes, lists, brackets, * and _ apart.");
    }

    private void refuse(int start, int end, String words, String remedy) {
        Span place = origin.place(start, end);
        problems.add(place.problem(words, remedy));
    }

    /**
     * The first line that begins with more quotes and lists, or further in, than the limit allows; −1 if there is none. Looked for before
     * parsing: the time a parser needs for lists within lists grows with the third power of their depth.
     */
    private static int deepLine(String text) {
        boolean fenced = false;
        int start = 0;
        while (start < text.length()) {
            int lineEnd = text.indexOf('\n', start);
            int end = lineEnd < 0 ? text.length() : lineEnd;
            String begin = text.substring(start, Math.min(end, start + 6)).strip();
            if (begin.startsWith("```") || begin.startsWith("~~~")) {
                fenced = !fenced;
            } else if (!fenced && isDeep(text, start, end)) {
                return start;
            }
            start = end + 1;
        }
        return -1;
    }

    private static boolean isDeep(String text, int start, int end) {
        int marks = 0;
        int at = start;
        while (at < end && OPENING.indexOf(text.charAt(at)) >= 0) {
            marks += text.charAt(at) == ' ' ? 0 : 1;
            at++;
        }
        return marks > MOST_DEEP || at - start > MOST_INDENTED;
    }

    /** The first node that lies too deep, or null. The tree is walked without going down in calls. */
    private static Node tooDeep(Document tree) {
        int depth = 0;
        Node node = tree;
        while (node != null) {
            if (depth > MOST_DEEP) {
                return node;
            }
            if (node.getFirstChild() != null) {
                node = node.getFirstChild();
                depth++;
            } else {
                while (node != tree && node.getNext() == null) {
                    node = node.getParent();
                    depth--;
                }
                node = node == tree ? null : node.getNext();
            }
        }
        return null;
    }

    /** Where the first paragraph begins that is too much by itself; the start if only all together are. */
    private static int overflowing(String text, Function<String, Document> parser) {
        int start = 0;
        while (start < text.length()) {
            int blank = text.indexOf("\n\n", start);
            int end = blank < 0 ? text.length() : blank + 2;
            try {
                parser.apply(text.substring(start, end));
            } catch (StackOverflowError thrown) {
                return start;
            }
            start = end;
        }
        return 0;
    }

    /** The first of too many names of values that are opened one in the other; −1 if there are not so many. */
    private static int openValue(String text) {
        int first = text.indexOf(VALUE);
        int open = 0;
        for (int at = first; at >= 0; at = text.indexOf(VALUE, at + VALUE.length())) {
            open++;
            if (text.lastIndexOf("}}", at) > first) {
                first = at;
                open = 1;
            }
            if (open > MOST_OPEN_LINKS) {
                return first;
            }
        }
        return -1;
    }

    /** The first of too many brackets side by side; −1 if there are not so many. The time for them grows with the square of their number. */
    private static int besides(String text) {
        int first = text.indexOf(BESIDE);
        int count = 0;
        for (int at = first; at >= 0; at = text.indexOf(BESIDE, at + 1)) {
            count++;
            if (count > MOST_BESIDE) {
                return first;
            }
        }
        return -1;
    }

    /** The first of the links left open in a paragraph that has too many of them; −1 if there is none. */
    private static int openLink(String text) {
        int first = -1;
        int open = 0;
        int at = text.indexOf(LINK);
        while (at >= 0) {
            int next = text.indexOf(LINK, at + LINK.length());
            int end = next < 0 ? text.length() : next;
            int close = text.indexOf(')', at);
            int blank = text.indexOf("\n\n", at);
            if (close < 0 || close >= end) {
                first = open == 0 ? at : first;
                open++;
            }
            if (open > MOST_OPEN_LINKS) {
                return first;
            }
            if (blank >= 0 && blank < end) {
                open = 0;
            }
            at = next;
        }
        return -1;
    }
}
