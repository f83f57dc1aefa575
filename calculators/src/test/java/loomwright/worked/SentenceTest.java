package loomwright.worked;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import org.junit.jupiter.api.Test;

class SentenceTest {
    private final List<String> made = new ArrayList<>();

    private Sentence counting(String words) {
        return Sentence.later(() -> {
            made.add(words);
            return words;
        });
    }

    @Test
    void isPutTogetherOnceAndOnlyWhenItIsRead() {
        Sentence sentence = counting("Take a thicker conductor.");
        assertTrue(made.isEmpty());
        assertEquals("Take a thicker conductor.", sentence.text());
        assertEquals("Take a thicker conductor.", sentence.toString());
        assertEquals(1, made.size());
    }

    @Test
    void whatPassesNeverAsksForItsRemedy() {
        Finding finding = Comparison.of("The drop", Quantity.of(0.2, Units.VOLT))
                .atMost(Quantity.of(0.36, Units.VOLT), "what you allow", Source.of(Document.COMPUTED, ""))
                .otherwise(Verdict.STOP, counting("Take a thicker conductor."))
                .finding();
        assertEquals(Verdict.PASSED, finding.verdict());
        assertEquals("", finding.remedy());
        assertTrue(made.isEmpty());
        assertEquals("The drop, 0.2\u00a0V, is within what you allow, 0.36\u00a0V.", finding.words());
    }
}
