package loomwright.generator.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.generator.content.Article;
import loomwright.generator.content.Block;
import loomwright.generator.content.Lesson;
import loomwright.generator.markdown.MarkdownWriter;
import loomwright.generator.markdown.Part;
import loomwright.generator.markdown.Surroundings;
import loomwright.generator.problem.Places;
import loomwright.generator.problem.Span;

/** Writes a lesson screen by screen, from the same text. Its mistakes are those of the lesson, and are listed once. */
final class ProjectorWriter implements Surroundings {
    private final ArticleWriter article;
    private final Lesson of;
    private final Article lesson;
    private final MarkdownWriter markdown;
    private final Map<Integer, Block> blocks = new HashMap<>();
    private final Screens screens = new Screens();
    private final ProjectedBlocks blockWriter;

    ProjectorWriter(Site site, Lesson lesson) {
        this.of = lesson;
        this.lesson = lesson.article();
        Place place = new Place(Site.numbered(lesson), Address.projector(lesson.key()));
        this.article = new ArticleWriter(site, place, this.lesson.blocks());
        this.markdown = new MarkdownWriter(this, site.problems());
        this.blockWriter = new ProjectedBlocks(site, place, lesson.address(), article, screens, this);
        this.lesson.blocks().forEach(block -> blocks.put(block.info().start(), block));
    }

    List<Screen> write() {
        for (Part part : parts(lesson.body())) {
            Block block = part.fence() == null ? null : blocks.get(part.fence().start());
            if (block != null) {
                blockWriter.write(block);
            } else if (!part.html().isEmpty()) {
                screens.part(part);
            }
        }
        return screens.all();
    }

    /** What to keep of the lesson, for the last screen; null if it has no card. */
    Card card() {
        return Card.of(of, article);
    }

    /** How many screens are shown one after another, with the first and the last one. */
    int count() {
        return screens.count();
    }

    /** The places to jump to. */
    List<Jump> outline() {
        return screens.outline();
    }

    /** The pieces of a text, with the links and values of this page. */
    List<Part> parts(Span text) {
        return markdown.parts(text);
    }

    Places places() {
        return article.places();
    }

    @Override
    public String value(String name, Span place, boolean linked) {
        return article.value(name, place, linked);
    }

    /** A place in the lesson may stand on another screen, or on none: such a link leads to the lesson. */
    @Override
    public Target link(String address, Span place) {
        if (address.startsWith("#")) {
            String href = Address.root(Address.projector("")) + lesson.address() + address;
            article.places().link(href, place);
            return new Target(href, "");
        }
        return article.link(address, place);
    }

    /** Blocks get screens of their own; one that stands where it may not is reported by the lesson. */
    @Override
    public String block(Span info) {
        String word = info.text().strip().split(" ", 2)[0];
        return Block.KINDS.contains(word) ? "" : null;
    }

    @Override
    public String headingId(String heading, Span place) {
        return article.headingId(heading, place);
    }
}
