package loomwright.circuit.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitRefusal;
import loomwright.circuit.DrilledPanel;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.worked.Field;

/** Reads the cells of a link, one after the other. Refuses with {@link CircuitRefusal}. */
final class LinkReader {
    static final String DAMAGED = "The link is damaged: it was cut or changed on its way. Ask for it again, or for the file";

    private final List<String> cells;
    private final LinkNames names;
    private final List<Part> parts = new ArrayList<>();
    private final List<String> triggers = new ArrayList<>();
    private DrilledPanel panel = DrilledPanel.NONE;
    private int at = 2;

    LinkReader(List<String> cells, LinkNames names) {
        this.cells = cells;
        this.names = names;
    }

    Circuit circuit() {
        while (at < cells.size()) {
            String kind = names.kind(next());
            if (CircuitLink.PANEL.equals(kind)) {
                panel();
            } else {
                part(kind == null ? null : PartKind.of(kind));
            }
        }
        for (int i = 0; i < parts.size(); i++) {
            parts.set(i, parts.get(i).triggeredBy(idAt(triggers.get(i))));
        }
        return new Circuit(cells.get(1), parts, panel);
    }

    private void part(PartKind kind) {
        require(kind != null && parts.size() < Circuit.MOST_PARTS);
        String id = next();
        String name = next();
        String fedBy = idAt(next());
        triggers.add(next());
        Map<String, String> typed = texts(kind.key());
        String reading = typed.containsKey(CircuitLink.READING) ? typed.remove(CircuitLink.READING) : "";
        parts.add(Part.read(id, kind, name, fedBy, "", reading, typed).partOrRefuse());
    }

    private void panel() {
        Map<String, String> typed = texts(CircuitLink.PANEL);
        List<String> texts = new ArrayList<>();
        for (Field field : DrilledPanel.FIELDS) {
            texts.add(typed.containsKey(field.key()) ? typed.remove(field.key()) : "");
        }
        require(typed.isEmpty());
        panel = new DrilledPanel(texts);
    }

    /** Pairs of field and text up to an empty cell. */
    private Map<String, String> texts(String kind) {
        Map<String, String> typed = new HashMap<>();
        for (String cell = next(); !cell.isEmpty(); cell = next()) {
            String field = names.field(kind, cell);
            require(field != null && !typed.containsKey(field));
            typed.put(field, next());
        }
        return typed;
    }

    private String next() {
        require(at < cells.size());
        return cells.get(at++);
    }

    /** The id at a place; an empty text for an empty place. */
    private String idAt(String place) {
        if (place.isEmpty()) {
            return place;
        }
        int number = number(place);
        require(number >= 0 && number < parts.size());
        return parts.get(number).id();
    }

    private static void require(boolean held) {
        if (!held) {
            throw new CircuitRefusal("", DAMAGED);
        }
    }

    /** A place of one to three digits; −1 if it is none. */
    static int number(String text) {
        if (text.isEmpty() || text.length() > 3) {
            return -1;
        }
        int number = 0;
        for (int i = 0; i < text.length(); i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            number = 10 * number + digit;
        }
        return number;
    }
}
