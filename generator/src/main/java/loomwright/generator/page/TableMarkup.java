package loomwright.generator.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.TableFile;
import loomwright.generator.content.YamlMap;
import loomwright.generator.example.RowUse;
import loomwright.generator.markdown.Together;
import loomwright.generator.problem.Nearest;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.SourceMarkup;
import loomwright.source.Source;
import loomwright.source.Standing;
import loomwright.table.Column;
import loomwright.table.Row;
import loomwright.table.Table;

/** Writes published tables, whole or by single rows. */
final class TableMarkup {
    private static final int ROWS_ON_A_SCREEN = 8;

    private final Site site;
    private final Place page;

    TableMarkup(Site site, Place page) {
        this.site = site;
        this.page = page;
    }

    /** What a block asks to show of a table. */
    private record Asked(Table table, List<ShownColumn> columns, List<Row> rows, String caption) {}

    String block(YamlMap map) {
        Asked asked = read(map);
        return asked == null ? "" : write(asked.table(), "table-" + asked.table().key(), asked.columns(), asked.rows(), asked.caption());
    }

    /** The same table on screens, so many rows on each that a room can read them. */
    List<String> screens(YamlMap map) {
        Asked asked = read(map);
        List<String> screens = new ArrayList<>();
        int count = asked == null ? 0 : asked.rows().size();
        for (int from = 0; from < count; from += ROWS_ON_A_SCREEN) {
            int end = Math.min(count, from + ROWS_ON_A_SCREEN);
            String part = count > ROWS_ON_A_SCREEN ? ", rows " + (from + 1) + " to " + end + " of " + count : "";
            String id = "table-" + asked.table().key() + (from == 0 ? "" : "-" + from);
            screens.add(write(asked.table(), id, asked.columns(), asked.rows().subList(from, end), asked.caption() + part));
        }
        return screens;
    }

    /** What the block asks for, or null with a problem if there is no such table. */
    private Asked read(YamlMap map) {
        Scalar key = map.required("key");
        List<Scalar> columnNames = map.texts("columns");
        List<Scalar> rowNames = map.texts("rows");
        Scalar caption = map.text("caption");
        map.finish();
        TableFile file = key == null ? null : find(key);
        if (file == null) {
            return null;
        }
        Table table = file.table();
        if (rowNames.isEmpty() && !table.shownWhole()) {
            site.problems().add(key.problem(
                    "the table \"" + key.text() + "\" may not be shown whole", "Name the rows you need under \"rows\"."));
        }
        site.reliance().onTable(table.key(), page);
        List<Row> rows = rowNames.isEmpty() ? table.rows() : rows(table, rowNames);
        return new Asked(table, columns(table, columnNames, rows), rows, caption == null ? table.title() : caption.text());
    }

    private TableFile find(Scalar key) {
        TableFile file = site.content().tables().get(key.text());
        if (file == null) {
            site.problems().add(key.problem(
                    "no table is called \"" + key.text() + "\"", Nearest.remedy(key.text(), site.content().tables().keySet())));
        }
        return file;
    }

    private List<ShownColumn> columns(Table table, List<Scalar> names, List<Row> rows) {
        List<Column> columns = new ArrayList<>();
        for (Scalar name : names) {
            Column column = table.column(name.text());
            if (column == null) {
                site.problems().add(name.problem(
                        "the table \"" + table.key() + "\" has no column \"" + name.text() + "\"",
                        Nearest.remedy(name.text(), table.columns().stream().map(Column::key).toList())));
            } else {
                columns.add(column);
            }
        }
        return names.isEmpty() ? ShownColumn.whole(table, rows) : columns.stream().map(ShownColumn::of).toList();
    }

    private List<Row> rows(Table table, List<Scalar> names) {
        List<Row> rows = new ArrayList<>();
        String first = table.columns().get(0).key();
        for (Scalar name : names) {
            Row row = table.find(first, name.text());
            if (row == null) {
                site.problems().add(name.problem(
                        "the table \"" + table.key() + "\" has no row \"" + name.text() + "\"",
                        Nearest.remedy(name.text(), table.rows().stream().map(each -> each.text(first)).toList())));
            } else {
                rows.add(row);
                site.reliance().onRow(new RowUse(table.key(), row.name()), page);
            }
        }
        return rows;
    }

