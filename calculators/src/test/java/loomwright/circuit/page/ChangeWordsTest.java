package loomwright.circuit.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.check.Examination;
import loomwright.circuit.file.StartingCircuits;
import org.junit.jupiter.api.Test;

/** What a change brought, in words. */
class ChangeWordsTest {
    private static final Circuit PUNT = StartingCircuits.punt();
    private static final Examination BEFORE = Examination.of(PUNT);

    /** Holder, lamp and conductor are for 15 A, 5 A and less: at the fuse-link of 20 A they are one thing to change, at the run another. */
    @Test
    void aNewStopIsNamedOnceWithItsPartAndTheCountFollows() {
        Examination after = Examination.of(changed(PUNT, "lamp-fuse", "rating", "20 A"));
        String words = ChangeWords.of(BEFORE, after);
        assertTrue(words.startsWith("New to change: Device against what it guards, F3 Fuse-link of the stern lamp"), words);
        assertEquals(words.indexOf("Device against what it guards"), words.lastIndexOf("Device against what it guards"), words);
        assertTrue(words.endsWith("Now " + ChangeWords.counted(after)) && words.indexOf("to change, ") > 0, words);
        String back = ChangeWords.of(after, BEFORE);
        assertTrue(back.startsWith("Settled: Device against what it guards, F3") && !back.contains("New to"), back);
    }

    @Test
    void whatBringsNothingSaysSo() {
        Examination after = Examination.of(changed(PUNT, "lamp-run", "route-length", "3.7 m"));
        assertEquals("Nothing new: " + ChangeWords.counted(after), ChangeWords.of(BEFORE, after));
        assertEquals("No things to change, no things to decide.".toLowerCase(java.util.Locale.ROOT), ChangeWords.counted(BEFORE.with(java.util.List.of())));
    }

    @Test
    void aPartThatIsGoneSettlesNothingAndWhatCannotBeExaminedIsNotSpokenOf() {
        Examination bad = Examination.of(changed(PUNT, "lamp-fuse", "rating", "20 A"));
        String gone = ChangeWords.of(bad, Examination.of(CircuitEdits.withoutBranch(PUNT, "lamp-fuse")));
        assertTrue(!gone.contains("Settled") && gone.startsWith("Nothing new"), gone);
        assertEquals("", ChangeWords.of(null, BEFORE));
        assertEquals("", ChangeWords.of(BEFORE, Examination.of(CircuitEdits.without(PUNT, "main-fuse")).with(java.util.List.of())));
    }

    private static Circuit changed(Circuit circuit, String id, String key, String text) {
        return CircuitEdits.changed(circuit, id, key, text).circuit();
    }
}
