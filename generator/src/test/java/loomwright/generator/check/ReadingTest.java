package loomwright.generator.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingTest {
    /** As a dictionary divides them. */
    @ParameterizedTest
    @CsvSource({
        "fuse,1", "fuses,2", "wire,1", "wires,1", "cable,2", "cables,2", "battery,3", "switch,1", "switches,2", "used,1", "rated,2",
        "charged,1", "ampere,2", "voltage,2", "conductor,3", "resistance,3", "the,1", "be,1", "copper,2", "insulation,4", "A,1", "12,1",
    })
    void countsSyllables(String word, int syllables) {
        assertEquals(syllables, Syllables.of(word));
    }

    /** Two sentences of six and three words with ten syllables in all: 206.835 − 1.015 × 9 ÷ 2 − 84.6 × 10 ÷ 9 = 108.27. */
    @Test
    void putsTheCountsIntoTheFormulaOfFlesch() {
        Reading reading = Reading.ofPieces(List.of("Take the fuse out before work.", "It stays out"));
        assertEquals(9, reading.words());
        assertEquals(108.27, reading.ease(), 0.01);
    }

    @Test
    void countsWhatTheAuthorWroteAndNothingElse() {
        Reading reading = Reading.of("""
                <main><h1>Two words</h1><nav>not these</nav><p>Three more words.</p>
                <section class="example"><div class="story"><p>And four in it.</p></div><div class="outcome">computed words</div></section>
                <figure><svg><text>drawn</text></svg><figcaption>Two more.</figcaption></figure></main>""");
        assertEquals(11, reading.words());
    }
}
