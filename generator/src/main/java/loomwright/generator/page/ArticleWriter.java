package loomwright.generator.page;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loomwright.generator.content.Article;
import loomwright.generator.content.Block;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.Slug;
import loomwright.generator.example.Shown;
import loomwright.generator.markdown.MarkdownWriter;
import loomwright.generator.markdown.Markup;
import loomwright.generator.markdown.Surroundings;
import loomwright.generator.problem.Places;
import loomwright.generator.problem.Span;
import loomwright.markup.Html;

/** Writes the text of one page, its blocks included. */
final class ArticleWriter implements Surroundings {
    private final Site site;
    private final Place page;
    private final MarkdownWriter markdown;
    private final LinkAddresses addresses;
    private final BlockWriter blockWriter;
    private final Map<Integer, Block> blocks = new HashMap<>();
    private final Set<String> ids = new HashSet<>();
    private final Places places = new Places();

    /**
     * A writer for a page.
     *
     * @param page the page
     * @param blocks the blocks that may stand in it
     */
    ArticleWriter(Site site, Place page, List<Block> blocks) {
        this.site = site;
        this.page = page;
        this.markdown = new MarkdownWriter(this, site.problems());
        this.addresses = new LinkAddresses(site, page);
        this.blockWriter = new BlockWriter(site, page, this);
        for (Block block : blocks) {
            this.blocks.put(block.info().start(), block);
        }
    }

    static ArticleWriter of(Site site, String title, Article article) {
        return new ArticleWriter(site, new Place(title, article.address()), article.blocks());
    }

    Markup write(Span text) {
        return markdown.write(text);
    }

    String write(Scalar text) {
        return markdown.write(text);
    }

    String inLine(Scalar text) {
        return markdown.inLine(text);
    }

    /** Where the links and ids of the text were written, for the check of the finished page. */
    Places places() {
        return places;
    }

    @Override
    public String value(String name, Span place, boolean linked) {
        Shown shown = site.values().find(name, place);
        String text = Html.escape(shown.text());
        if (shown.example() == null || !linked) {
            return "<span class=\"value\">" + text + "</span>";
        }
        String href = Address.from(page.address(), shown.example().address());
        return "<a class=\"value\" href=\"" + href + "\">" + text + "</a>";
    }

    @Override
    public Target link(String address, Span place) {
        Target target = addresses.find(address, place);
        if (target != null) {
            places.link(target.href(), place);
        }
        return target;
    }

    @Override
    public String block(Span info) {
        Block block = blocks.get(info.start());
        if (block != null && block.info().file() == info.file()) {
            return blockWriter.write(block);
        }
        String word = info.text().strip().split(" ", 2)[0];
        if (Block.KINDS.contains(word)) {
            site.problems().add(info.problem(
                    "a block \"" + word + "\" stands inside a list or another block",
                    "Move it to the left edge, with an empty line around it."));
            return "";
        }
        return null;
    }

    @Override
    public String headingId(String heading, Span place) {
        String slug = Slug.of(heading);
        String id = unique(slug.isEmpty() ? "section" : slug);
        places.id(id, place);
        return id;
    }

    /** An id that no heading of this page has yet. */
    String unique(String wanted) {
        String id = wanted;
        for (int count = 2; !ids.add(id); count++) {
            id = wanted + "-" + count;
        }
        return id;
    }
}
