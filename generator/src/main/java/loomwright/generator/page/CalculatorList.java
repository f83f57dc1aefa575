package loomwright.generator.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.generator.content.Front;
import loomwright.generator.content.Scalar;
import loomwright.generator.problem.Nearest;
import loomwright.worked.Calculator;
import loomwright.worked.Description;

/** Writes the list of calculators, by the question each answers, one part of the job after the other. */
final class CalculatorList {
    private static final String ADDRESS = "calculators.html";

    /** The record of calculators.mustache. */
    record Page(Frame frame, String title, String intro, List<Group> groups) {}

    /** Calculators for one part of the job; without a heading if the author made no groups. */
    record Group(Heading heading, List<Entry> calculators) {}

    /** The heading of a group. */
    record Heading(String id, String title) {}

    /** A calculator in the list. */
    record Entry(String question, String href, String title, String summary) {}

    private final Site site;

    /** Those in no group yet. */
    private final Map<String, Calculator> left;

    private CalculatorList(Site site) {
        this.site = site;
        this.left = new LinkedHashMap<>(site.calculators());
    }

    static void write(Site site, Frames frames, Templates templates, PageSink sink) {
        Intro intro = Intro.of(site, "calculators", "Calculators");
        List<Group> groups = new CalculatorList(site).groups();
        Page page = new Page(frames.of(intro.title(), intro.summary(), ADDRESS), intro.title(), intro.html(), groups);
        sink.page(ADDRESS, templates.fill("calculators", page), intro.places());
    }

    private List<Group> groups() {
        Front front = site.content().fronts().get("calculators");
        if (front == null || front.groups().isEmpty()) {
            return List.of(new Group(null, left.values().stream().map(CalculatorList::entry).toList()));
        }
        List<Group> groups = new ArrayList<>();
        Scalar last = null;
        for (Front.CalculatorGroup group : front.groups()) {
            groups.add(new Group(new Heading(group.key().text(), group.title()), entries(group.calculators())));
            last = group.key();
        }
        if (!left.isEmpty()) {
            site.problems().add(last.problem(
                    "these calculators are in no group: " + String.join(", ", left.keySet()),
                    "Put each into the group of its question."));
        }
        return groups;
    }

    private List<Entry> entries(List<Scalar> keys) {
        List<Entry> entries = new ArrayList<>();
        for (Scalar key : keys) {
            Calculator calculator = left.remove(key.text());
            if (calculator != null) {
                entries.add(entry(calculator));
            } else if (site.calculators().containsKey(key.text())) {
                site.problems().add(key.problem("\"" + key.text() + "\" is in a group already", "Leave it in one of the two."));
            } else {
                site.problems().add(key.problem(
                        "no calculator is called \"" + key.text() + "\"", Nearest.remedy(key.text(), site.calculators().keySet())));
            }
        }
        return entries;
    }

    private static Entry entry(Calculator calculator) {
        Description description = calculator.description();
        return new Entry(
                description.question(), Address.calculator(description.key()), description.title(), CalculatorPages.summary(description));
    }
}
