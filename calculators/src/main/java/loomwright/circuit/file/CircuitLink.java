package loomwright.circuit.file;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitRefusal;
import loomwright.circuit.DrilledPanel;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.circuit.PartRead;
import loomwright.worked.Field;

/**
 * A circuit as the end of a link: letters, digits and {@code - . _ ~} only. What is as usual is left out, so the link stays short; it means
 * what this version takes as usual. A file keeps everything.
 */
public final class CircuitLink {
    /** More than this no browser or letter program is sure to keep. */
    public static final int LONGEST = 30_000;

    private static final String VERSION = "1";
    /** In the place of the kind of a part. */
    private static final String PANEL = "p";
    private static final FileFault DAMAGED = new FileFault(
            "", 0, 0, "The link is damaged: it was cut or changed on its way. Ask for it again, or for the file");

    private CircuitLink() {}

    /** The circuit as text for a link; null if it would be too long for one. */
    public static String write(Circuit circuit) {
        List<String> cells = new ArrayList<>();
        cells.add(VERSION);
        cells.add(circuit.name());
        for (Part part : circuit.parts()) {
            write(cells, circuit, part);
        }
        if (!circuit.panel().isEmpty()) {
            cells.add(PANEL);
            write(cells, DrilledPanel.FIELDS, circuit.panel().texts(), "");
        }
        String link = LinkText.of(cells);
        return link.length() > LONGEST ? null : link;
    }

    /**
     * Kind, id, name, place of what feeds it, place of its trigger, then pairs of field and text, then an empty cell; a panel without the
     * first five. The field after the last stands for the reading.
     */
    private static void write(List<String> cells, Circuit circuit, Part part) {
        cells.add(Integer.toString(part.kind().ordinal()));
        cells.add(part.id());
        cells.add(part.name());
        cells.add(place(circuit, part.fedBy()));
        cells.add(place(circuit, part.triggeredFrom()));
        write(cells, part.kind().fields(), part.texts(), part.reading());
    }

    private static void write(List<String> cells, List<Field> fields, List<String> texts, String reading) {
        for (int i = 0; i < fields.size(); i++) {
            String usual = fields.get(i).usual() == null ? "" : fields.get(i).usual();
            write(cells, i, texts.get(i).equals(usual) ? "" : texts.get(i));
        }
        write(cells, fields.size(), reading);
        cells.add("");
    }

    private static void write(List<String> cells, int field, String text) {
        if (!text.isEmpty()) {
            cells.add(Integer.toString(field));
            cells.add(text);
        }
    }

    private static String place(Circuit circuit, String id) {
        return id.isEmpty() ? "" : Integer.toString(circuit.node(id).order());
    }

    /** The circuit in the end of a link, or why there is none. */
    public static FileRead read(String link) {
        if (link.length() > LONGEST) {
            return FileRead.refused(new FileFault("", 0, 0, "The link is longer than " + LONGEST + " characters: send the file instead"));
        }
        List<String> cells = LinkText.cells(link);
        if (cells == null || cells.size() < 2) {
            return FileRead.refused(DAMAGED);
        }
        if (!cells.get(0).equals(VERSION)) {
            return FileRead.refused(new FileFault("", 0, 0, "The link was made by a newer copy of this site: open it there, or ask for the file"));
        }
        try {
            return new CircuitLink.Cells(cells).circuit();
        } catch (CircuitRefusal refusal) {
            return FileRead.refused(new FileFault("", 0, 0, refusal.getMessage()));
        }
    }

    /** The cells of a link, read one after the other. */
    private static final class Cells {
        private final List<String> cells;
        private final List<Part> parts = new ArrayList<>();
        private final List<String> triggers = new ArrayList<>();
        private DrilledPanel panel = DrilledPanel.NONE;
        private int at = 2;

        Cells(List<String> cells) {
            this.cells = cells;
        }

        FileRead circuit() {
            while (at < cells.size()) {
                boolean read = cells.get(at).equals(PANEL) ? panel() : parts.size() < Circuit.MOST_PARTS && part();
                if (!read) {
                    return FileRead.refused(DAMAGED);
                }
            }
            for (int i = 0; i < parts.size(); i++) {
                String trigger = idAt(triggers.get(i));
                if (trigger == null) {
                    return FileRead.refused(DAMAGED);
                }
                parts.set(i, parts.get(i).triggeredBy(trigger));
            }
            return new FileRead(new Circuit(cells.get(1), parts, panel), List.of());
        }

        private boolean part() {
            int kindAt = number(next());
            PartKind kind = kindAt >= 0 && kindAt < PartKind.values().length ? PartKind.values()[kindAt] : null;
            String id = next();
            String name = next();
            String fedBy = idAt(next());
            String trigger = next();
            if (kind == null || id == null || name == null || fedBy == null || trigger == null) {
                return false;
            }
            int fields = kind.fields().size();
            List<String> typed = texts(fields + 1);
            if (typed == null) {
                return false;
            }
            PartRead read = Part.read(id, kind, name, fedBy, "", typed.get(fields), typed.subList(0, fields));
            parts.add(read.partOrRefuse());
            triggers.add(trigger);
            return true;
        }

        private boolean panel() {
            at++;
            List<String> typed = texts(DrilledPanel.FIELDS.size());
            panel = typed == null ? panel : new DrilledPanel(typed);
            return typed != null;
        }

        /** Pairs of field and text up to an empty cell, or null if they are damaged. */
        private List<String> texts(int count) {
            List<String> typed = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                typed.add("");
            }
            String field = next();
            while (field != null && !field.isEmpty()) {
                int fieldAt = number(field);
                String text = next();
                if (fieldAt < 0 || fieldAt >= count || text == null) {
                    return null;
                }
                typed.set(fieldAt, text);
                field = next();
            }
            return field == null ? null : typed;
        }

        private String next() {
            return at < cells.size() ? cells.get(at++) : null;
        }

        /** The id at a place, an empty text for an empty place, null for one that is not there. */
        private String idAt(String place) {
            if (place == null || place.isEmpty()) {
                return place;
            }
            int number = number(place);
            return number >= 0 && number < parts.size() ? parts.get(number).id() : null;
        }

        private static int number(String text) {
            if (text == null || text.isEmpty() || text.length() > 3) {
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
}
