package loomwright.generator.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import loomwright.generator.problem.Problems;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Checks one page on its own, and gathers its ids and links. */
final class PageCheck {
    private static final Set<String> LOADING =
            Set.of("script", "img", "link", "iframe", "source", "audio", "video", "embed", "object", "use");
    private static final List<String> LABELS = List.of("aria-labelledby", "aria-describedby", "for");

    private final BuiltPage page;
    private final Problems problems;
    private final List<String> links = new ArrayList<>();
    private final List<String> idsReferredTo = new ArrayList<>();
    private int headingLevel;
    private int titles;

    PageCheck(BuiltPage page, Problems problems) {
        this.page = page;
        this.problems = problems;
    }

    /** The addresses of the links of this page, once for each time they are used. */
    List<String> links() {
        return links;
    }

    void check(String html) {
        Document document = Jsoup.parse(html);
        for (Element element : document.getAllElements()) {
            element(element);
        }
        if (titles != 1) {
            add("<h1", "the page has " + titles + " headings h1", "A page has exactly one.");
        }
        if (document.title().isBlank() || document.getElementsByTag("html").attr("lang").isBlank()) {
            add("<head", "the page has no title or no language", "Give it a title, and html a lang.");
        }
        for (String id : idsReferredTo) {
            if (!page.ids().contains(id)) {
                add("\"" + id, "a label refers to the id \"" + id + "\", which is not in the page", "Correct the id.");
            }
        }
    }

    private void element(Element element) {
        id(element);
        outside(element);
        switch (element.normalName()) {
            case "a" -> link(element);
            case "h1", "h2", "h3", "h4", "h5", "h6" -> heading(element);
            case "svg" -> picture(element);
            case "img" -> image(element);
            case "table" -> table(element);
            case "style" -> add("<style", "the page has a style of its own", "The policy of the page refuses it: use the style sheet.");
            default -> { }
        }
    }

    private void id(Element element) {
        String id = element.id();
        if (!id.isEmpty() && !page.ids().add(id)) {
            problems.add(page.idProblem(
                    id, "the id \"" + id + "\" is given twice in the page", "Change the key of a block, or the words of a heading."));
        }
        for (String label : LABELS) {
            String ids = element.attr(label);
            if (!ids.isEmpty()) {
                idsReferredTo.addAll(List.of(ids.split(" ")));
            }
        }
    }

    private void outside(Element element) {
        if (element.hasAttr("style")) {
            add("style=\"", "the page has a style attribute", "The policy of the page refuses it: use a class.");
        }
        if (!LOADING.contains(element.normalName())) {
            return;
        }
        for (String name : List.of("src", "href", "srcset", "data", "poster", "xlink:href")) {
            String address = element.attr(name);
            if (address.isEmpty() || address.startsWith("data:") || address.startsWith("#")) {
                continue;
            }
            if (address.contains("//")) {
                add(address, "the page loads \"" + address + "\" from outside", "Put the file into the site.");
            } else {
                links.add(address);
            }
        }
        if (element.normalName().equals("script") && !element.hasAttr("src")) {
            add("<script", "the page has a script in it", "The policy of the page refuses it: use a script file.");
        }
    }

    private void link(Element element) {
        if (element.hasAttr("href")) {
            links.add(element.attr("href"));
        }
        if (element.text().isBlank() && !element.hasAttr("aria-label")) {
            problems.add(page.linkProblem(element.attr("href"), "a link has no words", "Write what it leads to."));
        }
    }

    private void heading(Element element) {
        int level = element.normalName().charAt(1) - '0';
        titles += level == 1 ? 1 : 0;
        if (level > headingLevel + 1) {
            problems.add(page.idProblem(
                    element.id(),
                    "the heading \"" + element.text() + "\" is of level " + level + " and follows one of level " + headingLevel,
                    "Put a heading with " + "#".repeat(headingLevel + 1) + " above it."));
        }
        headingLevel = level;
    }

    private void picture(Element svg) {
        if (svg.attr("aria-hidden").equals("true")) {
            return;
        }
        boolean described = !words(svg, "title").isBlank() && !words(svg, "desc").isBlank();
        if (!svg.attr("role").equals("img") || !described) {
            add("<svg", "a picture has no role, title or description", "Give the figure a title and a description.");
        }
    }

    private static String words(Element svg, String name) {
        Element child = svg.children().stream().filter(each -> each.normalName().equals(name)).findFirst().orElse(null);
        return child == null ? "" : child.text();
    }

    private void image(Element image) {
        if (!image.hasAttr("alt")) {
            add("<img", "a picture has no text in its place", "Give it an alt.");
        }
    }

    private void table(Element table) {
        boolean named = table.hasAttr("aria-label") || table.hasAttr("aria-labelledby") || table.selectFirst("> caption") != null;
        if (!named) {
            add("<table", "a table has neither caption nor label", "Give it a caption.");
        }
    }

    private void add(String shownBy, String words, String remedy) {
        problems.add(page.problem(shownBy, words, remedy));
    }
}
