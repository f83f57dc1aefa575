package loomwright.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loomwright.catalogue.Catalogue;
import loomwright.entries.TypedEntries;
import loomwright.worked.Calculator;
import loomwright.worked.Finding;
import loomwright.worked.Outcome;
import loomwright.worked.Verdict;
import loomwright.worked.Working;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** The upshot says the worst of the checks, and how many there are to look at. */
class UpshotMarkupTest {
    @Test
    void theWorstCheckIsSaidAndTheOpenOnesAreCounted() {
        Set<String> seen = new HashSet<>();
        for (Calculator calculator : Catalogue.all()) {
            TypedEntries typed = new TypedEntries(calculator, List.of(), 3);
            for (int i = 0; i < 25; i++) {
                Working working = Outcome.of(calculator, typed.next()).working();
                if (working != null) {
                    seen.add(check(working));
                }
            }
        }
        assertEquals(Set.of("none", "one", "all passed", "one open", "several open"), seen);
    }

    private static String check(Working working) {
        Element said = Jsoup.parseBodyFragment(UpshotMarkup.printed(Sample.PLACE, working)).selectFirst("p.worst");
        List<Finding> findings = working.findings();
        long open = findings.stream().filter(each -> each.verdict() != Verdict.PASSED).count();
        if (findings.isEmpty()) {
            assertEquals(null, said);
            return "none";
        }
        boolean anyWorse = findings.stream().anyMatch(each -> each.verdict().isWorseThan(verdict(said)));
        assertTrue(!anyWorse && findings.stream().anyMatch(each -> each.verdict() == verdict(said)), said.outerHtml());
        if (open == 0 && findings.size() > 1) {
            assertEquals(findings.size() + " checks passed.", said.text());
            return "all passed";
        }
        Finding first = findings.stream().filter(each -> each.verdict() == verdict(said)).findFirst().orElseThrow();
        assertTrue(plain(said.text()).contains(plain(first.words())), said.text() + "\n" + first.words());
        assertEquals(open > 1 ? "One of " + open + " checks to look at." : "", said.select(".count").text());
        return open == 0 ? "one" : open == 1 ? "one open" : "several open";
    }

    private static Verdict verdict(Element said) {
        for (Verdict verdict : Verdict.values()) {
            if (verdict.key().equals(said.attr("data-verdict"))) {
                return verdict;
            }
        }
        throw new AssertionError(said.outerHtml());
    }

    private static String plain(String text) {
        return text.replaceAll("\\s|\u00a0", " ").replaceAll("[.]$", "");
    }
}
