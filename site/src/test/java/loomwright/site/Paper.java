package loomwright.site;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Sizes of paper, and what a print on it holds. */
enum Paper {
    A4(8.27, 11.69),
    LETTER(8.5, 11);

    private final double width;
    private final double height;

    /** Width and height in inches. */
    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    PDDocument print(Browser browser) throws IOException {
        Map<?, ?> answer = (Map<?, ?>) browser.command(
                "Page.printToPDF", Map.of("paperWidth", width, "paperHeight", height, "generateTaggedPDF", true, "preferCSSPageSize", false));
        return Loader.loadPDF(Base64.getDecoder().decode((String) answer.get("data")));
    }

    /** A text without spaces, and without the marks that a line break or a ligature may change. */
    static String squeezed(String text) {
        return text.replaceAll("[\\s\\u00a0\\u00ad\\u200b\\u2009\\u202f-]", "").replace("\ufb01", "fi").replace("\ufb02", "fl");
    }

    /** Reads the text and notes what lies beyond the edge of the paper. */
    static final class Edges extends PDFTextStripper {
        private final List<String> cut = new ArrayList<>();

        List<String> cut() {
            return cut;
        }

        @Override
        protected void writeString(String text, List<TextPosition> positions) throws IOException {
            TextPosition last = positions.get(positions.size() - 1);
            boolean beyond = last.getXDirAdj() + last.getWidthDirAdj() > last.getPageWidth() || positions.get(0).getXDirAdj() < 0;
            if (beyond && !text.isBlank()) {
                cut.add(text);
            }
            super.writeString(text, positions);
        }
    }
}
