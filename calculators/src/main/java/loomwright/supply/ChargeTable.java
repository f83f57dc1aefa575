package loomwright.supply;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.table.Table;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;
import loomwright.worked.Option;

/** The published tables of lead-acid voltage at rest. They disagree, so one is used as a whole. */
enum ChargeTable implements Choice {
    BCI("bci", "credited to BCI: 12.65 V full, 12.24 V half", "The table credited to BCI", PublishedTables.batteryOcvBci()),
    MAGAZINE("magazine", "of a magazine: 12.66 V full, 12.3 V half", "The table of a magazine", PublishedTables.batteryOcvMagazine());

    static final Choices<ChargeTable> CHOICES = Choices.among(values());

    private static final double SAME = 1e-6;

    private final String key;
    private final String label;
    private final String sentenceStart;
    private final Table table;

    ChargeTable(String key, String label, String sentenceStart, Table table) {
        this.key = key;
        this.label = label;
        this.sentenceStart = sentenceStart;
        this.table = table;
    }

    static ChoiceField field() {
        return CHOICES.field(
                "table", "Table", "Two published tables disagree by up to 0.1 V. The battery maker's own rules; stay with one table.");
    }

    static ChargeTable of(Option chosen) {
        return CHOICES.of(chosen);
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }

    String sentenceStart() {
        return sentenceStart;
    }

    Table table() {
        return table;
    }

    /** The row with the highest voltage not above {@code measured}, or null if it is below them all. */
    Row below(Quantity measured) {
        Row found = null;
        for (Row row : table.rows()) {
            boolean fits = voltage(row) <= measured.base() + SAME;
            if (fits && (found == null || voltage(row) > voltage(found))) {
                found = row;
            }
        }
        return found;
    }

    /** The row with the lowest voltage not below {@code measured}, or null if it is above them all. */
    Row above(Quantity measured) {
        Row found = null;
        for (Row row : table.rows()) {
            boolean fits = voltage(row) >= measured.base() - SAME;
            if (fits && (found == null || voltage(row) < voltage(found))) {
                found = row;
            }
        }
        return found;
    }

    /** The row of a full battery. */
    Row full() {
        return table.rows().get(0);
    }

    /** The last row of the table. */
    Row lowest() {
        List<Row> rows = table.rows();
        return rows.get(rows.size() - 1);
    }

    /** Where this table puts a voltage, in words. */
    String places(Quantity measured) {
        Row below = below(measured);
        Row above = above(measured);
        if (below == null) {
            return "below its last row, " + lowest().quantity("voltage").text();
        }
        if (above == null) {
            return "above its full row, " + full().quantity("voltage").text();
        }
        return below == above ? "at " + below.name() : "between " + below.name() + " and " + above.name();
    }

    private static double voltage(Row row) {
        return row.quantity("voltage").base();
    }
}
