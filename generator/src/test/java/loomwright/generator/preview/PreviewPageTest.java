package loomwright.generator.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class PreviewPageTest {
    private static String text(byte[] page) {
        return new String(page, StandardCharsets.UTF_8);
    }

    @Test
    void addsTheScriptAndLetsItListenToThisServerOnly() {
        String page = "<head><meta content=\"default-src 'none'; script-src 'self'\"></head><body>x</body>";
        assertEquals(
                "<head><meta content=\"default-src 'none'; connect-src 'self'; script-src 'self'\">"
                        + "<script defer src=\"/.preview/reload.js\"></script>\n</head><body>x</body>",
                text(PreviewPage.withReload(page.getBytes(StandardCharsets.UTF_8))));
    }

    /** The line it relaxes is the one the templates really hold. */
    @Test
    void knowsThePolicyOfTheTemplates() throws Exception {
        byte[] head = Files.readAllBytes(Path.of("../site/src/main/templates/meta.mustache"));
        assertTrue(text(PreviewPage.withReload(head)).contains("connect-src 'self'"));
    }

    @Test
    void showsProblemsAsTheyAreWritten() {
        assertTrue(text(PreviewPage.ofProblems("a.md:1:1: raw HTML: \"<b>\"")).contains("<pre>a.md:1:1: raw HTML: &quot;&lt;b&gt;&quot;</pre>"));
    }
}
