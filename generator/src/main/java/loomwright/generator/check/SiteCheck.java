package loomwright.generator.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Places;
import loomwright.generator.problem.Problems;

/** Checks the pages of a site one by one as they come, and the links between them at the end. */
public final class SiteCheck {
    private final Problems problems;
    private final Map<String, Set<String>> idsByPage = new HashMap<>();
    private final Set<String> files = new HashSet<>();
    private final Set<String> missing = new HashSet<>();
    private final List<Waiting> waiting = new ArrayList<>();

    /** A link whose target may still come. Only its page is kept, not the text of it. */
    private record Waiting(BuiltPage page, String href, String target, String anchor) {}

    public SiteCheck(Problems problems) {
        this.problems = problems;
    }

    /** Checks a page. */
    public void page(String address, String html, Places places) {
        BuiltPage page = new BuiltPage(address, html, places);
        PageCheck check = new PageCheck(page, problems);
        check.check(html);
        idsByPage.put(address, page.ids());
        for (String href : new HashSet<>(check.links())) {
            link(page, href);
        }
    }

    /** Takes note of a file that is not a page. */
    public void file(String address) {
        files.add(address);
    }

    /** Takes note of a page that could not be made, for a reason that is reported already. Links to it pass. */
    public void missing(String address) {
        missing.add(address);
    }

    private void link(BuiltPage page, String href) {
        int hash = href.indexOf('#');
        String path = hash < 0 ? href : href.substring(0, hash);
        String anchor = hash < 0 ? "" : href.substring(hash + 1);
        if (path.contains("://") || path.startsWith("mailto:")) {
            return;
        }
        String target = path.isEmpty() ? page.address() : Resolve.from(page.address(), path);
        if (!isThere(target, anchor)) {
            waiting.add(new Waiting(page, href, target, anchor));
        }
    }

    /** Reports the links that lead nowhere, now that every page is there. */
    public void finish() {
        for (Waiting link : waiting) {
            if (!isThere(link.target(), link.anchor())) {
                report(link);
            }
        }
    }

    private void report(Waiting link) {
        Set<String> ids = idsByPage.get(link.target());
        if (ids == null) {
            problems.add(link.page().linkProblem(
                    link.href(), "the link leads to \"" + link.target() + "\", which is not in the site", "Correct the link."));
        } else {
            String nearest = Nearest.to(link.anchor(), ids);
            problems.add(link.page().linkProblem(
                    link.href(),
                    "the page \"" + link.target() + "\" has no place called \"" + link.anchor() + "\"",
                    nearest == null ? "Name a heading of that page in small letters with dashes." : "Did you mean \"" + nearest + "\"?"));
        }
    }

    private boolean isThere(String target, String anchor) {
        Set<String> ids = idsByPage.get(target);
        if (ids == null) {
            return missing.contains(target) || anchor.isEmpty() && files.contains(target);
        }
        // entries of a calculator stand where the anchor of other links stands
        return anchor.isEmpty() || anchor.indexOf('=') >= 0 || ids.contains(anchor);
    }
}
