package loomwright.generator.content;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Problem;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.ShownPath;
import loomwright.generator.problem.SourceFile;
import loomwright.source.Document;
import loomwright.units.UnitSystem;

/** A club's folder: it adds to ours and changes nothing. What both have under one key is reported at the club's file. */
final class ClubFolder {
    private static final String SETTINGS = "club.yaml";
    private static final TreeSet<String> KNOWN = new TreeSet<>(
            List.of(SETTINGS, "lessons", "pages", "tables", "circuits", "drawings", "pictures", "sources.csv", "glossary.md", "scenario.yaml", "README.md"));

    private final Path root;
    private final Folder folder;
    private final Problems problems;

    ClubFolder(Path root, Problems problems) {
        this.root = root;
        this.folder = new Folder(root, problems);
        this.problems = problems;
    }

    /** Our content with the club's after it. */
    Content joinedTo(Content ours) {
        if (!Files.isDirectory(root)) {
            problems.add(Problem.ofFile(ShownPath.of(root), "there is no such folder", "Name the folder of the club with --club."));
            return ours;
        }
        for (String name : folder.names("")) {
            if (!KNOWN.contains(name)) {
                problems.add(Problem.ofFile(path(name), "a club's folder has no such place, so it would not be read", Nearest.remedy(name, KNOWN)));
            }
        }
        Map<String, Document> documents = documents(ours);
        List<Lesson> own = lessons(ours);
        List<Lesson> lessons = joined(ours.lessons(), own);
        new LessonFolder(folder, problems).checkNeeds(lessons);
        List<PlainPage> pages = pages(ours);
        return new Content(
                ours.name(),
                documents,
                tables(ours, documents),
                terms(ours),
                Scenario.read(folder, ours.scenario(), ours.name(), problems),
                circuits(ours),
                drawings(ours),
                ours.schemas(),
                pictures(ours),
                lessons,
                joined(ours.pages(), pages),
                ours.fronts(),
                ours.settings(),
                club(own.stream().map(Lesson::key).toList(), pages));
    }

    private static <T> List<T> joined(List<T> ours, List<T> own) {
        List<T> joined = new ArrayList<>(ours);
        joined.addAll(own);
        return List.copyOf(joined);
    }

    private Club club(List<String> lessons, List<PlainPage> pages) {
        YamlMap map = folder.yaml(SETTINGS, "settings of the club");
        if (map == null) {
            return new Club("", "", UnitSystem.METRIC, lessons, pages);
        }
        Scalar name = map.required("name");
        Scalar contact = map.text("contact");
        UnitSystem units = units(map.text("units"));
        map.finish();
        return new Club(name == null ? "" : name.text().strip(), contact == null ? "" : contact.text().strip(), units, lessons, pages);
    }

    private UnitSystem units(Scalar chosen) {
        String key = chosen == null ? UnitSystem.METRIC.key() : chosen.text().strip();
        UnitSystem system = UnitSystem.of(key);
        if (!system.key().equals(key)) {
            problems.add(chosen.problem("there are no units \"" + key + "\"", "Write \"units: metric\" or \"units: american\"."));
        }
        return system;
    }

    private Map<String, Document> documents(Content ours) {
        Map<String, Document> all = new LinkedHashMap<>(ours.documents());
        if (folder.has(TableFolder.SOURCES)) {
            SourceFile file = folder.read(TableFolder.SOURCES);
            new TableFolder(folder, problems).documents().forEach((key, document) -> {
                if (all.putIfAbsent(key, document) != null) {
                    int line = file.text().indexOf("\n" + key + ",") + 1;
                    problems.add(file.lineSpan(file.lineAt(line)).problem(
                            "the document \"" + key + "\" is listed in " + ours.name() + "/" + TableFolder.SOURCES + " already",
                            "Leave the line out, or choose another key."));
                }
            });
        }
        return all;
    }

    private Map<String, TableFile> tables(Content ours, Map<String, Document> documents) {
        Map<String, TableFile> all = new LinkedHashMap<>(ours.tables());
        new TableFolder(folder, problems).tables(documents).forEach((key, table) -> {
            if (all.putIfAbsent(key, table) != null) {
                taken("tables/" + key + ".csv", "the table \"" + key + "\"", ours.tables().get(key).file().name());
            }
        });
        return all;
    }

    private Map<String, CircuitText> circuits(Content ours) {
        Map<String, CircuitText> all = new LinkedHashMap<>(ours.circuits());
        new CircuitFolder(folder, problems).circuits().forEach((key, circuit) -> {
            if (all.putIfAbsent(key, circuit) != null) {
                taken("circuits/" + key + ".json", "the circuit \"" + key + "\"", ours.circuits().get(key).file().name());
            }
        });
        return all;
    }

    private Map<String, SourceFile> drawings(Content ours) {
        Map<String, SourceFile> all = new TreeMap<>(ours.drawings());
        DrawingFolder.read(folder, problems).forEach((name, file) -> {
            if (all.putIfAbsent(name, file) != null) {
                taken("drawings/" + name + ".svg", "the drawing \"" + name + "\"", ours.drawings().get(name).name());
            }
        });
        return all;
    }

    private Map<String, PictureFile> pictures(Content ours) {
        Map<String, PictureFile> all = new TreeMap<>(ours.pictures());
        new PictureFolder(folder, problems).pictures().forEach((name, picture) -> {
            if (all.putIfAbsent(name, picture) != null) {
                taken("pictures/" + name, "the photo \"" + name + "\"", ours.pictures().get(name).shown());
            }
        });
        return all;
    }

    private Map<String, Term> terms(Content ours) {
        Map<String, Term> all = new TreeMap<>(ours.terms());
        Glossary.read(folder, problems).forEach((key, term) -> {
            if (all.putIfAbsent(key, term) != null) {
                SourceFile file = term.meaning().file();
                problems.add(file.lineSpan(term.meaning().line() - 1).problem(
                        "the term \"" + term.words() + "\" is explained in " + ours.name() + "/glossary.md already",
                        "Leave it out, or choose another word."));
            }
        });
        return all;
    }

    private List<Lesson> lessons(Content ours) {
        List<Lesson> own = new ArrayList<>();
        for (Lesson lesson : new LessonFolder(folder, problems).all()) {
            Lesson same = ours.lessons().stream().filter(each -> each.key().equals(lesson.key())).findFirst().orElse(null);
            if (same == null) {
                own.add(lesson);
            } else {
                taken("lessons/" + lesson.key(), "the lesson \"" + lesson.key() + "\"", same.article().file().name());
            }
        }
        return own;
    }

    private List<PlainPage> pages(Content ours) {
        PageFolder read = new PageFolder(folder, problems).read();
        for (String filled : read.fronts().keySet()) {
            problems.add(Problem.ofFile(
                    path("pages/" + filled + ".md"), "the page \"" + filled + "\" is filled by the site itself", "Give the file another name."));
        }
        List<PlainPage> own = new ArrayList<>();
        for (PlainPage page : read.pages()) {
            PlainPage same = ours.pages().stream().filter(each -> each.key().equals(page.key())).findFirst().orElse(null);
            if (same == null) {
                own.add(page);
            } else {
                taken("pages/" + page.key() + ".md", "the page \"" + page.key() + "\"", same.article().file().name());
            }
        }
        return own;
    }

    private void taken(String at, String what, String by) {
        problems.add(Problem.ofFile(path(at), what + " is there already: " + by, "Give yours another name."));
    }

    private String path(String name) {
        return folder.name() + "/" + name;
    }
}
