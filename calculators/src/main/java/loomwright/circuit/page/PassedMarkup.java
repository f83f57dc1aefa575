package loomwright.circuit.page;

import java.util.LinkedHashMap;
import java.util.Map;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.check.FindingGroup;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.SourceMarkup;
import loomwright.worked.Verdict;

/** What passed is there to be looked up: it stands by check, and a source once under all that rest on it. */
final class PassedMarkup {
    private PassedMarkup() {}

    /** @param opening whether each finding opens its working */
    static String of(Links links, Examination examination, boolean opening) {
        FoundItem item = new FoundItem(links, examination);
        Html html = new Html();
        for (Check check : Check.values()) {
            int count = 0;
            Map<String, Html> bySource = new LinkedHashMap<>();
            for (CircuitFinding found : examination.findings(check)) {
                if (found.finding().verdict() == Verdict.PASSED) {
                    count++;
                    item(bySource, links, item, found, opening);
                }
            }
            if (count > 0) {
                html.tag("<h4>").text(check.label() + ": " + FindingGroup.counted(count, "check") + " passed").tag("</h4>");
                for (Map.Entry<String, Html> each : bySource.entrySet()) {
                    html.tag("<ul>").tag(each.getValue().toString()).tag("</ul>").tag(each.getKey());
                }
            }
        }
        return html.toString();
    }

    private static void item(Map<String, Html> bySource, Links links, FoundItem item, CircuitFinding found, boolean opening) {
        String source = SourceMarkup.paragraph(links, found.finding().source());
        Html items = bySource.get(source);
        if (items == null) {
            items = new Html();
            bySource.put(source, items);
        }
        items.tag("<li class=\"finding\" data-verdict=\"passed\">").tag(item.words(found));
        if (opening) {
            items.tag(" <span class=\"on-screen\">");
            boolean opens = item.calculator(items, found);
            items.tag("</span>");
            if (!opens) {
                item.unfolded(items, found);
            }
        }
        items.tag("</li>");
    }
}
