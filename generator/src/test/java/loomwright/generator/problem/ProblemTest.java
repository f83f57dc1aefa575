package loomwright.generator.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ProblemTest {
    private static final SourceFile FILE = new SourceFile("a.md", "first\n\tthe drop is {{dropVolt}} Ω over\n\nlast");

    @Test
    void showsTheLineAndPointsAtTheWord() {
        Problem problem = FILE.find("dropVolt", 0, 100).problem("no value named \"dropVolt\"", "Did you mean \"dropVolts\"?");
        assertEquals("""
                a.md:2:16: no value named "dropVolt". Did you mean "dropVolts"?
                    the drop is {{dropVolt}} Ω over
                                  ^""", problem.text());
    }

    @Test
    void cutsALongLineAroundTheWord() {
        SourceFile file = new SourceFile("a.md", "x".repeat(200) + "HERE" + "y".repeat(200));
        String text = file.find("HERE", 0, 404).problem("wrong", "Mend it.").text();
        String[] lines = text.split("\n");
        assertEquals("a.md:1:201: wrong. Mend it.", lines[0]);
        assertEquals('H', lines[1].charAt(lines[2].indexOf('^')));
        assertEquals(115, lines[1].length());
    }

    @Test
    void namesAFileAsAWhole() {
        assertEquals("a.md: the file is missing. Add it.", Problem.ofFile("a.md", "the file is missing", "Add it.").text());
    }

    @Test
    void findsLinesAndColumnsAtTheEnds() {
        assertEquals(1, FILE.lineAt(0));
        assertEquals(1, FILE.lineAt(5));
        assertEquals(2, FILE.lineAt(6));
        assertEquals(4, FILE.lineAt(FILE.text().length()));
        assertEquals("last", FILE.line(4));
        assertEquals("", FILE.line(3));
    }

    @Test
    void sortsAndCounts() {
        Problems problems = new Problems();
        problems.add(FILE.lineSpan(4).problem("b", "B."));
        problems.add(FILE.lineSpan(1).problem("a", "A."));
        problems.add(FILE.lineSpan(1).problem("a", "A."));
        assertEquals("a.md:1:1: a. A.\n   first\n   ^\na.md:4:1: b. B.\n   last\n   ^\n2 mistakes\n", problems.text());
    }
}
