package loomwright.site;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/**
 * The accessibility audit. Its program is put into every page as it opens, which the policy of the page allows a driver to do; sending
 * it for each question would take longer than the audit.
 */
final class Audit implements AutoCloseable {
    /** Of all rules the only one that looks at colours. */
    static final String CONTRAST = "color-contrast";

    private static final String SCROLLS = "scrollable-region-focusable";

    private static final String RUN =
            """
            const done = arguments[arguments.length - 1];
            const rules = arguments[0];
            const options = {resultTypes: ['violations']};
            if (rules.length > 0) { options.runOnly = {type: 'rule', values: rules}; }
            axe.run(document, options).then(
              results => done(results.violations.map(rule =>
                  rule.id + ': ' + rule.help + rule.nodes.map(node => '\\n   ' + node.html).join('')).join('\\n')),
              error => done('the audit failed: ' + error));
            """;

    private final Browser browser;
    private final Object program;

    Audit(Browser browser) throws IOException {
        this.browser = browser;
        Map<?, ?> answer = (Map<?, ?>) browser.command("Page.addScriptToEvaluateOnNewDocument", Map.of("source", source()));
        this.program = answer.get("identifier");
    }

    private static String source() throws IOException {
        try (InputStream in = Audit.class.getResourceAsStream("/axe.min.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** What the page open now breaks; which formulas scroll it finds out a moment after a change. */
    String violationsOnceSettled() {
        String found = violations();
        if (!found.contains(SCROLLS)) {
            return found;
        }
        browser.until(() -> violations(SCROLLS).isEmpty());
        return violations();
    }

    /** What the page open now breaks, of these rules or of all if none is named; an empty text if nothing. */
    String violations(String... rules) {
        return (String) browser.driver().executeAsyncScript(RUN, List.of(rules));
    }

    @Override
    public void close() {
        browser.command("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", program));
    }
}
