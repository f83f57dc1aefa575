package loomwright.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Each cell of the conductor tables against a list typed from the publication, named by document, row and column. */
class PublishedRowsTest {
    private static final Path LISTS = Path.of("src/test/resources/published");

    @TestFactory
    List<DynamicNode> matchesThePublication() throws IOException {
        List<DynamicNode> documents = new ArrayList<>();
        try (Stream<Path> files = Files.list(LISTS)) {
            for (Path file : files.sorted().toList()) {
                documents.add(document(Files.readAllLines(file)));
            }
        }
        return documents;
    }

    /** Tables printed per 1000 feet carry a metric column for the reader: the printed figure over 0.3048, to four figures. */
    @TestFactory
    List<DynamicTest> metricColumnsAgreeWithThePrintedOnes() {
        return List.of("awg-copper-20c", "nec-ch9-table-8", "faa-table-11-9").stream()
                .map(key -> DynamicTest.dynamicTest(key, () -> {
                    for (Row row : Tables.named(key).rows()) {
                        double printed = row.quantity("resistance-per-1000-ft").value() / 0.3048;
                        assertEquals(printed, row.quantity("resistance").value(), 0.0005 * printed, row.name());
                    }
                }))
                .toList();
    }

    private static DynamicNode document(List<String> lines) {
        String name = remark(lines, "# document: ");
        Table table = Tables.named(remark(lines, "# table: "));
        List<DynamicTest> tests = new ArrayList<>();
        for (String line : lines) {
            if (!line.startsWith("#") && !line.startsWith("size,")) {
                List<String> cells = Csv.cells(line, 1, new AuthorsWording());
                tests.add(DynamicTest.dynamicTest(cells.get(0) + ", " + cells.get(1), () -> check(table, cells)));
            }
        }
        return DynamicContainer.dynamicContainer(name, tests);
    }

    private static void check(Table table, List<String> cells) {
        Row row = table.find("size", QuantityText.read(cells.get(0), null).quantity());
        assertNotNull(row, "no row " + cells.get(0));
        Quantity expected = QuantityText.read(cells.get(3) + " " + cells.get(2), null).quantity();
        double found = row.quantity(cells.get(1)).in(expected.unit()).value();
        double tolerance = QuantityText.read(cells.get(4) + " V", null).quantity().value();
        assertEquals(expected.value(), found, tolerance + 1e-12);
    }

    private static String remark(List<String> lines, String opening) {
        return lines.stream().filter(line -> line.startsWith(opening)).findFirst().orElseThrow().substring(opening.length());
    }
}
