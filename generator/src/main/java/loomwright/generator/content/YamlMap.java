package loomwright.generator.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import loomwright.generator.problem.HiddenSigns;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.Span;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** A YAML mapping. Asking for a key makes the key known; {@link #finish} reports the keys nobody asked for. */
public final class YamlMap {
    private final String what;
    private final YamlReader reader;
    private final Problems problems;
    private final Span at;
    private final Map<String, Span> keys = new LinkedHashMap<>();
    private final Map<String, Node> values = new LinkedHashMap<>();
    private final TreeSet<String> known = new TreeSet<>();

    YamlMap(String what, MappingNode node, YamlReader reader, Problems problems) {
        this.what = what;
        this.reader = reader;
        this.problems = problems;
        this.at = reader.span(node);
        for (NodeTuple tuple : node.getValue()) {
            add(tuple);
        }
    }

    private void add(NodeTuple tuple) {
        Span place = reader.span(tuple.getKeyNode());
        if (!(tuple.getKeyNode() instanceof ScalarNode name)) {
            problems.add(place.problem("a key of the " + what + " is not a word", "Write key: text."));
        } else if (keys.containsKey(name.getValue())) {
            problems.add(place.problem(
                    "the " + what + " has the key \"" + name.getValue() + "\" twice", "Keep one of the two lines."));
        } else {
            keys.put(name.getValue(), place);
            values.put(name.getValue(), tuple.getValueNode());
        }
    }

    public Span at() {
        return at;
    }

    /** Where a key stands, or the mapping itself if it has no such key. */
    public Span keyAt(String key) {
        return keys.getOrDefault(key, at);
    }

    public boolean has(String key) {
        return keys.containsKey(key);
    }

    /** The text of a key, or null if it is missing. */
    public Scalar text(String key) {
        known.add(key);
        Node node = values.get(key);
        return node == null ? null : scalar(key, node);
    }

    /** The text of a key; a missing or empty one is a problem, and null. */
    public Scalar required(String key) {
        Scalar scalar = text(key);
        if (!has(key)) {
            problems.add(at.problem("the " + what + " has no \"" + key + "\"", "Add a line " + key + ": with its text."));
        } else if (scalar != null && scalar.isBlank()) {
            problems.add(keyAt(key).problem("\"" + key + "\" is empty", "Write its text after the colon."));
            return null;
        }
        return scalar;
    }

    /** The texts of a list; a single text counts as a list of one. Empty if the key is missing. */
    public List<Scalar> texts(String key) {
        known.add(key);
        Node node = values.get(key);
        List<Scalar> texts = new ArrayList<>();
        if (node instanceof SequenceNode list) {
            for (Node each : list.getValue()) {
                addIfPresent(texts, scalar(key, each));
            }
        } else if (node != null) {
            addIfPresent(texts, scalar(key, node));
        }
        return texts;
    }

    private static void addIfPresent(List<Scalar> texts, Scalar scalar) {
        if (scalar != null) {
            texts.add(scalar);
        }
    }

    /** The texts of a mapping whose keys are the author's own. Empty if the key is missing. */
    public Map<String, Scalar> textsByKey(String key) {
        YamlMap map = map(key);
        Map<String, Scalar> texts = new LinkedHashMap<>();
        for (String each : map == null ? List.<String>of() : map.names()) {
            Scalar scalar = map.text(each);
            if (scalar != null) {
                texts.put(each, scalar);
            }
        }
        return texts;
    }

    /** The mapping under a key, or null if it is missing. */
    public YamlMap map(String key) {
        known.add(key);
        Node node = values.get(key);
        return node == null ? null : map(key, node);
    }

    /** The mappings of a list. Empty if the key is missing. */
    public List<YamlMap> maps(String key) {
        known.add(key);
        Node node = values.get(key);
        List<YamlMap> maps = new ArrayList<>();
        for (Node each : node instanceof SequenceNode list ? list.getValue() : node == null ? List.<Node>of() : List.of(node)) {
            YamlMap map = map(key, each);
            if (map != null) {
                maps.add(map);
            }
        }
        return maps;
    }

    /** The keys as they are written, in order. */
    public List<String> names() {
        return List.copyOf(keys.keySet());
    }

    /** Reports every key that nobody asked for. */
    public void finish() {
        for (Map.Entry<String, Span> key : keys.entrySet()) {
            if (!known.contains(key.getKey())) {
                problems.add(key.getValue().problem(
                        "the " + what + " has an unknown key \"" + key.getKey() + "\"", Nearest.remedy(key.getKey(), known)));
            }
        }
    }

    private Scalar scalar(String key, Node node) {
        if (node instanceof ScalarNode scalar) {
            Scalar read = new Scalar(scalar.getValue(), reader.span(node));
            if (!HiddenSigns.shown(read.text()).equals(read.text()) && HiddenSigns.shown(read.at().text()).equals(read.at().text())) {
                problems.add(read.problem("a sign that cannot be seen is written here with a backslash", "Delete it."));
            }
            return read;
        }
        problems.add(reader.span(node).problem("\"" + key + "\" must be a text", "Write " + key + ": and the text on one line."));
        return null;
    }

    private YamlMap map(String key, Node node) {
        if (node instanceof MappingNode map) {
            return new YamlMap("\"" + key + "\" of the " + what, map, reader, problems);
        }
        problems.add(reader.span(node).problem(
                "\"" + key + "\" must hold keys and texts", "Write key: text lines below it, indented by two spaces."));
        return null;
    }
}
