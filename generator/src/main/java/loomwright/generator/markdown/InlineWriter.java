package loomwright.generator.markdown;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.Emphasis;
import com.vladsch.flexmark.ast.HardLineBreak;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.ast.SoftLineBreak;
import com.vladsch.flexmark.ast.StrongEmphasis;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import loomwright.generator.problem.HiddenSigns;
import loomwright.generator.problem.Problem;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.Span;
import loomwright.markup.Html;

/** Writes what stands inside a line of Markdown. */
final class InlineWriter {
    private final StringBuilder out;
    private final Origin origin;
    private final Surroundings surroundings;
    private final Problems problems;
    private boolean linksAllowed = true;

    InlineWriter(StringBuilder out, Origin origin, Surroundings surroundings, Problems problems) {
        this.out = out;
        this.origin = origin;
        this.surroundings = surroundings;
        this.problems = problems;
    }

    void children(Node parent) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            node(child);
        }
    }

    /** The same without links: inside a link, and in headings, which the list of contents repeats. */
    void childrenWithoutLinks(Node parent) {
        boolean before = linksAllowed;
        linksAllowed = false;
        children(parent);
        linksAllowed = before;
    }

    private void node(Node node) {
        if (node instanceof ValueName value) {
            out.append(surroundings.value(value.name(), place(value), linksAllowed));
        } else if (node instanceof Emphasis) {
            wrapped("em", node);
        } else if (node instanceof StrongEmphasis) {
            wrapped("strong", node);
        } else if (node instanceof Code code) {
            String text = code.getText().toString().replace('\n', ' ');
            out.append("<code>").append(Html.escape(text)).append("</code>");
        } else if (node instanceof Link link) {
            link(link, link.getUrl());
        } else if (node instanceof AutoLink link) {
            link(link, link.getText());
        } else if (node instanceof LinkRef link) {
            reference(link);
        } else if (node instanceof SoftLineBreak) {
            out.append('\n');
        } else if (node instanceof HardLineBreak) {
            out.append("<br>\n");
        } else if (node instanceof Image || node instanceof ImageRef) {
            problems.add(place(node).problem(
                    "a picture cannot be put into the text as a file", "Put the file into the folder \"pictures\" and name it in a figure block: picture: NAME, with title and description."));
        } else if (node instanceof HtmlInlineBase) {
            problems.add(rawHtml(place(node), node));
        } else if (node.getFirstChild() != null) {
            children(node);
        } else {
            text(node);
        }
    }

    private void text(Node node) {
        String text = node.getChars().unescape();
        if (text.contains("{{")) {
            problems.add(place(node).find("{{").problem("the name of a value is opened and not closed", "Write {{name}} on one line."));
        }
        if (!HiddenSigns.shown(text).equals(text) && !text.equals(node.getChars().toString())) {
            problems.add(place(node).problem("a sign that cannot be seen is written as a number here, such as &#27;", "Delete it."));
        }
        out.append(Html.escape(Together.kept(text)));
    }

    private void wrapped(String element, Node node) {
        out.append('<').append(element).append('>');
        children(node);
        out.append("</").append(element).append('>');
    }

    private void reference(LinkRef link) {
        Reference reference = link.getReferenceNode(link.getDocument());
        if (reference == null) {
            text(link);
        } else {
            link(link, reference.getUrl());
        }
    }

    private void link(Node node, BasedSequence address) {
        boolean wordless = node instanceof Link && node.getFirstChild() == null;
        Surroundings.Target target = linksAllowed || wordless
                ? surroundings.link(address.unescape(), origin.place(address.getStartOffset(), address.getEndOffset()))
                : null;
        String words = target != null && wordless ? target.words() : "";
        if (target == null || !linksAllowed) {
            out.append(Html.escape(words));
            linkWords(node, address);
            return;
        }
        out.append("<a");
        if (!target.kind().isEmpty()) {
            out.append(" class=\"").append(target.kind()).append('"');
        }
        out.append(" href=\"").append(Html.escape(target.href())).append("\">").append(Html.escape(words));
        linkWords(node, address);
        out.append("</a>");
    }

    private void linkWords(Node node, BasedSequence address) {
        if (node instanceof AutoLink) {
            out.append(Html.escape(address.toString()));
        } else {
            childrenWithoutLinks(node);
        }
    }

    static Problem rawHtml(Span place, Node node) {
        String text = node.getChars().toString().strip();
        int end = text.indexOf('>');
        String tag = end < 0 ? text.lines().findFirst().orElse("") : text.substring(0, end + 1);
        return place.problem("raw HTML is not taken: \"" + tag + "\"", "Use Markdown or one of the blocks; for the sign itself write \\<.");
    }

    private Span place(Node node) {
        return origin.place(node.getStartOffset(), node.getEndOffset());
    }
}
