package loomwright.circuit.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitRefusal;
import loomwright.circuit.DrilledPanel;
import loomwright.circuit.FormerKeys;
import loomwright.circuit.Part;
import loomwright.circuit.PartFault;
import loomwright.circuit.PartKind;
import loomwright.circuit.PartRead;
import loomwright.worked.Field;

/** Turns JSON into a circuit; every fault is collected, each with its place. */
final class CircuitReader {
    private static final List<String> OF_THE_FILE = List.of("format", "version", "name", "parts", "drilled-panel");
    private static final List<String> OF_A_PART = List.of("id", "kind", "name", "fed-by", "triggered-from", "reading");

    private static final int MOST_FAULTS = 20;

    private final List<FileFault> faults = new ArrayList<>();
    private final Map<String, Json> places = new HashMap<>();

    List<FileFault> faults() {
        return faults;
    }

    /** The circuit, or null if there are faults. */
    Circuit circuit(Json json) {
        if (!(json instanceof Json.Members file)) {
            fault("", json, "A circuit file is an object in braces, this is " + json.words());
            return null;
        }
        if (!isOurs(file)) {
            return null;
        }
        nameUnknown("", file, OF_THE_FILE, List.of());
        String name = text("", file, "name", "");
        List<Part> parts = parts(file);
        DrilledPanel panel = panel(file);
        if (!faults.isEmpty()) {
            return null;
        }
        try {
            return new Circuit(name, parts, panel);
        } catch (CircuitRefusal refusal) {
            String id = refusal.fault().partId();
            fault(id.isEmpty() ? "" : "part \u201c" + id + "\u201d", places.containsKey(id) ? places.get(id) : file, refusal.getMessage());
            return null;
        }
    }

    private boolean isOurs(Json.Members file) {
        Json format = file.get("format");
        if (!(format instanceof Json.Text text) || !text.text().equals(CircuitFile.FORMAT)) {
            fault("format", format == null ? file : format,
                    "This is no circuit file: \u201cformat\u201d should say \u201c" + CircuitFile.FORMAT + "\u201d");
            return false;
        }
        Json version = file.get("version");
        String number = version instanceof Json.Digits digits ? digits.text() : "";
        if (number.equals("1")) {
            return true;
        }
        boolean newer = !number.isEmpty() && isWhole(number) && !number.equals("0");
        fault("version", version == null ? file : version, newer
                ? "The file is of version " + number + ", made by a newer copy of this site; this one reads version 1. Open it there"
                : "\u201cversion\u201d should be 1");
        return false;
    }

    private static boolean isWhole(String number) {
        for (int i = 0; i < number.length(); i++) {
            if (number.charAt(i) < '0' || number.charAt(i) > '9') {
                return false;
            }
        }
        return true;
    }

    private List<Part> parts(Json.Members file) {
        List<Part> parts = new ArrayList<>();
        Json json = file.get("parts");
        if (!(json instanceof Json.Items items)) {
            fault("parts", json == null ? file : json, "\u201cparts\u201d should be a list in square brackets");
            return parts;
        }
        if (items.all().size() > Circuit.MOST_PARTS) {
            fault("parts", items, "There are " + items.all().size() + " parts; a circuit may have " + Circuit.MOST_PARTS);
            return parts;
        }
        for (int i = 0; i < items.all().size(); i++) {
            String path = "parts[" + i + "]";
            if (items.all().get(i) instanceof Json.Members members) {
                Part part = part(path, members);
                if (part != null) {
                    parts.add(part);
                }
            } else {
                fault(path, items.all().get(i), "A part is an object in braces, this is " + items.all().get(i).words());
            }
        }
        return parts;
    }

    private DrilledPanel panel(Json.Members file) {
        Json json = file.get("drilled-panel");
        if (json != null && !(json instanceof Json.Members)) {
            fault("drilled-panel", json, "A drilled panel is an object in braces, this is " + json.words());
        }
        if (!(json instanceof Json.Members members)) {
            return DrilledPanel.NONE;
        }
        nameUnknown("drilled-panel", members, List.of(), DrilledPanel.FIELDS);
        DrilledPanel panel = DrilledPanel.NONE;
        for (Field field : DrilledPanel.FIELDS) {
            try {
                panel = panel.with(field.key(), text("drilled-panel", members, field.key(), ""));
            } catch (CircuitRefusal refusal) {
                fault("drilled-panel." + field.key(), placeOf(members, field.key()), refusal.getMessage());
            }
        }
        return panel;
    }

    private Part part(String path, Json.Members members) {
        String key = text(path, members, "kind", "");
        PartKind kind = PartKind.of(key);
        if (kind == null) {
            fault(path + ".kind", placeOf(members, "kind"), "There is no kind of part \u201c" + shortened(key) + "\u201d: choose one of " + kinds());
            return null;
        }
        String id = text(path, members, "id", "");
        PartRead read = Part.read(
                id, kind, text(path, members, "name", ""), text(path, members, "fed-by", ""), text(path, members, "triggered-from", ""),
                text(path, members, "reading", ""), typed(path, members, kind));
        places.put(id, members);
        for (PartFault fault : read.faults()) {
            fault(path + "." + fault.fieldKey(), placeOf(members, fault.fieldKey()), fault.message());
        }
        return read.part();
    }

    private Map<String, String> typed(String path, Json.Members members, PartKind kind) {
        Map<String, String> typed = new HashMap<>();
        for (Json.Member member : members.all()) {
            if (kind.indexOf(FormerKeys.now(kind, member.key())) >= 0) {
                typed.put(member.key(), text(path, member.key(), member.value(), ""));
            } else if (!OF_A_PART.contains(member.key())) {
                unknown(path, member);
            }
        }
        return typed;
    }

    private void nameUnknown(String path, Json.Members members, List<String> known, List<Field> fields) {
        for (Json.Member member : members.all()) {
            boolean isKnown = known.contains(member.key());
            for (Field field : fields) {
                isKnown |= field.key().equals(member.key());
            }
            if (!isKnown) {
                unknown(path, member);
            }
        }
    }

    private void unknown(String path, Json.Member member) {
        fault(path, member.line(), member.column(), "There is no field \u201c" + shortened(member.key()) + "\u201d here: take it out, or correct its name");
    }

    private String text(String path, Json.Members members, String key, String otherwise) {
        Json value = members.get(key);
        return value == null ? otherwise : text(path, key, value, otherwise);
    }

    private String text(String path, String key, Json value, String otherwise) {
        if (value instanceof Json.Text text) {
            return text.text();
        }
        fault(path.isEmpty() ? key : path + "." + key, value, "A text in double quotes belongs here, this is " + value.words());
        return otherwise;
    }

    private static Json placeOf(Json.Members members, String key) {
        Json value = members.get(key);
        return value == null ? members : value;
    }

    private static String kinds() {
        StringBuilder text = new StringBuilder();
        for (PartKind kind : PartKind.values()) {
            text.append(text.length() == 0 ? "" : ", ").append(kind.key());
        }
        return text.toString();
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "\u2026";
    }

    private void fault(String path, Json place, String message) {
        fault(path, place.line(), place.column(), message);
    }

    /** Who mends twenty faults has mended the cause of the rest, or has another file in hand. */
    private void fault(String path, int line, int column, String message) {
        if (faults.size() < MOST_FAULTS) {
            faults.add(new FileFault(path, line, column, message));
        } else if (faults.size() == MOST_FAULTS) {
            faults.add(new FileFault("", 0, 0, "There are more; correct these first"));
        }
    }
}
