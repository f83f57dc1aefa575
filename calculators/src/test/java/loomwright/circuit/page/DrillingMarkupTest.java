package loomwright.circuit.page;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.circuit.Circuit;
import loomwright.circuit.DrilledPanel;
import loomwright.circuit.file.StartingCircuits;
import loomwright.markup.Links;
import org.junit.jupiter.api.Test;

class DrillingMarkupTest {
    private static final Circuit TRAILER = StartingCircuits.reedmereTrailer();

    @Test
    void drawsTheWholeOfASmallPanel() {
        String sheet = sheet(TRAILER.panel());
        // 29 mm at two units a millimetre
        assertTrue(sheet.contains("r=\"29\""), sheet);
        assertTrue(sheet.contains("this is the lower edge"), sheet);
        assertFalse(sheet.contains("larger than the sheet"), sheet);
    }

    @Test
    void drawsThePieceRoundTheRowOfALargePanel() {
        String sheet = sheet(TRAILER.panel().with("panel-width", "400 mm").with("panel-height", "300 mm"));
        assertTrue(sheet.contains("larger than the sheet"), sheet);
        assertTrue(sheet.contains("<td class=\"number\">110\u00a0mm</td>") || sheet.contains("<td class=\"number\">110 mm</td>"), sheet);
    }

    @Test
    void saysWhenARowIsLongerThanPaper() {
        String sheet = sheet(TRAILER.panel().with("panel-width", "900 mm").with("count", "6"));
        assertTrue(sheet.contains("The row is longer than a sheet of paper"), sheet);
        assertFalse(sheet.contains("<svg"), sheet);
    }

    @Test
    void saysWhatIsMissing() {
        assertTrue(sheet(DrilledPanel.NONE).contains("nothing to drill"));
        assertTrue(sheet(DrilledPanel.NONE.with("panel-width", "1 mm")).contains("put right"));
        assertTrue(DrillingMarkup.form(DrilledPanel.NONE.with("panel-width", "\"><b>")).contains("&gt;&lt;b&gt;"));
    }

    private static String sheet(DrilledPanel panel) {
        return DrillingMarkup.sheet(new Links(""), TRAILER.in(panel));
    }
}
