package loomwright.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import loomwright.browser.ParityAnswer;

/** A page that holds nothing but the calculators. */
final class ParityPage {
    private static final String EACH = "return arguments[1].map(entries => window.loomwrightWork(arguments[0], entries))";

    /** Sends raw values and a check number of the text, not the text: most of the time would go into carrying it over. */
    private static final String DIGESTS =
            """
            return arguments[1].map(entries => {
              const brief = window.loomwrightBrief(arguments[0], entries);
              let one = 0;
              let two = 0;
              const end = brief.indexOf('\\n');
              for (let i = end; i < brief.length; i++) {
                one = Math.imul(one, 31) + brief.charCodeAt(i) | 0;
                two = Math.imul(two ^ brief.charCodeAt(i), 16777619);
              }
              return one + '/' + two + ' ' + brief.substring(0, end);
            });
            """;

    private final Browser browser;

    private ParityPage(Browser browser) {
        this.browser = browser;
    }

    static ParityPage open(Browser browser) {
        try {
            Path program = Path.of(System.getProperty("parity.program"));
            Path page = program.resolveSibling("parity.html");
            Files.writeString(page, "<!DOCTYPE html><meta charset=\"utf-8\"><title>Parity</title><script src=\"parity.js\"></script><script>main([])</script>");
            browser.driver().get(page.toUri().toString());
            return new ParityPage(browser);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a calculator answers in the browser to each of these entries, in full. */
    List<String> answers(String calculator, List<Map<String, String>> entries) {
        return each(EACH, calculator, entries);
    }

    /** A check number and the raw values of each answer, with blanks between. */
    List<String> digests(String calculator, List<Map<String, String>> entries) {
        return each(DIGESTS, calculator, entries);
    }

    /** The same on the JVM. */
    static List<String> digestsOnJvm(String calculator, List<Map<String, String>> entries) {
        return entries.stream().map(each -> digest(ParityAnswer.brief(calculator, lines(each), Double::toString))).toList();
    }

    private static String digest(String brief) {
        int end = brief.indexOf('\n');
        int one = 0;
        int two = 0;
        for (int i = end; i < brief.length(); i++) {
            one = one * 31 + brief.charAt(i);
            two = (two ^ brief.charAt(i)) * 16_777_619;
        }
        return one + "/" + two + " " + brief.substring(0, end);
    }

    private List<String> each(String script, String calculator, List<Map<String, String>> entries) {
        List<String> lines = entries.stream().map(ParityPage::lines).toList();
        return ((List<?>) browser.run(script, calculator, lines)).stream().map(String.class::cast).toList();
    }

    /** Entries as the parity program reads them. */
    static String lines(Map<String, String> entries) {
        StringBuilder out = new StringBuilder();
        entries.forEach((field, text) -> out.append(out.length() == 0 ? "" : "\n").append(field).append('=').append(text));
        return out.toString();
    }
}
