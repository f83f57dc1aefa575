package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.worked.PrintedRow;
import loomwright.worked.Trial;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaugeConvertPublishedTest {
    /**
     * The gauge rule against every printed area of the wire table. The print has four figures, squared from diameters that were themselves
     * rounded (22 AWG prints 642.5 where the rule gives 642.45), so one unit of the fourth figure is allowed.
     */
    @TestFactory
    List<DynamicTest> theGaugeRuleGivesThePrintedCircularMils() {
        List<PrintedRow> rows = PrintedRow.read("nbs-handbook-100", "area");
        assertEquals(28, rows.size());
        return rows.stream()
                .map(row -> DynamicTest.dynamicTest(row.name(), () -> {
                    double unit = Math.pow(10, Math.floor(Math.log10(row.printed())) - 3);
                    assertEquals(row.printed(), Trial.of("gauge-convert", "size=" + row.size()).value("area-circular-mils"), unit);
                }))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            NEETS module 4, p. 1-25: one strand of 4 mil (0.1016 mm)          | 0.1016 mm           | awg | area-circular-mils | 16 circular mil   | 0.5
            NEETS module 4, answers: 19 strands of 4 mil, in all              | 304 circular mil    | awg | area               | 0.15404 mm2       | 0.00001
            Trade note on a bilge pump: area of 12 AWG, to whole hundreds     | 12 AWG              | awg | area-circular-mils | 6500 circular mil | 50
            Trade note on a bilge pump: area of 12 SAE                        | 12 AWG              | sae | area-circular-mils | 5833 circular mil | 0.5
            Cable seller's table: 12 AWG in mm²                               | 12 AWG              | awg | area               | 3.31 mm2          | 0.005
            Cable seller's table: common metric size beside 12 AWG            | 12 AWG              | awg | next-larger-metric | 4 mm2             | 0.000001
            33 CFR 183.425(e), note: 16 AWG is 1.31 mm²                       | 16 AWG              | awg | area               | 1.31 mm2          | 0.005
            ASTM B258: diameter of 36 AWG                                     | 36 AWG              | awg | diameter           | 0.0050 in         | 0.00005
            ASTM B258: diameter of 4/0                                        | 4/0 AWG             | awg | diameter           | 0.4600 in         | 0.00005
            Boat-cable tables: 10 SAE                                         | 10 AWG              | sae | area               | 4.73 mm2          | 0.005
            Boat-cable tables: 4/0 SAE                                        | 4/0 AWG             | sae | area-circular-mils | 205500 circular mil | 0.5
            """)
    void agreesWithPrint(String print, String size, String namedBy, String asked, String printed, String tolerance) {
        Trial trial = Trial.of("gauge-convert", "size=" + size, "named-by=" + namedBy);
        double off = trial.away(asked, printed);
        assertTrue(off <= Double.parseDouble(tolerance), () -> print + " is off by " + off);
    }
}
