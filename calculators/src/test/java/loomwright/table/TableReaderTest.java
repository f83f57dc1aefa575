package loomwright.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Standing;
import org.junit.jupiter.api.Test;

class TableReaderTest {
    private static final Document BOOK = new Document("book", "Issuer", "The Book", "1966", Standing.PUBLISHED, "seen", "");
    private static final Document OTHER = new Document("other", "", "Another", "", Standing.COMMON_PRACTICE, "", "");
    private static final String TEXT =
            """
            # title: A table
            # source: book
            # locus: page 3
            # shown: whole
            # note: mind the units
            size (mm²),resistance (mΩ/m),says,source,locus,standing
            1.5,12.7,"thin, soft",,,
            2.5,7.6,"the ""usual"" one",other,,
            4,,thick,,page 4,from-memory
            """;

    private static Table read(String text) {
        return TableReader.read("demo", text, List.of(BOOK, OTHER));
    }

    private static TableFault fault(String text) {
        return assertThrows(TableFault.class, () -> read(text));
    }

    @Test
    void readsHeadAndRows() {
        Table table = read(TEXT);
        assertEquals("A table", table.title());
        assertEquals("The Book, 1966, page 3", table.source().text());
        assertTrue(table.shownWhole());
        assertEquals(List.of("mind the units"), table.notes());
        assertEquals(3, table.rows().size());
        assertEquals("thin, soft", table.rows().get(0).text("says"));
        assertEquals("the \"usual\" one", table.rows().get(1).text("says"));
        assertSame(Units.MILLIOHM_PER_METRE, table.column("resistance").unit());
        assertNull(table.column("says").unit());
    }

    @Test
    void findsARowByItsFigureInAnyUnitAndNeverBetweenRows() {
        Table table = read(TEXT);
        assertEquals(8, table.find("size", Quantity.of(2.5, Units.SQUARE_MILLIMETRE)).line());
        assertNull(table.find("size", Quantity.of(2, Units.SQUARE_MILLIMETRE)));
        assertNull(table.find("resistance", Quantity.of(0, Units.MILLIOHM_PER_METRE)));
        assertNotNull(table.find("resistance", Quantity.of(12.7, Units.OHM_PER_KILOMETRE)));
        assertNull(table.find("says", "thin"));
        assertNotNull(table.find("says", "thick"));
    }

    @Test
    void aRowNamesItsOwnSource() {
        List<Row> rows = read(TEXT).rows();
        assertEquals("The Book, 1966, page 3, 1.5\u00a0mm²", rows.get(0).source().text());
        assertEquals("Another, 2.5\u00a0mm² (common practice)", rows.get(1).source().text());
        assertEquals("The Book, 1966, page 4, 4\u00a0mm² (from memory)", rows.get(2).source().text());
        assertEquals(Standing.FROM_MEMORY, rows.get(2).source().standing());
        assertFalse(rows.get(2).has("resistance"));
    }

    @Test
    void saysWhichLineIsWrong() {
        assertEquals(3, fault("# title: A\n# source: book\nsize (parsecs)\n1\n").line());
        assertEquals("no document has the key “lost”", fault("# title: A\n# source: lost\nsize\n1\n").getMessage());
        assertEquals("the table has no title", fault("# source: book\nsize\n1\n").getMessage());
        assertEquals("the table has no source", fault("# title: A\nsize\n1\n").getMessage());
        assertEquals("no remark is called “tilte”", fault("# tilte: A\n").getMessage());
        assertEquals("the table has no line of column names", fault("# title: A\n# source: book\n").getMessage());
        assertEquals("the row has 1 cells but there are 2 columns", fault("# title: A\n# source: book\na,b\n1\n").getMessage());
        assertEquals("a double quote is opened and not closed", fault("# title: A\n# source: book\na\n\"1\n").getMessage());
        assertEquals("no standing is called “sure”", fault("# title: A\n# standing: sure\n").getMessage());
        assertEquals(
                "no document has the key “gone”", fault("# title: A\n# source: book\na,source\n1,gone\n").getMessage());
    }

    @Test
    void saysWhichCellHoldsNoFigure() {
        Row row = read(TEXT).rows().get(2);
        TableFault fault = assertThrows(TableFault.class, () -> row.quantity("resistance"));
        assertEquals("column resistance has no number: “”", fault.getMessage());
        assertEquals(9, fault.line());
        assertEquals("Write one number.", fault.remedy());
    }

    @Test
    void readsTheListOfDocuments() {
        List<Document> documents = DocumentReader.read(
                "key,issuer,document,edition,standing,seen,note\nbook,Issuer,\"The Book, volume 1\",1966,published,reprint,\n");
        assertEquals("The Book, volume 1", documents.get(0).title());
        TableFault fault = assertThrows(TableFault.class, () -> DocumentReader.read("book,Issuer,The Book,1966,sure,reprint,\n"));
        assertEquals("no standing is called “sure”", fault.getMessage());
        assertEquals(
                "a document needs 7 cells but has 2",
                assertThrows(TableFault.class, () -> DocumentReader.read("book,Issuer\n")).getMessage());
    }
}
