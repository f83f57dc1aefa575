package loomwright.generator.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import loomwright.generator.content.Front;
import loomwright.generator.markdown.Surroundings.Target;

/** Writes the page of search; without scripts it is the list of everything, A to Z. */
final class SearchPage {
    private static final String ADDRESS = "search.html";

    /** The record of search.mustache. */
    record Page(Frame frame, String title, List<Letter> letters) {}

    /** The pages whose title begins with a letter. */
    record Letter(String id, String letter, String href, List<Entry> entries) {}

    /** A page. */
    record Entry(String title, String href, String kind) {}

    private SearchPage() {}

    static void write(Site site, Frames frames, Templates templates, SearchData search, PageSink sink) {
        Intro intro = Intro.of(site, "search", "Search");
        Map<String, List<Entry>> byLetter = new TreeMap<>();
        List<SearchData.Entry> sorted = new ArrayList<>(search.entries());
        sorted.sort(Comparator.comparing((SearchData.Entry each) -> words(each).toLowerCase(Locale.ROOT))
                .thenComparing(SearchData.Entry::address));
        for (SearchData.Entry entry : sorted) {
            String letter = letter(words(entry));
            byLetter.computeIfAbsent(letter, any -> new ArrayList<>())
                    .add(new Entry(entry.title(), entry.address(), entry.kind()));
        }
        List<Letter> letters = new ArrayList<>();
        byLetter.forEach((letter, entries) -> {
            String id = letter.equals("#") ? "letter-0" : "letter-" + letter.toLowerCase(Locale.ROOT);
            letters.add(new Letter(id, letter, "#" + id, entries));
        });
        Page page = new Page(frames.of(intro.title(), intro.summary(), ADDRESS), intro.title(), letters);
        sink.page(ADDRESS, templates.fill("search", page), intro.places());
        Front front = site.content().fronts().get("search");
        sink.file(SearchData.FILE, front == null ? search.script(List.of(), Map.of()) : search.script(front.alike(), asked(site, front, search)));
    }

    private static String page(String href) {
        int hash = href.indexOf('#');
        return hash < 0 ? href : href.substring(0, hash);
    }

    private static Map<String, String> asked(Site site, Front front, SearchData search) {
        Map<String, String> asked = new TreeMap<>();
        LinkAddresses links = new LinkAddresses(site, new Place("Search", ADDRESS));
        for (Front.Asked each : front.asked()) {
            Target target = links.find(each.to().text(), each.to().at());
            if (target != null && !search.has(target.href()) && !site.problems().areIn(site.content().fileOf(page(target.href())))) {
                site.problems().add(each.to().problem(
                        "search finds nothing at \"" + each.to().text() + "\"", "Name a page, a word, or a lesson's section by its heading."));
            } else if (target != null && asked.put(target.href(), each.words()) != null) {
                site.problems().add(each.to().problem("\"" + each.to().text() + "\" stands here twice", "Put all its words into one line."));
            }
        }
        return asked;
    }

    /** The title without the number of a lesson, so that lessons stand in the alphabet. */
    private static String words(SearchData.Entry entry) {
        int space = entry.kind().equals("lesson") ? entry.title().indexOf(' ') : -1;
        boolean numbered = space > 0 && entry.title().substring(0, space).chars().allMatch(Character::isDigit);
        return numbered ? entry.title().substring(space + 1) : entry.title();
    }

    private static String letter(String words) {
        String first = words.isEmpty() ? "#" : words.substring(0, 1).toUpperCase(Locale.ROOT);
        return Character.isLetter(first.charAt(0)) ? first : "#";
    }
}