    /** The figure with its caption, scroll box and source line. */
    String write(Table table, String id, List<ShownColumn> columns, List<Row> rows, String caption) {
        StringBuilder out = new StringBuilder("<figure class=\"table\" id=\"" + id + "\">\n<figcaption id=\"" + id + "-caption\">");
        out.append(Html.escape(Together.kept(caption))).append("</figcaption>\n<div class=\"scroll\" role=\"region\" tabindex=\"0\" aria-labelledby=\"");
        out.append(id).append("-caption\">\n<table aria-labelledby=\"").append(id).append("-caption\">\n<thead><tr>");
        for (ShownColumn column : columns) {
            out.append(column.number() ? "<th scope=\"col\" class=\"number\">" : "<th scope=\"col\">");
            out.append(Html.escape(column.heading())).append("</th>");
        }
        out.append("</tr></thead>\n<tbody>\n");
        for (Row row : rows) {
            row(out, table, columns, row);
        }
        return out.append("</tbody>\n</table>\n</div>\n").append(sources(table, columns, rows)).append("</figure>\n").toString();
    }

    /** The source of the table, and those of rows that come from elsewhere: each document once, with the places in it. */
    private String sources(Table table, List<ShownColumn> columns, List<Row> rows) {
        Function<Row, String> name = ShownColumn.names(columns, rows);
        Map<Source, Map<String, Set<String>>> own = new LinkedHashMap<>();
        boolean anyOfTheTable = rows.isEmpty();
        for (Row row : rows) {
            boolean elsewhere = row.has("source") || row.has("locus");
            anyOfTheTable |= !elsewhere;
            if (elsewhere) {
                Source source = row.source();
                own.computeIfAbsent(new Source(source.document(), "", source.standing()), document -> new LinkedHashMap<>())
                        .computeIfAbsent(source.locus(), locus -> new LinkedHashSet<>())
                        .add(name.apply(row));
            }
        }
        StringBuilder out = new StringBuilder(anyOfTheTable ? source(table) : "");
        boolean one = own.size() == 1 && !anyOfTheTable;
        own.forEach((document, places) -> out.append("<p class=\"source\">").append(one && places.size() == 1 ? "" : Html.escape(names(places)) + ": ")
                .append(SourceMarkup.inLine(new Links(Address.root(page.address())), source(document, places))).append("</p>\n"));
        return out.toString();
    }

    /** The rows of one document; where it is more than one place of it, each with its place. */
    private static String names(Map<String, Set<String>> places) {
        List<String> names = new ArrayList<>();
        places.forEach((locus, rows) ->
                names.add(String.join("; ", rows) + (places.size() == 1 || locus.isEmpty() ? "" : " (" + locus + ")")));
        return String.join("; ", names);
    }

    private static Source source(Source document, Map<String, Set<String>> places) {
        String only = places.size() == 1 ? places.keySet().iterator().next() : "";
        return new Source(document.document(), only, document.standing());
    }

    /** The line that says where the table comes from. */
    String source(Table table) {
        return SourceMarkup.paragraph(new Links(Address.root(page.address())), table.source()) + "\n";
    }

    private static void row(StringBuilder out, Table table, List<ShownColumn> columns, Row row) {
        out.append("<tr>");
        for (int i = 0; i < columns.size(); i++) {
            ShownColumn column = columns.get(i);
            String number = column.number() ? " class=\"number\">" : ">";
            out.append(i == 0 ? "<th scope=\"row\"" : "<td").append(number).append(Html.escape(Together.kept(column.text().apply(row))));
            Standing own = i == 0 ? Standing.named(row.text("standing")) : null;
            if (own != null && own != table.source().standing()) {
                out.append(" <span class=\"standing\">").append(own.words()).append("</span>");
            }
            out.append(i == 0 ? "</th>" : "</td>");
        }
        out.append("</tr>\n");
    }
}
