package loomwright.generator.page;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import loomwright.generator.content.Front;
import loomwright.generator.content.Lesson;
import loomwright.generator.content.Lists;
import loomwright.generator.content.PlainPage;
import loomwright.generator.markdown.Surroundings.Target;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Span;

/** Finds where the links of a page lead. */
final class LinkAddresses {
    private static final List<String> SCHEMES = List.of("lesson:", "word:", "source:", "calculator:", "table:", "page:", "schema:");

    private final Site site;
    private final Place page;

    LinkAddresses(Site site, Place page) {
        this.site = site;
        this.page = page;
    }

    /** The target of a link, or null with a problem if there is none. */
    Target find(String address, Span place) {
        int colon = address.indexOf(':');
        String scheme = address.substring(0, colon + 1);
        String rest = address.substring(colon + 1);
        int hash = rest.indexOf('#');
        String key = hash < 0 ? rest : rest.substring(0, hash);
        String anchor = hash < 0 ? "" : rest.substring(hash);
        return switch (scheme) {
            case "lesson:" -> lesson(key, anchor, place);
            case "word:" -> known("word", key, site.content().terms().keySet(), place) ? to(Address.term(key), "term") : null;
            case "source:" -> source(key, place);
            case "calculator:" ->
                known("calculator", key, site.calculators().keySet(), place) ? to(Address.calculator(key) + anchor, "") : null;
            case "table:" -> table(key, place);
            case "page:" -> known("page", key, pages(), place) ? to(key + ".html" + anchor, "") : null;
            case "schema:" -> known("schema", key, site.content().schemas().keySet(), place) ? to(Address.schema(key), "") : null;
            case "http:", "https:" -> new Target(Percent.encoded(address), "");
            default -> other(address, place);
        };
    }

    private Target other(String address, Span place) {
        if (address.startsWith("#")) {
            return new Target(address, "");
        }
        site.problems().add(place.problem(
                "no link can lead to \"" + address + "\"", "Begin it with one of " + String.join(" ", SCHEMES) + " https: or #."));
        return null;
    }

    /** A lesson by its key, or by its key without the number in front. A link without words says the number. */
    private Target lesson(String key, String anchor, Span place) {
        for (Lesson lesson : site.content().lessons()) {
            if (lesson.key().equals(key) || lesson.name().equals(key)) {
                String words = lesson.number().isEmpty() ? lesson.title() : "Lesson " + lesson.number();
                Target target = to(Address.lesson(lesson.key()) + anchor, "");
                return new Target(target.href(), target.kind(), words);
            }
        }
        known("lesson", key, lessons(), place);
        return null;
    }

    private Target source(String key, Span place) {
        if (!known("source", key, site.content().documents().keySet(), place)) {
            return null;
        }
        site.reliance().onDocument(key, page);
        return to(Address.source(key), "");
    }

    private Target table(String key, Span place) {
        if (!known("table", key, site.content().tables().keySet(), place)) {
            return null;
        }
        site.reliance().onTable(key, page);
        return to(Address.table(key), "");
    }

    private Target to(String address, String kind) {
        return new Target(Address.from(page.address(), address), kind);
    }

    private boolean known(String what, String key, Collection<String> keys, Span place) {
        if (keys.contains(key)) {
            return true;
        }
        String nearest = Nearest.to(key, keys);
        String add = switch (what) {
            case "word" -> Lists.add(place.file(), "glossary.md");
            case "source" -> Lists.add(place.file(), "sources.csv");
            case "table" -> "Add it to the folder tables.";
            default -> Nearest.remedy(key, keys);
        };
        site.problems().add(place.find(key).problem(
                "no " + what + " is called \"" + key + "\"", nearest == null ? add : "Did you mean \"" + nearest + "\"?"));
        return false;
    }

    private List<String> lessons() {
        return site.content().lessons().stream().map(Lesson::key).toList();
    }

    private List<String> pages() {
        List<String> pages = new ArrayList<>(Front.PAGES);
        pages.sort(null);
        pages.addAll(site.content().pages().stream().map(PlainPage::key).toList());
        return pages;
    }
}
