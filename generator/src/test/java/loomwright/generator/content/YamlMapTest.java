package loomwright.generator.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import org.junit.jupiter.api.Test;

/** Places inside YAML, which messages depend on. */
class YamlMapTest {
    private static YamlMap read(String text, Problems problems) {
        SourceFile file = new SourceFile("a.md", text);
        return YamlReader.read("block", file.span(0, text.length()), problems);
    }

    @Test
    void keepsThePlaceOfEachValueAndKey() {
        Problems problems = new Problems();
        YamlMap map = read("a: one\nb:\n  - {c: \"4 Ω\", d: 2}\n", problems);
        assertEquals(4, map.required("a").at().column());
        YamlMap inner = map.maps("b").get(0);
        assertEquals(3, inner.keyAt("d").line());
        assertEquals(16, inner.keyAt("d").column());
        assertEquals("4 Ω", inner.text("c").text());
        assertEquals("0 mistakes\n", problems.text());
    }

    @Test
    void countsCharactersOutsideTheBasicPlaneAsTwo() {
        YamlMap map = read("a: {b: \uD83D\uDD0B, c: x}\n", new Problems());
        assertEquals(12, map.map("a").keyAt("c").column());
    }

    @Test
    void foldsTextsAsWritten() {
        YamlMap map = read("a: >-\n  one\n  two\nb: x\n", new Problems());
        assertEquals("one two", map.required("a").text());
    }

    @Test
    void refusesAListWhereATextIsWanted() {
        Problems problems = new Problems();
        assertNull(read("a: [1, 2]\n", problems).text("a"));
        assertEquals("a.md:1:4: \"a\" must be a text. Write a: and the text on one line.\n   a: [1, 2]\n      ^\n1 mistake\n", problems.text());
    }

    @Test
    void takesASingleTextAsAListOfOne() {
        YamlMap map = read("a: x\n", new Problems());
        assertEquals(List.of("x"), map.texts("a").stream().map(Scalar::text).toList());
    }

    @Test
    void refusesATextWhereKeysAreWanted() {
        Problems problems = new Problems();
        assertNull(read("a: x\n", problems).map("a"));
        assertEquals(1, problems.sorted().size());
    }
}
