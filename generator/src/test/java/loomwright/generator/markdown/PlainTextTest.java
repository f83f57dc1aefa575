package loomwright.generator.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainTextTest {
    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', textBlock = """
            <p>one <em>word</em>, two</p>\t| one word, two
            <h2 id="a">Out</h2><p>and back</p>\t| Out and back
            <p>3 &lt; 4 &amp; &quot;so&quot; it&#39;s</p>\t| 3 < 4 & "so" it's
            a <math><mi>U</mi></math> b <svg><title>x</title></svg> c\t| a b c
            <p>story</p><div class="given"><h4>Given</h4></div>rest</section><p>after</p>\t| story after
            <details class="figures"><td>1</td></details>x\t| x
            plain\t| plain
            """)
    void keepsTheWordsAndDropsTheRest(String html, String words) {
        assertEquals(words, PlainText.of(html));
    }
}
