package loomwright.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** A page that holds nothing but the calculators. */
final class ParityPage {
    private static final String EACH =
            "return arguments[1].map(entries => window.loomwrightWork(arguments[0], entries))";

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

    /** What a calculator answers in the browser to each of these entries. */
    List<String> answers(String calculator, List<Map<String, String>> entries) {
        List<String> lines = entries.stream().map(ParityPage::lines).toList();
        return ((List<?>) browser.run(EACH, calculator, lines)).stream().map(String.class::cast).toList();
    }

    /** Entries as the parity program reads them. */
    static String lines(Map<String, String> entries) {
        StringBuilder out = new StringBuilder();
        entries.forEach((field, text) -> out.append(out.length() == 0 ? "" : "\n").append(field).append('=').append(text));
        return out.toString();
    }
}
