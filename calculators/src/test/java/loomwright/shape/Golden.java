package loomwright.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** Files of expected shapes. With {@code -Dgolden.rewrite=true} they are written anew; read the difference before you commit it. */
public final class Golden {
    private static final Path FOLDER = Path.of("src", "test", "resources", "loomwright", "shape");
    private static final String IF_MEANT = "If you meant it: mvn -pl calculators verify -Dtest='*ShapeTest' -Dgolden.rewrite=true, then read"
            + " the difference";
    private static final Pattern NUMBER = Pattern.compile("[−-]?[0-9]+(?:[.,/][0-9]+)*");
    /** The prefix of a unit goes with the size of its number. */
    private static final Pattern FIGURE = Pattern.compile(
            "#[ \u00a0\u202f](?:[mµkM]?(?:A|V|W|Ω|s|Wh|Ah|h|J|N)|[mkc]?m|mm²|AWG|circular mil|in|ft|min|d|lbf)(?![\\p{L}²/])");

    private static final Pattern ENTRY = Pattern.compile("(value|href|aria-label)=\"[^\"]*[0-9][^\"]*\"");

    private Golden() {}

    public static boolean isRewritten() {
        return Boolean.getBoolean("golden.rewrite");
    }

    /** The text with {@code #} for each number: a figure must come from a publication, never from an earlier run. */
    public static String masked(String text) {
        return FIGURE.matcher(NUMBER.matcher(text).replaceAll("#")).replaceAll("#").replace('\0', '\u2400');
    }

    /** Markup, a tag a line, with the figures masked in words and entries; where a mark stands and which class it has is kept. */
    public static String maskedMarkup(String markup) {
        StringBuilder masked = new StringBuilder();
        for (int at = 0; at < markup.length(); ) {
            int close = markup.charAt(at) == '<' ? markup.indexOf('>', at) + 1 : at;
            int next = markup.indexOf('<', close);
            int end = next < 0 ? markup.length() : next;
            masked.append(ENTRY.matcher(markup.substring(at, close)).replaceAll("$1=\"#\"")).append(masked(markup.substring(close, end))).append('\n');
            at = end;
        }
        return masked.toString();
    }

    public static String read(String name) {
        if (isRewritten()) {
            try {
                return Files.readString(FOLDER.resolve(name));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        try (InputStream stream = Golden.class.getResourceAsStream(name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static void write(String name, String text) {
        try {
            Files.createDirectories(FOLDER.resolve(name).getParent());
            Files.writeString(FOLDER.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Names the first line that differs, and what to do if it should. */
    static void assertSame(String where, String expected, String actual) {
        String[] wanted = expected.split("\n");
        String[] got = actual.split("\n");
        for (int i = 0; i < Math.max(wanted.length, got.length); i++) {
            String line = where + ", line " + (i + 1) + ". " + IF_MEANT;
            assertEquals(i < wanted.length ? wanted[i] : "the end", i < got.length ? got[i] : "the end", line);
        }
    }

    public static void assertIs(String name, String text) {
        if (isRewritten()) {
            write(name, text);
        }
        assertSame(name, read(name), text);
    }
}
