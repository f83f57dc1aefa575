package loomwright.handout;

import java.util.ArrayList;
import java.util.List;
import loomwright.markup.Html;
import loomwright.markup.Words;
import loomwright.quantity.Dimension;
import loomwright.source.Document;
import loomwright.table.Column;
import loomwright.table.Row;
import loomwright.table.Table;
import loomwright.worked.ChoiceStep;
import loomwright.worked.Step;
import loomwright.worked.TableStep;

/**
 * What has to be looked up for these sheets: tables and series of sizes, so that paper and pencil do. Of a table that is under copyright only the rows
 * stand here that somebody of the room needs.
 */
final class TablesMarkup {
    private static final List<String> REMARKS = List.of("source", "locus", "standing", "note");
    private static final int MOST_ROWS = 24;
    private static final int MOST_COLUMNS = 7;
    private static final double HEAD = 26;
    private static final double RUNNING = 8;
    private static final double TITLE = 16;
    private static final double COLUMN_HEAD = 9;
    private static final double ROW = 5;
    private static final double LINE = 4.5;

    private final List<Table> tables = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private final List<Dimension> read = new ArrayList<>();
    private final List<List<String>> series = new ArrayList<>();
    private final List<String> seriesNames = new ArrayList<>();

    private TablesMarkup(List<Sheet> sheets) {
        for (Sheet sheet : sheets) {
            for (Task task : sheet.tasks()) {
                if (task.working() != null) {
                    task.working().steps().forEach(this::note);
                }
            }
        }
    }

    /** The pages; none if nothing has to be looked up. */
    static List<String> pages(List<Sheet> sheets, String house, Paper paper) {
        TablesMarkup markup = new TablesMarkup(sheets);
        List<Block> blocks = new ArrayList<>();
        for (Table table : markup.tables) {
            blocks.add(markup.table(table));
        }
        markup.sizes(blocks);
        if (blocks.isEmpty()) {
            return List.of();
        }
        List<String> bodies = Block.pages(blocks, paper.room() - HEAD, paper.room() - RUNNING);
        List<String> pages = new ArrayList<>();
        for (int i = 0; i < bodies.size(); i++) {
            String of = bodies.size() == 1 ? "" : ", page " + (i + 1) + " of " + bodies.size();
            Html html = new Html().tag("<section class=\"handout lookup\"").attribute("aria-label", "Tables for these sheets" + of).tag("><p class=\"house\">");
            html.text(house + of).tag("</p>").tag(i > 0 ? "" : "<h2>Tables for these sheets</h2><p class=\"facts\">What has to be looked up to answer them. "
                    + "Where a table may not be copied whole, only the rows stand here that somebody in the room needs.</p>");
            pages.add(html.tag(bodies.get(i)).tag("</section>\n").toString());
        }
        return pages;
    }

    private void note(Step step) {
        if (step instanceof TableStep look) {
            if (!tables.contains(look.row().table())) {
                tables.add(look.row().table());
            }
            if (!rows.contains(look.row())) {
                rows.add(look.row());
            }
            if (!read.contains(look.result().dimension())) {
                read.add(look.result().dimension());
            }
        } else if (step instanceof ChoiceStep choice && !choice.candidates().isEmpty()) {
            note(choice);
        }
    }

    /**
     * A choice looks at sizes from the smallest on and stops at the one that fits: the longest list of each kind is the most complete. A choice among
     * figures that a person has worked out begins with another one on each sheet; it is no series, and would give answers away.
     */
    private void note(ChoiceStep choice) {
        List<String> sizes = new ArrayList<>();
        choice.candidates().forEach(candidate -> sizes.add(candidate.name()));
        int at = seriesNames.indexOf(choice.words());
        if (at < 0) {
            seriesNames.add(choice.words());
            series.add(choice.source().document().equals(Document.COMPUTED) ? List.of() : sizes);
        } else if (!series.get(at).isEmpty() && !series.get(at).get(0).equals(sizes.get(0))) {
            series.set(at, List.of());
        } else if (!series.get(at).isEmpty() && sizes.size() > series.get(at).size()) {
            series.set(at, sizes);
        }
    }

    private Block table(Table table) {
        List<Column> columns = columns(table);
        List<Row> shown = shown(table);
        Html html = new Html().tag("<div class=\"asked\"><h3>").text(table.title()).tag("</h3><div class=\"scroll\" role=\"region\" tabindex=\"0\"").attribute("aria-label", table.title()).tag("><table><thead><tr>");
        for (Column column : columns) {
            String unit = column.unit() == null || column.unit().symbol().isEmpty() ? "" : ", " + column.unit().symbol();
            html.tag("<th scope=\"col\">").text(Words.capital(column.key().replace('-', ' ')) + unit).tag("</th>");
        }
        html.tag("</tr></thead><tbody>");
        for (Row row : shown) {
            html.tag("<tr>");
            for (Column column : columns) {
                html.tag("<td>").text(row.text(column.key())).tag("</td>");
            }
            html.tag("</tr>");
        }
        String source = table.source().document().title() + (table.source().locus().isEmpty() ? "" : ", " + table.source().locus());
        html.tag("</tbody></table></div><p class=\"facts\">").text(source).tag("</p></div>");
        return new Block(html.toString(), TITLE + COLUMN_HEAD + ROW * shown.size() + LINE * TextWidth.lines(source, TextWidth.KEY));
    }

    private List<Row> shown(Table table) {
        List<Row> shown = new ArrayList<>();
        for (Row row : table.rows()) {
            if (table.shownWhole() && table.rows().size() <= MOST_ROWS || rows.contains(row)) {
                shown.add(row);
            }
        }
        return shown;
    }

    /** The first column, and each that could hold what was read. */
    private List<Column> columns(Table table) {
        List<Column> columns = new ArrayList<>();
        for (Column column : table.columns()) {
            boolean told = column.unit() == null ? !REMARKS.contains(column.key()) : read.contains(column.unit().dimension());
            if (columns.isEmpty() || told && columns.size() < MOST_COLUMNS) {
                columns.add(column);
            }
        }
        return columns;
    }

    private void sizes(List<Block> blocks) {
        Html html = new Html();
        double height = TITLE;
        for (int i = 0; i < series.size(); i++) {
            String sizes = String.join(", ", series.get(i));
            if (!sizes.isEmpty()) {
                html.tag("<dt>").text(seriesNames.get(i)).tag("</dt><dd>").text(sizes).tag("</dd>");
                height += LINE * (1 + TextWidth.lines(sizes, TextWidth.KEY));
            }
        }
        if (height > TITLE) {
            blocks.add(new Block("<div class=\"asked\"><h3>Sizes to choose from</h3><dl>" + html + "</dl></div>", height));
        }
    }
}
