package loomwright.circuit.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import loomwright.circuit.CircuitEdits;
import loomwright.circuit.WorkedCircuits;
import loomwright.circuit.check.Examination;
import loomwright.circuit.file.StartingCircuits;
import org.junit.jupiter.api.Test;

class MainFiguresTest {
    @Test
    void areThoseOfTheWorkedTrailer() {
        String[] figures = MainFigures.of(Examination.of(WorkedCircuits.trailer()));
        assertEquals(MainFigures.LABELS.size(), figures.length);
        assertEquals("29", figures[0]);
        // By hand in TrailerHandCheckTest: the laptop's outlet has 9.842 V left of 10.5 V.
        assertEquals("9.842 V", figures[5].replace('\u00a0', ' '));
        assertEquals("0.658 V", figures[6].replace('\u00a0', ' '));
    }

    @Test
    void showWhatAThickerRunChanges() {
        String[] before = MainFigures.of(Examination.of(WorkedCircuits.trailer()));
        String[] after = MainFigures.of(Examination.of(CircuitEdits.changed(WorkedCircuits.trailer(), "bench-run", "size", "10 mm2").circuit()));
        assertNotEquals(before[6], after[6]);
        assertEquals(before[8], after[8], "as long as before");
    }

    @Test
    void areDashesWhereNothingCanBeWorkedOut() {
        assertEquals("\u2013", MainFigures.of(null)[1]);
        String[] battery = MainFigures.of(Examination.of(StartingCircuits.empty()));
        assertEquals("1", battery[0]);
        assertEquals("\u2013", battery[5], "without a load there is no voltage at one");
    }
}
