package loomwright.protection;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.ChoiceField;
import loomwright.worked.Option;

/** The kinds of fuse-link whose standard ratings are listed. */
public enum FuseType {
    BLADE("blade", "Blade, 1 A to 40 A"),
    LARGE_BLADE("large-blade", "Large blade, 20 A to 80 A");

    private final Option option;

    FuseType(String key, String label) {
        this.option = new Option(key, label);
    }

    static ChoiceField field() {
        Option[] options = new Option[values().length];
        for (FuseType type : values()) {
            options[type.ordinal()] = type.option;
        }
        return ChoiceField.of("fuse-type", "Kind of fuse-link", "What the fuse-holder takes.", options);
    }

    static FuseType of(Option chosen) {
        for (FuseType type : values()) {
            if (type.option.equals(chosen)) {
                return type;
            }
        }
        throw new IllegalArgumentException("no fuse type " + chosen.key());
    }

    /** In the middle of a sentence. */
    String words() {
        return this == BLADE ? "blade fuse-link" : "large blade fuse-link";
    }

    /** Its standard ratings, smallest first. */
    public List<Row> ratings() {
        List<Row> rows = new ArrayList<>();
        for (Row row : PublishedTables.bladeFuseRatings().rows()) {
            if (row.text("fuse-type").equals(option.key())) {
                rows.add(row);
            }
        }
        return rows;
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

    /** How much current it can break. */
    Row breakingCapacity() {
        return PublishedTables.fuseBreakingCapacity().find("device", option.key());
    }
}
