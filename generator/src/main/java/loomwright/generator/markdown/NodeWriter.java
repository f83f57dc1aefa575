package loomwright.generator.markdown;

import com.vladsch.flexmark.ast.BlockQuote;
import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.IndentedCodeBlock;
import com.vladsch.flexmark.ast.ListBlock;
import com.vladsch.flexmark.ast.OrderedList;
import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.ast.ThematicBreak;
import com.vladsch.flexmark.ext.tables.TableBlock;
import com.vladsch.flexmark.util.ast.Block;
import com.vladsch.flexmark.util.ast.Node;
import java.util.ArrayList;
import java.util.List;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.Span;
import loomwright.markup.Html;

/** Writes the blocks of a Markdown tree; what stands inside a line is the work of {@link InlineWriter}. */
final class NodeWriter {
    private final StringBuilder out = new StringBuilder();
    private final List<Heading> headings = new ArrayList<>();
    private final Origin origin;
    private final Surroundings surroundings;
    private final Problems problems;
    private final InlineWriter inline;

    NodeWriter(Origin origin, Surroundings surroundings, Problems problems) {
        this.origin = origin;
        this.surroundings = surroundings;
        this.problems = problems;
        this.inline = new InlineWriter(out, origin, surroundings, problems);
    }

    String html() {
        return out.toString();
    }

    List<Heading> headings() {
        return headings;
    }

    void children(Node parent) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            node(child);
        }
    }

    /** The pieces of a text, lists taken apart into their items. */
    List<Part> parts(Node document) {
        List<Part> parts = new ArrayList<>();
        for (Node child = document.getFirstChild(); child != null; child = child.getNext()) {
            if (child instanceof ListBlock list) {
                items(list, parts);
            } else {
                out.setLength(0);
                int before = headings.size();
                node(child);
                Heading heading = headings.size() > before ? headings.get(before) : null;
                parts.add(new Part("", html(), "", heading, child instanceof FencedCodeBlock fence ? info(fence) : null));
            }
        }
        return parts;
    }

    private void items(ListBlock list, List<Part> parts) {
        String element = list instanceof OrderedList ? "ol" : "ul";
        int number = list instanceof OrderedList ordered ? ordered.getStartNumber() : 0;
        for (Node item = list.getFirstChild(); item != null; item = item.getNext(), number++) {
            out.setLength(0);
            out.append("<li>");
            children(item);
            out.append("</li>\n");
            String open = list instanceof OrderedList && number != 1 ? "<ol start=\"" + number + "\">\n" : "<" + element + ">\n";
            parts.add(new Part(open, html(), "</" + element + ">\n", null, null));
        }
    }

    private Span info(FencedCodeBlock fence) {
        return origin.place(fence.getInfo().getStartOffset(), fence.getInfo().getEndOffset());
    }

    private void node(Node node) {
        if (node instanceof Paragraph) {
            paragraph(node);
        } else if (node instanceof com.vladsch.flexmark.ast.Heading heading) {
            heading(heading);
        } else if (node instanceof ListBlock list) {
            list(list);
        } else if (node instanceof FencedCodeBlock fence) {
            fence(fence);
        } else if (node instanceof IndentedCodeBlock code) {
            code(code.getContentChars().toString());
        } else if (node instanceof TableBlock table) {
            new TableWriter(out, inline).write(table);
        } else if (node instanceof BlockQuote) {
            out.append("<blockquote>\n");
            children(node);
            out.append("</blockquote>\n");
        } else if (node instanceof ThematicBreak) {
            out.append("<hr>\n");
        } else if (node instanceof HtmlBlockBase) {
            problems.add(InlineWriter.rawHtml(place(node), node));
        } else if (node instanceof Block && !(node instanceof Reference)) {
            children(node);
        }
    }

    private void paragraph(Node node) {
        boolean bare = node.getParent().getParent() instanceof ListBlock list && list.isTight();
        if (bare) {
            inline.children(node);
            return;
        }
        out.append("<p>");
        inline.children(node);
        out.append("</p>\n");
    }

    private void heading(com.vladsch.flexmark.ast.Heading node) {
        int level = Math.max(2, node.getLevel());
        if (node.getLevel() == 1) {
            problems.add(place(node).problem(
                    "a heading with one # is the title of the page, and that is in the front matter", "Begin a section with ##."));
        }
        int start = out.length();
        inline.childrenWithoutLinks(node);
        String html = out.substring(start);
        out.setLength(start);
        String text = PlainText.of(html);
        String id = surroundings.headingId(text, place(node));
        headings.add(new Heading(level, id, text));
        out.append("<h").append(level).append(" id=\"").append(id).append("\">").append(html);
        out.append("</h").append(level).append(">\n");
    }

    private void list(ListBlock list) {
        String element = list instanceof OrderedList ? "ol" : "ul";
        out.append('<').append(element);
        if (list instanceof OrderedList ordered && ordered.getStartNumber() != 1) {
            out.append(" start=\"").append(ordered.getStartNumber()).append('"');
        }
        out.append(">\n");
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            out.append("<li>");
            children(item);
            out.append("</li>\n");
        }
        out.append("</").append(element).append(">\n");
    }

    private void fence(FencedCodeBlock fence) {
        String block = surroundings.block(info(fence));
        if (block != null) {
            out.append(block);
        } else {
            code(fence.getContentChars().toString());
        }
    }

    /** The box scrolls sideways, so it must be within reach of the keyboard. */
    private void code(String text) {
        out.append("<pre tabindex=\"0\"><code>").append(Html.escape(text)).append("</code></pre>\n");
    }

    private Span place(Node node) {
        return origin.place(node.getStartOffset(), node.getEndOffset());
    }
}
