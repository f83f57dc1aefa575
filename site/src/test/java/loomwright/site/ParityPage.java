package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import loomwright.browser.ParityAnswer;

/** A page that holds nothing but the calculators. */
final class ParityPage {
    private static final String EACH = "return arguments[1].map(entries => window.loomwrightWork(arguments[0], entries))";

    /**
     * Reads entries and what the JVM answered, in short, from a script beside the page, which is far quicker than through the driver, and
     * gives the number of entries it read and the places of those it answers otherwise.
     */
    private static final String COMPARE =
            """
            const [calculator, relative, script, done] = arguments;
            const close = (one, other) => Math.abs(one - other) <= relative * Math.abs(one);
            window.loomwrightCases = bytes => {
              const cases = new TextDecoder().decode(Uint8Array.from(atob(bytes), c => c.charCodeAt(0))).split('\\u0001');
              const apart = [cases.length / 2];
              for (let i = 0; i < cases.length; i += 2) {
                const [there, ...expected] = cases[i + 1].split(' ');
                const [here, ...raw] = window.loomwrightBrief(calculator, cases[i]).split(' ');
                if (here !== there || raw.length !== expected.length || !expected.every((value, j) => close(+value, +raw[j]))) {
                  apart.push(i / 2);
                }
              }
              done(apart);
            };
            const tag = document.createElement('script');
            tag.onload = () => tag.remove();
            tag.src = script;
            document.head.append(tag);
            """;

    private final Browser browser;

    private final Path folder;

    private ParityPage(Browser browser, Path folder) {
        this.browser = browser;
        this.folder = folder;
    }

    static ParityPage open(Browser browser) {
        try {
            Path program = Path.of(System.getProperty("parity.program"));
            Path page = program.resolveSibling("parity.html");
            Files.writeString(page, "<!DOCTYPE html><meta charset=\"utf-8\"><title>Parity</title><script src=\"parity.js\"></script><script>main([])</script>");
            browser.driver().get(page.toUri().toString());
            return new ParityPage(browser, page.getParent());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a calculator answers in the browser to each of these entries, in full. */
    List<String> answers(String calculator, List<Map<String, String>> entries) {
        List<String> lines = entries.stream().map(ParityPage::lines).toList();
        return ((List<?>) browser.run(EACH, calculator, lines)).stream().map(String.class::cast).toList();
    }

    /**
     * The places of the entries that the browser answers otherwise than the JVM did.
     *
     * @param briefs what {@link #briefOnJvm} gives for each of them
     * @param relative how far raw values may be apart
     */
    List<Integer> apart(String calculator, List<Map<String, String>> entries, List<String> briefs, double relative) {
        StringBuilder cases = new StringBuilder();
        for (int i = 0; i < entries.size(); i++) {
            cases.append(i == 0 ? "" : "\u0001").append(lines(entries.get(i))).append('\u0001').append(briefs.get(i));
        }
        String bytes = Base64.getEncoder().encodeToString(cases.toString().getBytes(StandardCharsets.UTF_8));
        String script = "cases-" + calculator + ".js";
        try {
            Files.writeString(folder.resolve(script), "loomwrightCases('" + bytes + "')");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<Integer> answer = ((List<?>) browser.later(COMPARE, calculator, relative, script)).stream().map(n -> ((Number) n).intValue()).toList();
        assertEquals(entries.size(), answer.get(0), "the page compared every entry");
        return answer.subList(1, answer.size());
    }

    /** What a calculator answers on the JVM, in short. */
    static String briefOnJvm(String calculator, Map<String, String> entries) {
        return ParityAnswer.brief(calculator, lines(entries), Double::toString);
    }

    /** Entries as the parity program reads them. */
    static String lines(Map<String, String> entries) {
        StringBuilder out = new StringBuilder();
        entries.forEach((field, text) -> out.append(out.length() == 0 ? "" : "\n").append(field).append('=').append(text));
        return out.toString();
    }
}
