package loomwright.generator.mistake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Mistakes in a drawing that is a file of the content. */
class DrawingErrorTest extends MistakeTest {
    private static final String DRAWING = """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 100">
              <title>A fuse-link in its wire</title>
              <desc>A wire from left to right. In the middle of it stands a fuse-link of 10 A.</desc>
              <path class="plus" d="M10 50H310"/>
              <text x="160" y="30" text-anchor="middle" class="small">fuse-link</text>
            </svg>
            """;
    private static final String FIGURE = """
            ```figure
            key: fuse
            drawing: fuse
            title: A fuse-link
            description: A wire with a fuse-link in it.
            ```
            """;

    private void drawing(String old, String changed) {
        site.write("drawings/fuse.svg", DRAWING.replace(old, changed));
    }

    @Test
    void acceptsTheDrawingWithoutAMistake() {
        drawing("", "");
        site.lesson(FIGURE);
        assertEquals("0 mistakes\n", site.problems());
    }

    @Test
    void rejectsAScript() {
        drawing("  <path", "  <script>alert(1)</script><path");
        rejects("""
                content/drawings/fuse.svg:4:3: a drawing holds no "script". Draw it with path, rect, circle, line and text; g keeps some of them together.
                     <script>alert(1)</script><path class="plus" d="M10 50H310"/>
                     ^
                1 mistake
                """);
    }

    @Test
    void rejectsWordsThatWouldNotBeSeen() {
        drawing("<path", "loose <path");
        rejects("""
                content/drawings/fuse.svg:1:1: words stand outside a text. Put them into a text, or into a comment.
                   <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 100">
                   ^
                1 mistake
                """);
    }

    @Test
    void rejectsAReferenceToSomethingOutside() {
        drawing("<path", "<image href=\"http://somewhere/a.png\"/><path");
        rejects("""
                content/drawings/fuse.svg:4:3: a drawing holds no "image". Draw it with path, rect, circle, line and text; g keeps some of them together.
                     <image href="http://somewhere/a.png"/><path class="plus" d="M10 50H310"/>
                     ^
                1 mistake
                """);
    }

    @Test
    void rejectsAnEventAndAColour() {
        drawing("class=\"plus\"", "class=\"plus\" onclick=\"go()\" stroke=\"red\"");
        rejects("""
                content/drawings/fuse.svg:4:3: in a drawing, "path" takes no "onclick". It takes class, d, stroke-dasharray. Colours and widths come from the classes of the style sheet.
                     <path class="plus" onclick="go()" stroke="red" d="M10 50H310"/>
                     ^
                content/drawings/fuse.svg:4:3: in a drawing, "path" takes no "stroke". It takes class, d, stroke-dasharray. Colours and widths come from the classes of the style sheet.
                     <path class="plus" onclick="go()" stroke="red" d="M10 50H310"/>
                     ^
                2 mistakes
                """);
    }

    @Test
    void rejectsAnUnknownClass() {
        drawing("class=\"plus\"", "class=\"pluss\"");
        rejects("""
                content/drawings/fuse.svg:4:3: no class of a drawing is called "pluss" on "path". Did you mean "plus"?
                     <path class="pluss" d="M10 50H310"/>
                     ^
                1 mistake
                """);
    }

    @Test
    void rejectsAMissingTitleAndDescription() {
        drawing("  <title>A fuse-link in its wire</title>\n", "");
        rejects("""
                content/drawings/fuse.svg:1:1: the drawing has no "title". Add <title>...</title>. Say in a few words what is drawn.
                   <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 100">
                   ^
                1 mistake
                """);
        drawing("A wire from left to right. In the middle of it stands a fuse-link of 10 A.", "A wire.");
        rejects("""
                content/drawings/fuse.svg:3:3: the "desc" says too little. Describe what it shows for a reader who cannot see it.
                     <desc>A wire.</desc>
                     ^
                1 mistake
                """);
    }

    @Test
    void rejectsWhatIsNotWellFormed() {
        drawing("class=\"plus\"", "class=plus");
        rejects("""
                content/drawings/fuse.svg:4:1: the drawing cannot be read from here on. Close every element, and put every attribute in double quotes.
                     <path class=plus d="M10 50H310"/>
                   ^
                1 mistake
                """);
    }

    @Test
    void rejectsAnEntityOfItsOwn() {
        drawing("<svg", "<!DOCTYPE svg [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><svg");
        site.write("drawings/fuse.svg", site.read("drawings/fuse.svg").replace("fuse-link</text>", "&a;</text>"));
        rejects("""
                content/drawings/fuse.svg:5:1: the drawing cannot be read from here on. Close every element, and put every attribute in double quotes.
                     <text x="160" y="30" text-anchor="middle" class="small">&a;</text>
                   ^
                1 mistake
                """);
    }

    @Test
    void rejectsAShapeOutsideTheCanvas() {
        drawing("M10 50H310", "M10 50h311");
        rejects("""
                content/drawings/fuse.svg:4:3: the "path" reaches outside the drawing. Move it inwards, or widen the viewBox.
                     <path class="plus" d="M10 50h311"/>
                     ^
                1 mistake
                """);
    }

    @Test
    void rejectsACanvasThatDoesNotFitAPhone() {
        drawing("0 0 320 100", "0 0 900 100");
        rejects("""
                content/drawings/fuse.svg:1:1: the canvas is wider than a phone. Draw it 320 wide, and no wider than 360.
                   <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 900 100">
                   ^
                1 mistake
                """);
    }

    @Test
    void rejectsWordsOverOtherWords() {
        drawing("</svg>", "<text x=\"150\" y=\"36\">10 A</text></svg>");
        site.lesson(FIGURE);
        rejects("""
                content/lessons/01-first/lesson.md:9:10: In the drawing fuse, line 6, "10 A" lies over "fuse-link". Correct "values" of this figure.
                   drawing: fuse
                            ^
                1 mistake
                """);
    }

    @Test
    void rejectsAValueOfTheWrongKind() {
        drawing("fuse-link</text>", "fuse-link {rating A}</text>");
        site.lesson(FIGURE.replace("title:", "values: { rating: 12 V }\ntitle:"));
        rejects("""
                content/lessons/01-first/lesson.md:9:10: In the drawing fuse, rating "12 V" is not in A or another unit of that kind. Correct "values" of this figure.
                   drawing: fuse
                            ^
                1 mistake
                """);
    }

    @Test
    void rejectsAnUnknownUnit() {
        drawing("fuse-link</text>", "fuse-link {rating parsec}</text>");
        rejects("""
                content/drawings/fuse.svg:5:3: no unit is called "parsec". Write the value and the unit of its kind, such as {breaker A}.
                     <text x="160" y="30" text-anchor="middle" class="small">fuse-link {rating parsec}</text>
                     ^
                1 mistake
                """);
    }

    @Test
    void rejectsANameThatADrawingHasAlready() {
        site.write("drawings/supply-window.svg", DRAWING);
        rejects("""
                content/drawings/supply-window.svg:1:1: a drawing is called "supply-window" already. Give the file another name.
                   <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 100">
                   ^
                1 mistake
                """);
    }

    @Test
    void rejectsAFileThatIsNoDrawing() {
        site.write("drawings/fuse.png", "not a drawing");
        rejects("""
                content/drawings/fuse.png: this is not the place of such a file. Drawings end in .svg; photos go into the folder "pictures".
                1 mistake
                """);
    }
}
