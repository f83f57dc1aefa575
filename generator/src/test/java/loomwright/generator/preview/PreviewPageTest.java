package loomwright.generator.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

    /** The page of problems may do nothing that a page of the site may not, but listen to this server. */
    @Test
    void thePageOfProblemsIsAsStrictAsTheSite() throws Exception {
        List<String> site = policy(Files.readString(Path.of("../site/src/main/templates/meta.mustache")));
        List<String> problems = policy(text(PreviewPage.ofProblems("a.md:1:1: wrong")));
        for (String rule : problems) {
            assertTrue(site.contains(rule) || rule.equals("connect-src 'self'"), rule);
        }
        assertTrue(problems.containsAll(List.of("default-src 'none'", "base-uri 'none'", "form-action 'none'")), problems.toString());
    }

    private static List<String> policy(String page) {
        String begin = "http-equiv=\"Content-Security-Policy\" content=\"";
        int from = page.indexOf(begin) + begin.length();
        return List.of(page.substring(from, page.indexOf('"', from)).split("; ?"));
    }

    @Test
    void showsProblemsAsTheyAreWritten() {
        assertTrue(text(PreviewPage.ofProblems("a.md:1:1: raw HTML: \"<b>\"")).contains("<pre>a.md:1:1: raw HTML: &quot;&lt;b&gt;&quot;</pre>"));
    }
}
