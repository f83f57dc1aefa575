package loomwright.handout;

import java.util.ArrayList;
import java.util.List;

/** Everything that is printed for a day, page by page, so that the pages are counted before they are printed. */
public final class Printout {
    /**
     * One part of it.
     *
     * @param key its name in pages and files
     * @param name its name for a reader
     * @param pages the pages, each the markup of one
     */
    public record Part(String key, String name, List<String> pages) {
        /** All its pages. */
        public String html() {
            StringBuilder html = new StringBuilder();
            pages.forEach(html::append);
            return html.toString();
        }
    }

    private final Handout handout;
    private final int people;
    private final List<Part> parts = new ArrayList<>();
    private int longest;

    /**
     * Lays everything out.
     *
     * @param house whose sheets they are
     */
    public Printout(Handout handout, int people, int seed, String house, Paper paper) {
        this.handout = handout;
        this.people = people;
        List<Sheet> all = handout.sheets(people);
        List<String> pages = new ArrayList<>();
        for (Sheet sheet : all) {
            List<String> one = SheetMarkup.pages(sheet, house, paper);
            longest = Math.max(longest, one.size());
            pages.addAll(one);
        }
        parts.add(new Part("register", "register", RegisterMarkup.pages(handout, all, seed, house, paper)));
        parts.add(new Part("tables", "tables", TablesMarkup.pages(all, house, paper)));
        parts.add(new Part("sheets", "sheets", pages));
        parts.add(new Part("answers", "answers", AnswersMarkup.pages(all, house, paper)));
        parts.add(new Part("workings", "workings", KeyMarkup.pages(all, house, paper)));
    }

    /** The parts, in the order they are printed. */
    public List<Part> parts() {
        return List.copyOf(parts);
    }

    /** The pages of everything, the tables once. */
    public int pages() {
        int pages = 0;
        for (Part part : parts) {
            pages += part.pages().size();
        }
        return pages;
    }

    /** The pages of the part of that key. */
    public int pagesOf(String key) {
        int pages = 0;
        for (Part part : parts) {
            pages += part.key().equals(key) ? part.pages().size() : 0;
        }
        return pages;
    }

    /** The most pages that one person gets. */
    public int pagesOfOne() {
        return longest;
    }

    /** How much paper it is, in a sentence. */
    public String said() {
        StringBuilder said = new StringBuilder(counted(people, "sheet") + " of " + counted(handout.asked().size(), "question") + ": "
                + counted(pages(), "page") + " in all (");
        for (int i = 0; i < parts.size(); i++) {
            said.append(i == 0 ? "" : ", ").append(parts.get(i).name()).append(' ').append(parts.get(i).pages().size());
        }
        return said.append("), ").append(counted(longest, "page")).append(" for a person.").toString();
    }

    private static String counted(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
