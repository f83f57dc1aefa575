package loomwright.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.source.Source;
import loomwright.worked.Entries;
import loomwright.worked.EntriesRead;
import loomwright.worked.EntryFault;
import loomwright.worked.Field;

/** One part of a circuit: what it is, what feeds it, and what was typed for it. Never changes. */
public final class Part {
    private final String id;
    private final PartKind kind;
    private final String name;
    private final String title;
    private final String fedBy;
    private final String triggeredFrom;
    private final String reading;
    private final List<String> texts;
    private final Entries entries;
    /** What it was understood as; kept, so that after an edit only the changed part is understood anew. */
    private Figures figures;

    private Part(String id, PartKind kind, String name, String fedBy, String triggeredFrom, String reading, List<String> texts, Entries entries) {
        this.id = id;
        this.kind = kind;
        this.name = name;
        this.title = name.isEmpty() ? kind.label() + " \u201c" + id + "\u201d" : name;
        this.fedBy = fedBy;
        this.triggeredFrom = triggeredFrom;
        this.reading = reading;
        this.texts = texts;
        this.entries = entries;
    }

    /**
     * A part, if every text can be used.
     *
     * @param id its name in the circuit: small letters, digits and hyphens
     * @param name what the reader calls it; may be empty
     * @param fedBy the part that feeds it; empty for the supply
     * @param triggeredFrom the part its trigger is taken from; empty if there is none
     * @param reading what a meter read behind it with the loads on, as it was typed; empty if nothing was read
     * @param typed what was typed, in the order of the fields of its kind; empty takes what is usual
     */
    public static PartRead read(
            String id, PartKind kind, String name, String fedBy, String triggeredFrom, String reading, List<String> typed) {
        List<PartFault> faults = new ArrayList<>();
        Names.checkId(id, faults);
        Names.checkName(id, name, faults);
        Names.checkReading(id, reading, faults);
        List<String> settled = new ArrayList<>();
        for (int i = 0; i < kind.fields().size(); i++) {
            settled.add(Typed.settled(kind.fields().get(i), typed.get(i)));
        }
        EntriesRead read = EntriesRead.of(kind.fields(), settled);
        for (EntryFault fault : read.faults()) {
            faults.add(new PartFault(id, fault.fieldKey(), fault.message()));
        }
        if (!faults.isEmpty()) {
            return new PartRead(null, List.copyOf(faults));
        }
        return new PartRead(new Part(id, kind, name, fedBy, triggeredFrom, reading, List.copyOf(settled), read.entries()), List.of());
    }

    /**
     * A part of texts by the keys of its fields, those of earlier versions too; what is not named is as usual. A key that is no field of the kind
     * is a fault.
     */
    public static PartRead read(
            String id, PartKind kind, String name, String fedBy, String triggeredFrom, String reading, Map<String, String> typed) {
        List<String> texts = new ArrayList<>();
        for (Field field : kind.fields()) {
            texts.add("");
        }
        List<PartFault> faults = new ArrayList<>();
        for (String key : typed.keySet()) {
            int at = kind.indexOf(FormerKeys.now(kind, key));
            if (at < 0) {
                faults.add(new PartFault(id, key, "There is no field \u201c" + key + "\u201d in " + kind.label() + ": it may come from a newer copy of this site"));
            } else {
                texts.set(at, typed.get(key));
            }
        }
        return faults.isEmpty() ? read(id, kind, name, fedBy, triggeredFrom, reading, texts) : new PartRead(null, List.copyOf(faults));
    }

    /** A part of which only what is named is not as usual; each of {@code typed} reads {@code field=text}. */
    static Part of(String id, PartKind kind, String name, String fedBy, String... typed) {
        List<String> texts = new ArrayList<>();
        for (Field field : kind.fields()) {
            texts.add(Typed.among(typed, field.key()));
        }
        return read(id, kind, name, fedBy, "", "", texts).partOrRefuse();
    }

    public String id() {
        return id;
    }

    public PartKind kind() {
        return kind;
    }

    /** What the reader calls it; may be empty. */
    public String name() {
        return name;
    }

    /** What to call it in a sentence: its name, or its kind and number. */
    public String title() {
        return title;
    }

    /** The part that feeds it; empty for the supply. */
    public String fedBy() {
        return fedBy;
    }

    /** The part its trigger is taken from; empty if there is none. */
    public String triggeredFrom() {
        return triggeredFrom;
    }

    /** What a meter read behind it with the loads on, as it was typed; empty if nothing was read. It need not be a voltage. */
    public String reading() {
        return reading;
    }

    /** What was typed for it, in the order of the fields of its kind, each quantity with its unit. */
    public List<String> texts() {
        return texts;
    }

    /** What was typed into one field; an empty text if nothing was, or there is no such field. */
    public String text(String fieldKey) {
        int at = kind.indexOf(fieldKey);
        return at < 0 ? "" : texts.get(at);
    }

    /** Whether a field holds what is usual: nobody said otherwise. */
    public boolean isAsUsual(String fieldKey) {
        int at = kind.indexOf(fieldKey);
        String usual = kind.fields().get(at).usual();
        return texts.get(at).equals(usual == null ? "" : usual);
    }

    /** Where the figures come from that were typed as those of its data sheet; what a check may make of them follows from that. */
    public Source figuresFrom() {
        return FiguresFrom.of(this).source();
    }

    /** What was typed, read and checked. */
    public Entries entries() {
        return entries;
    }

    /**
     * What it was understood as.
     *
     * @throws loomwright.worked.Refusal if its figures do not go together
     */
    Figures figures() {
        if (figures == null) {
            figures = kind.figures(this);
        }
        return figures;
    }

    /** The same part with another text in one field. */
    public PartRead with(String fieldKey, String text) {
        int at = kind.indexOf(fieldKey);
        if (at < 0) {
            throw new IllegalArgumentException(kind.label() + " has no field " + fieldKey);
        }
        List<String> changed = new ArrayList<>(texts);
        changed.set(at, text);
        return read(id, kind, name, fedBy, triggeredFrom, reading, changed);
    }

    /** The same part under another name. */
    public PartRead named(String newName) {
        return read(id, kind, newName, fedBy, triggeredFrom, reading, texts);
    }

    /** The same part with another reading; empty for none. */
    public PartRead withReading(String text) {
        return read(id, kind, name, fedBy, triggeredFrom, text, texts);
    }

    /** The same part fed from another. */
    public Part fedFrom(String otherId) {
        return elsewhere(otherId, triggeredFrom);
    }

    /** The same part with its trigger taken from another; empty for none. */
    public Part triggeredBy(String otherId) {
        return elsewhere(fedBy, otherId);
    }

    private Part elsewhere(String feeding, String trigger) {
        Part part = new Part(id, kind, name, feeding, trigger, reading, texts, entries);
        part.figures = figures;
        return part;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Part part && id.equals(part.id) && kind == part.kind && name.equals(part.name) && fedBy.equals(part.fedBy)
                && triggeredFrom.equals(part.triggeredFrom) && reading.equals(part.reading) && texts.equals(part.texts);
    }

    @Override
    public int hashCode() {
        return 31 * id.hashCode() + texts.hashCode();
    }

    @Override
    public String toString() {
        return kind.key() + " " + id + " " + texts;
    }
}
