package loomwright.generator.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import loomwright.generator.content.TableFile;
import loomwright.generator.problem.Places;
import loomwright.table.Column;
import loomwright.table.Row;
import loomwright.table.Table;
import loomwright.units.UnitSystem;

/** Writes the list of tables and a page for each. Of a table under copyright only the rows in use are shown. */
final class TablePages {
    private static final String LIST = "tables.html";

    /** The record of tables.mustache. */
    record ListPage(Frame frame, String title, String intro, List<Entry> tables) {}

    /** A table in the list. */
    record Entry(String title, String href, String source, String standing, String world) {}

    /** The record of table.mustache. */
    record Page(Frame frame, String title, boolean rowsOnly, String table, List<String> notes, Links usedIn) {}

    private final Site site;
    private final Frames frames;
    private final Templates templates;
    private final SearchData search;

    TablePages(Site site, Frames frames, Templates templates, SearchData search) {
        this.site = site;
        this.frames = frames;
        this.templates = templates;
        this.search = search;
    }

    void write(PageSink sink) {
        List<Entry> entries = new ArrayList<>();
        for (TableFile file : site.content().tables().values()) {
            Table table = file.table();
            List<Row> rows = table.shownWhole() ? table.rows() : rowsInUse(table);
            page(table, rows, sink);
            // A page that shows no row is there for the links to it; nobody is sent to it.
            if (!rows.isEmpty()) {
                String source = table.source().document().title();
                entries.add(new Entry(table.title(), Address.table(table.key()), source, table.source().standing().words(), world(table)));
                search.add(table.title(), Address.table(table.key()), "table", source, String.join(" ", table.notes()));
            }
        }
        // The sort is stable: tables of the site's own world first, the others in their order.
        entries.sort(Comparator.comparing(entry -> !site.content().units().key().equals(entry.world())));
        Intro intro = Intro.of(site, "tables", "Tables");
        ListPage list = new ListPage(frames.of(intro.title(), intro.summary(), LIST), intro.title(), intro.html(), entries);
        sink.page(LIST, templates.fill("tables", list), intro.places());
    }

    /** The world whose sizes and units a table is made of; null if it belongs to both. */
    private static String world(Table table) {
        boolean metric = false;
        boolean american = false;
        for (Column column : table.columns()) {
            if (column.unit() != null) {
                metric |= UnitSystem.AMERICAN.inPlaceOf(column.unit()) != column.unit();
                american |= UnitSystem.METRIC.inPlaceOf(column.unit()) != column.unit();
            }
        }
        return metric == american ? null : metric ? UnitSystem.METRIC.key() : UnitSystem.AMERICAN.key();
    }

    private void page(Table table, List<Row> rows, PageSink sink) {
        String address = Address.table(table.key());
        Place place = new Place(table.title(), address);
        TableMarkup tables = new TableMarkup(site, place);
        String markup = rows.isEmpty()
                ? "<p>The document is under copyright, and no lesson shows a row of it. The calculators read single rows and name them in their steps.</p>\n" + tables.source(table)
                : tables.write(table, "table", ShownColumn.whole(table, rows), rows, table.title());
        Page page = new Page(
                frames.of(table.title(), table.source().text(), address),
                table.title(),
                !table.shownWhole() && !rows.isEmpty(),
                markup,
                table.notes().stream().map(note -> TableNote.html(site, address, note)).toList(),
                Links.of(address, site.reliance().ofTable(table.key())));
        sink.page(address, templates.fill("table", page), new Places());
        site.reliance().onDocument(table.source().document().key(), place);
    }

    private List<Row> rowsInUse(Table table) {
        Set<String> used = site.reliance().rows(table.key());
        return table.rows().stream().filter(row -> used.contains(row.name())).toList();
    }
}
