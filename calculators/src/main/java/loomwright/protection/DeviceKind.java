package loomwright.protection;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.table.Table;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;

/**
 * The kinds of device that protect a conductor. Their keys are those of the tables on ratings, breaking capacity and opening times: what
 * print says of a kind is read there, and a kind that a table does not know has none.
 */
public enum DeviceKind implements Choice {
    BLADE("blade", "Blade fuse-link", "blade fuse-link", "blade"),
    MINIATURE_BLADE("miniature-blade", "Miniature (low-profile) blade fuse-link", "miniature blade fuse-link", "blade"),
    LARGE_BLADE("large-blade", "Large blade fuse-link", "large blade fuse-link", "large-blade"),
    SMALL_STRIP("small-strip", "Small bolt-in strip fuse-link", "small strip fuse-link", ""),
    LARGE_STRIP("large-strip", "Large bolt-in strip fuse-link", "large strip fuse-link", ""),
    CLASS_T("class-t", "Current-limiting class T fuse", "class T fuse", ""),
    BOLTED_WINDOW("bolted-window", "Flat bolted fuse with a window", "flat bolted fuse", ""),
    TERMINAL_CUBE("terminal-cube", "Cube fuse on a battery terminal", "cube fuse", ""),
    BREAKER("marine-breaker", "Breaker", "breaker", ""),
    CARTRIDGE("cartridge", "Small cartridge fuse listed to UL 248-14", "listed cartridge fuse", "");

    public static final Choices<DeviceKind> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final String words;
    private final String series;

    DeviceKind(String key, String label, String words, String series) {
        this.key = key;
        this.label = label;
        this.words = words;
        this.series = series;
    }

    /** The field that asks for the kind of a device in a circuit. */
    public static ChoiceField field() {
        return CHOICES.field("device", "Kind of device", "It decides what current it can break and how soon it opens. A breaker can be reset.");
    }

    /** Those whose breaking capacity is in print. */
    static Choices<DeviceKind> withBreakingCapacity() {
        return listedIn(PublishedTables.fuseBreakingCapacity(), "device");
    }

    /** Those whose standard ratings are in print. */
    static Choices<DeviceKind> withRatings() {
        return listedIn(PublishedTables.bladeFuseRatings(), "fuse-type");
    }

    /** Those whose opening times are in print. */
    static Choices<DeviceKind> withTimes() {
        List<DeviceKind> timed = new ArrayList<>(listedIn(PublishedTables.fuseGates(), "fuse").all());
        timed.add(BREAKER);
        return Choices.among(timed.toArray(new DeviceKind[0]));
    }

    private static Choices<DeviceKind> listedIn(Table table, String column) {
        List<DeviceKind> listed = new ArrayList<>();
        for (DeviceKind kind : values()) {
            if (!rows(table, column, kind.key).isEmpty()) {
                listed.add(kind);
            }
        }
        return Choices.among(listed.toArray(new DeviceKind[0]));
    }

    private static List<Row> rows(Table table, String column, String key) {
        List<Row> rows = new ArrayList<>();
        for (Row row : table.rows()) {
            if (row.text(column).equals(key)) {
                rows.add(row);
            }
        }
        return rows;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }

    /** In the middle of a sentence. */
    public String words() {
        return words;
    }

    /** Whether it can be reset, and is loaded as a breaker. */
    public boolean isBreaker() {
        return this == BREAKER;
    }

    /** The rows of its standard ratings, smallest first; empty if none is in print. */
    public List<Row> ratings() {
        return series.isEmpty() ? List.of() : rows(PublishedTables.bladeFuseRatings(), "fuse-type", series);
    }

    /** The smallest standard rating of at least {@code least}, or null. */
    Quantity smallestFrom(Quantity least) {
        for (Row row : ratings()) {
            if (FuseLimits.reaches(row.quantity("rating"), least)) {
                return row.quantity("rating");
            }
        }
        return null;
    }

    /** The largest standard rating of at most {@code highest}, or null. */
    Quantity largestUpTo(Quantity highest) {
        Quantity largest = null;
        for (Row row : ratings()) {
            largest = FuseLimits.reaches(highest, row.quantity("rating")) ? row.quantity("rating") : largest;
        }
        return largest;
    }

    /** The printed row of its breaking capacity, or null. */
    public Row breakingRow() {
        return PublishedTables.fuseBreakingCapacity().find("device", key);
    }
}
