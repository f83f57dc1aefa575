package loomwright.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** The site as it was built: its pages and the worked examples on them. */
final class BuiltSite {
    private static final Path FOLDER = Path.of(System.getProperty("site.folder", "target/site")).toAbsolutePath();

    private BuiltSite() {}

    /**
     * A worked example as it is printed.
     *
     * @param page the page it stands on
     * @param key its key
     * @param calculator the key of its calculator
     * @param given what it starts from
     * @param section its markup
     */
    record Example(String page, String key, String calculator, Map<String, String> given, Element section) {
        String name() {
            return page + " " + key;
        }
    }

    static String address(String page) {
        int fragment = page.indexOf('#');
        String file = fragment < 0 ? page : page.substring(0, fragment);
        return FOLDER.resolve(file).toUri() + (fragment < 0 ? "" : page.substring(fragment));
    }

    static Path file(String page) {
        return FOLDER.resolve(page);
    }

    /** Every page, by its way from the start page. */
    static List<String> pages() {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            List<String> pages = files.filter(file -> file.toString().endsWith(".html"))
                    .map(file -> FOLDER.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
            if (pages.isEmpty()) {
                throw new AssertionError("There is no page in " + FOLDER + ": build the site first.");
            }
            return pages;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Document page(String page) {
        try {
            return Jsoup.parse(file(page));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every worked example of the site. */
    static List<Example> examples() {
        List<Example> examples = new ArrayList<>();
        for (String page : pages()) {
            for (Element section : page(page).select("section.example[data-calculator]")) {
                Map<String, String> given = new LinkedHashMap<>();
                for (Element entry : section.select(".given [data-input]")) {
                    given.put(entry.attr("data-input"), entry.attr("data-given"));
                }
                examples.add(new Example(page, section.attr("data-key"), section.attr("data-calculator"), given, section));
            }
        }
        if (examples.isEmpty()) {
            throw new AssertionError("There is no worked example in " + FOLDER);
        }
        return examples;
    }

    /** Every question whose answer was held against a figure from elsewhere; the section is the list of those figures. */
    static List<Example> checkedQuestions() {
        List<Example> questions = new ArrayList<>();
        for (String page : pages()) {
            for (Element pins : page(page).select(".question .pins[data-calculator]")) {
                Map<String, String> given = new LinkedHashMap<>();
                for (String entry : pins.attr("data-given").split("\\|")) {
                    given.put(entry.substring(0, entry.indexOf('=')), entry.substring(entry.indexOf('=') + 1));
                }
                questions.add(new Example(page, pins.closest(".question").id(), pins.attr("data-calculator"), given, pins));
            }
        }
        return questions;
    }

    /** The first example of a calculator. */
    static Example exampleOf(String calculator) {
        for (Example example : examples()) {
            if (example.calculator().equals(calculator)) {
                return example;
            }
        }
        throw new AssertionError("no example of " + calculator);
    }
}
