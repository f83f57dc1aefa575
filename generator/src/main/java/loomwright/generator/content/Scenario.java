package loomwright.generator.content;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.generator.problem.Problems;

/** Reads {@code scenario.yaml}: figures that the lessons share, by key. */
final class Scenario {
    private Scenario() {}

    /**
     * The figures of a folder, after those of another.
     *
     * @param before the figures of the other folder, or none
     * @param owner what the other folder is called
     */
    static Map<String, Fact> read(Folder folder, Map<String, Fact> before, String owner, Problems problems) {
        Map<String, Fact> facts = new LinkedHashMap<>(before);
        YamlMap map = folder.yaml("scenario.yaml", "scenario");
        for (String key : map == null ? List.<String>of() : map.names()) {
            YamlMap fact = map.map(key);
            if (before.containsKey(key)) {
                problems.add(map.keyAt(key).problem(
                        "the figure \"" + key + "\" stands in " + owner + "/scenario.yaml already", "Choose another key."));
            } else if (fact != null) {
                Scalar value = fact.required("value");
                Scalar says = fact.required("says");
                fact.finish();
                facts.put(key, new Fact(value == null ? "" : value.text(), says == null ? "" : says.text()));
            }
        }
        return facts;
    }
}
