package loomwright.circuit.file;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitRefusal;
import loomwright.circuit.DrilledPanel;
import loomwright.circuit.Node;
import loomwright.worked.Field;

/**
 * A circuit as the end of a link: letters, digits and {@code - . _ ~} only. Kinds and fields are named by their keys, as in a file, so that a link
 * still opens when fields have come or gone. What is as usual is left out, so the link stays short.
 */
public final class CircuitLink {
    /** More than this no browser or letter program is sure to keep. */
    public static final int LONGEST = 30_000;

    static final String VERSION = "2";
    static final String READING = "reading";
    /** In the place of the kind of a part. */
    static final String PANEL = "drilled-panel";

    private CircuitLink() {}

    /** The circuit as text for a link; null if it would be too long for one. */
    public static String write(Circuit circuit) {
        List<String> cells = new ArrayList<>();
        cells.add(VERSION);
        cells.add(circuit.name());
        for (Node node : circuit.nodes()) {
            write(cells, node);
        }
        if (!circuit.panel().isEmpty()) {
            cells.add(PANEL);
            for (int i = 0; i < DrilledPanel.FIELDS.size(); i++) {
                write(cells, DrilledPanel.FIELDS.get(i).key(), circuit.panel().texts().get(i));
            }
            cells.add("");
        }
        String link = LinkText.of(cells);
        return link.length() > LONGEST ? null : link;
    }

    /**
     * Kind, id, name, place of what feeds it, place of its trigger, then pairs of field and text, then an empty cell; a panel without the
     * first five. Places count from 0 through the parts of the link.
     */
    private static void write(List<String> cells, Node node) {
        cells.add(node.kind().key());
        cells.add(node.id());
        cells.add(node.part().name());
        cells.add(node.parent() == null ? "" : Integer.toString(node.parent().order()));
        cells.add(node.triggeredFrom() == null ? "" : Integer.toString(node.triggeredFrom().order()));
        for (Field field : node.kind().fields()) {
            write(cells, field.key(), node.part().isAsUsual(field.key()) ? "" : node.part().text(field.key()));
        }
        write(cells, READING, node.part().reading());
        cells.add("");
    }

    private static void write(List<String> cells, String key, String text) {
        if (!text.isEmpty()) {
            cells.add(key);
            cells.add(text);
        }
    }

    /** The circuit in the end of a link, or why there is none. */
    public static FileRead read(String link) {
        if (link.length() > LONGEST) {
            return refused("The link is longer than " + LONGEST + " characters: send the file instead");
        }
        List<String> cells = LinkText.cells(link);
        if (cells == null || cells.size() < 2) {
            return refused(LinkReader.DAMAGED);
        }
        LinkNames names = cells.get(0).equals(VERSION) ? LinkNames.BY_KEY : cells.get(0).equals("1") ? new LinkVersion1() : null;
        if (names == null) {
            return refused("The link was made by a newer copy of this site: open it there, or ask for the file");
        }
        try {
            return new FileRead(new LinkReader(cells, names).circuit(), List.of());
        } catch (CircuitRefusal refusal) {
            return refused(refusal.getMessage());
        }
    }

    private static FileRead refused(String message) {
        return FileRead.refused(new FileFault("", 0, 0, message));
    }
}
