package loomwright.generator.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;

/** Reads {@code pages/KEY.md}: plain pages, and what an author writes on the pages the generator fills. */
final class PageFolder {
    private static final String ENDING = ".md";

    private final Folder folder;
    private final Problems problems;
    private final List<PlainPage> pages = new ArrayList<>();
    private final Map<String, Front> fronts = new LinkedHashMap<>();
    private Settings settings = new Settings("", "", null);

    PageFolder(Folder folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    PageFolder read() {
        for (String key : folder.keys("pages", ENDING)) {
            SourceFile file = folder.read("pages/" + key + ENDING);
            if (file != null) {
                add(key, file);
            }
        }
        return this;
    }

    List<PlainPage> pages() {
        return List.copyOf(pages);
    }

    Map<String, Front> fronts() {
        return fronts;
    }

    /** What stands at the foot of every page; the start page says it. */
    Settings settings() {
        return settings;
    }

    private void add(String key, SourceFile file) {
        FrontMatter matter = FrontMatter.of(file, "front matter", problems);
        ArticleText text = new ArticleText(file, matter.bodyStart(), problems);
        YamlMap map = matter.map();
        String title = map == null ? key : text(map.required("title"));
        String summary = map == null ? "" : text(map.required("summary"));
        Article article = text.article(key + ".html", title);
        if (Front.PAGES.contains(key)) {
            fronts.put(key, front(key, map, article, summary));
        } else {
            pages.add(new PlainPage(key, article, summary));
        }
        if (map != null) {
            map.finish();
        }
    }

    private Front front(String key, YamlMap map, Article article, String summary) {
        if (map != null && key.equals("index")) {
            settings = new Settings(text(map.required("revised")), text(map.required("licence")), map.required("safety"));
            return new Front(article, summary, ways(map), List.of(), List.of(), List.of(), List.of());
        }
        List<Front.LessonPath> paths = map != null && key.equals("lessons") ? paths(map) : List.of();
        List<Front.CalculatorGroup> groups = map != null && key.equals("calculators") ? groups(map) : List.of();
        List<List<String>> alike = map != null && key.equals("search") ? alike(map) : List.of();
        List<Front.Asked> asked = map != null && key.equals("search") ? asked(map) : List.of();
        return new Front(article, summary, List.of(), paths, groups, alike, asked);
    }

    private static List<Front.Asked> asked(YamlMap map) {
        List<Front.Asked> asked = new ArrayList<>();
        for (YamlMap each : map.maps("asked")) {
            Scalar to = each.required("to");
            String words = text(each.required("words"));
            each.finish();
            if (to != null) {
                asked.add(new Front.Asked(to, words));
            }
        }
        return List.copyOf(asked);
    }

    private static List<List<String>> alike(YamlMap map) {
        return map.texts("alike").stream().map(words -> List.of(words.text().strip().split("\\s+"))).toList();
    }

    private static List<Front.Way> ways(YamlMap map) {
        List<Front.Way> ways = new ArrayList<>();
        for (YamlMap way : map.maps("ways")) {
            String title = text(way.required("title"));
            Scalar to = way.required("to");
            String words = text(way.required("words"));
            way.finish();
            if (to != null) {
                ways.add(new Front.Way(title, to, words));
            }
        }
        return List.copyOf(ways);
    }

    private static List<Front.LessonPath> paths(YamlMap map) {
        List<Front.LessonPath> paths = new ArrayList<>();
        for (YamlMap path : map.maps("paths")) {
            String key = text(path.required("key"));
            String title = text(path.required("title"));
            String words = text(path.required("words"));
            List<Scalar> lessons = path.texts("lessons");
            path.finish();
            paths.add(new Front.LessonPath(key, title, words, lessons));
        }
        return List.copyOf(paths);
    }

    private static List<Front.CalculatorGroup> groups(YamlMap map) {
        List<Front.CalculatorGroup> groups = new ArrayList<>();
        for (YamlMap group : map.maps("groups")) {
            Scalar key = group.required("key");
            String title = text(group.required("title"));
            List<Scalar> calculators = group.texts("calculators");
            group.finish();
            if (key != null) {
                groups.add(new Front.CalculatorGroup(key, title, calculators));
            }
        }
        return List.copyOf(groups);
    }

    private static String text(Scalar scalar) {
        return scalar == null ? "" : scalar.text();
    }
}
