package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.nodes.Element;

/** On paper nothing is cut and nothing is folded away. */
final class WholeOnPaper {
    /** A lesson on paper, with its further examples as story, result and pin. */
    private static final int PAGES_OF_A_LESSON = 14;
    /** Its screens with room for notes. */
    private static final int PAGES_OF_A_HANDOUT = 12;

    private WholeOnPaper() {}

    /** Prints the page that is open. What fits on A4 fits on Letter, which is wider; only where pages are counted Letter, which is lower, is printed too. */
    static void isWhole(Browser browser, String page) throws IOException {
        onPaper(browser, page, Paper.A4);
        if (mostPages(page) < Integer.MAX_VALUE) {
            onPaper(browser, page, Paper.LETTER);
        }
    }

    private static int mostPages(String page) {
        return page.startsWith("lessons/") ? PAGES_OF_A_LESSON : page.startsWith("projector/") ? PAGES_OF_A_HANDOUT : Integer.MAX_VALUE;
    }

    private static void onPaper(Browser browser, String page, Paper paper) throws IOException {
        try (PDDocument printed = paper.print(browser)) {
            assertTrue(printed.getDocumentCatalog().getMarkInfo().isMarked(), "tagged for a screen reader");
            Paper.Edges edges = new Paper.Edges();
            String text = Paper.squeezed(edges.getText(printed));
            assertEquals(List.of(), edges.cut(), () -> "words that run over the edge of " + paper);
            assertTrue(printed.getNumberOfPages() <= mostPages(page), () -> printed.getNumberOfPages() + " pages of " + paper);
            for (String words : mustStand(page)) {
                assertTrue(text.contains(Paper.squeezed(words)), () -> "not on " + paper + ": " + words);
            }
        }
    }

    /**
     * The title; of a further example that nobody opened the line that names it, its story, its main results and what they were held against; the words
     * of every other fold, the last result of every example and the last words of the page. Paper needs no links onward, no buttons, nor words about the device,
     * nor in a lesson the numbers of a picture once more.
     */
    private static List<String> mustStand(String page) {
        List<String> words = new ArrayList<>();
        Element main = BuiltSite.page(page).selectFirst("main");
        words.add(main.selectFirst("h1").text());
        // What is only heard is not on paper. In the place of the first job that stands there without scripts is its first question.
        main.select(".unseen, #first-job > *").remove();
        main.select("details.further").forEach(each -> words.add(each.selectFirst("summary").text()));
        main.select("details.further :is(.story p, .upshot .value, .pins li)").forEach(each -> words.add(start(each)));
        main.select("details.further, .screen[data-further]").remove();
        if (page.startsWith("lessons/")) {
            main.select("details.figures").remove();
        }
        main.select("details > summary").stream().filter(each -> each.closest(".on-screen") == null).forEach(each -> words.add(each.text()));
        main.select("details p, details li").stream().filter(each -> each.closest(".on-screen, .actions") == null).forEach(each -> words.add(start(each)));
        main.select(".results tr:last-child td:last-child").forEach(each -> words.add(each.text()));
        main.select("p, li").stream()
                .filter(each -> each.closest("nav, .on-screen, [hidden]") == null && each.select("math, svg").isEmpty())
                .reduce((first, last) -> last)
                .ifPresent(each -> words.add(start(each)));
        return words;
    }

    /** The first words, up to a formula. */
    static String start(Element element) {
        String text = element.select("math").isEmpty() ? element.text() : element.ownText();
        return text.length() > 40 ? text.substring(0, 40) : text;
    }
}
