package loomwright.generator.mistake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Mistakes in photos. */
class PictureErrorTest extends MistakeTest {
    private static final String FIGURE = """
            ```figure
            key: bench
            picture: bench.jpg
            title: The bench
            description: A bench with two outlets in its side.
            ```
            """;

    private static byte[] photo(String kind, int width, int height) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), kind, bytes);
        return bytes.toByteArray();
    }

    @Test
    void acceptsPhotosOfEachKind() throws IOException {
        site.write("pictures/bench.jpg", photo("jpg", 800, 600)).write("pictures/lamp.png", photo("png", 300, 200));
        // RIFF, size, WEBP, VP8X, size, flags, three bytes of nothing, width less one, height less one
        site.write("pictures/fan.webp", new byte[] {
            'R', 'I', 'F', 'F', 22, 0, 0, 0, 'W', 'E', 'B', 'P', 'V', 'P', '8', 'X', 10, 0, 0, 0, 0, 0, 0, 0, 0x1F, 3, 0, 0x57, 2, 0
        });
        site.lesson(FIGURE + FIGURE.replace("bench", "lamp").replace(".jpg", ".png") + FIGURE.replace("bench", "fan").replace(".jpg", ".webp"));
        assertEquals("0 mistakes\n", site.problems());
        String page = site.files().get("lessons/01-first.html");
        for (String image : new String[] {
            "src=\"../pictures/bench.jpg\" width=\"800\" height=\"600\" alt=\"The bench: A bench with two outlets in its side.\"",
            "src=\"../pictures/lamp.png\" width=\"300\" height=\"200\"",
            "src=\"../pictures/fan.webp\" width=\"800\" height=\"600\""
        }) {
            assertEquals(true, page.contains(image), page);
        }
    }

    @Test
    void rejectsAPhotoThatIsNotThere() throws IOException {
        site.lesson(FIGURE);
        rejects("""
                content/lessons/01-first/lesson.md:9:10: no picture is called "bench.jpg". Put the file into the folder "pictures".
                   picture: bench.jpg
                            ^
                1 mistake
                """);
        site.write("pictures/bench.png", photo("png", 300, 200));
        rejects("""
                content/lessons/01-first/lesson.md:9:10: no picture is called "bench.jpg". Did you mean "bench.png"?
                   picture: bench.jpg
                            ^
                1 mistake
                """);
    }

    @Test
    void rejectsAPhotoWithoutADescription() throws IOException {
        site.write("pictures/bench.jpg", photo("jpg", 800, 600));
        site.lesson(FIGURE.replace("A bench with two outlets in its side.", "\"\""));
        rejects("""
                content/lessons/01-first/lesson.md:11:1: "description" is empty. Write its text after the colon.
                   description: ""
                   ^
                1 mistake
                """);
    }

    @Test
    void rejectsADrawingAndAPhotoInOneFigure() throws IOException {
        site.write("pictures/bench.jpg", photo("jpg", 800, 600));
        site.lesson(FIGURE.replace("title:", "drawing: supply-window\ntitle:"));
        rejects("""
                content/lessons/01-first/lesson.md:9:10: a figure shows a drawing or a picture, not both. Keep "picture" alone; it takes no values.
                   picture: bench.jpg
                            ^
                1 mistake
                """);
    }

    @Test
    void rejectsAPhotoThatIsTooLargeForAPage() throws IOException {
        site.write("pictures/bench.jpg", Arrays.copyOf(photo("jpg", 800, 600), 301_000));
        rejects("""
                content/pictures/bench.jpg: the photo has 301 kB, and a page can bear 300. Save it smaller: 1200 pixels wide as JPEG or WebP is enough.
                1 mistake
                """);
    }

    @Test
    void rejectsAPhotoWithTooManyOrTooFewPixels() throws IOException {
        site.write("pictures/bench.jpg", photo("jpg", 100, 600)).write("pictures/wide.png", photo("png", 2500, 20));
        rejects("""
                content/pictures/bench.jpg: the photo is 100 by 600 pixels. Make it at least 200 wide, and no side longer than 2400.
                content/pictures/wide.png: the photo is 2500 by 20 pixels. Make it at least 200 wide, and no side longer than 2400.
                2 mistakes
                """);
    }

    @Test
    void rejectsAFileThatIsSomethingElse() throws IOException {
        site.write("pictures/bench.jpg", photo("png", 300, 200)).write("pictures/page.png", "<script>alert(1)</script>");
        rejects("""
                content/pictures/bench.jpg: the file does not hold what its name says. Save it anew as PNG, JPEG or WebP, with the ending of its kind.
                content/pictures/page.png: the file does not hold what its name says. Save it anew as PNG, JPEG or WebP, with the ending of its kind.
                2 mistakes
                """);
    }

    @Test
    void rejectsAFileThatEndsTooSoon() throws IOException {
        site.write("pictures/bench.jpg", Arrays.copyOf(photo("jpg", 800, 600), 12));
        rejects("""
                content/pictures/bench.jpg: the file does not hold what its name says. Save it anew as PNG, JPEG or WebP, with the ending of its kind.
                1 mistake
                """);
    }

    /** After the two bytes that open a JPEG: a segment of details with one entry, the one that leads to the position. */
    @Test
    void rejectsAPhotoThatTellsWhereItWasTaken() throws IOException {
        byte[] plain = photo("jpg", 800, 600);
        byte[] details = {
            (byte) 0xFF, (byte) 0xE1, 0, 34, 'E', 'x', 'i', 'f', 0, 0, 'I', 'I', 42, 0, 8, 0, 0, 0,
            1, 0, 0x25, (byte) 0x88, 4, 0, 1, 0, 0, 0, 26, 0, 0, 0, 0, 0, 0, 0
        };
        ByteArrayOutputStream told = new ByteArrayOutputStream();
        told.write(plain, 0, 2);
        told.writeBytes(details);
        told.write(plain, 2, plain.length - 2);
        site.write("pictures/bench.jpg", told.toByteArray());
        rejects("""
                content/pictures/bench.jpg: the photo tells where it was taken. Save it without its details, so that nobody's place is made public.
                1 mistake
                """);
        details[20] = 0x26;
        told.reset();
        told.write(plain, 0, 2);
        told.writeBytes(details);
        told.write(plain, 2, plain.length - 2);
        site.write("pictures/bench.jpg", told.toByteArray());
        assertEquals("0 mistakes\n", site.problems());
    }

    @Test
    void rejectsAnotherKindOfFile() throws IOException {
        site.write("pictures/bench.gif", photo("gif", 800, 600)).write("pictures/bench.svg", "<svg/>");
        rejects("""
                content/pictures/bench.gif: this is not the place of such a file. Photos end in .png, .jpg or .webp; drawings, in .svg, go into the folder "drawings".
                content/pictures/bench.svg: this is not the place of such a file. Photos end in .png, .jpg or .webp; drawings, in .svg, go into the folder "drawings".
                2 mistakes
                """);
    }

    @Test
    void rejectsANameThatIsNoPartOfAnAddress() throws IOException {
        site.write("pictures/bench end.jpg", photo("jpg", 800, 600));
        assertEquals(true, site.problems().startsWith("content/pictures/bench end.jpg: the name \"bench end\" cannot be part of an address."), site.problems());
    }
}
