package loomwright.generator.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Predicate;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Places;
import loomwright.generator.problem.Problem;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.Span;

/** Checks the pages of a site one by one as they come, and the links between them at the end. */
public final class SiteCheck {
    private static final int MOST_UNDER_CHECK = 64;

    private final Problems problems;
    private final Map<String, Set<String>> idsByPage = new HashMap<>();
    private final Set<String> files = new HashSet<>();
    private final Set<String> missing = new HashSet<>();
    private final List<Waiting> waiting = new ArrayList<>();

    private final List<ForkJoinTask<UnderCheck>> underCheck = new ArrayList<>();
    private final CheckMemory memory;

    /** A page that was checked on its own, and what was found. */
    private record UnderCheck(CheckMemory.Checked checked, Places places, Problems found) {}

    /**
     * A link whose target may still come. The text of its page is not kept: thousands would fill the memory.
     *
     * @param page the page it stands in
     * @param written where an author wrote it, or null if no author did
     */
    private record Waiting(String page, Span written, String href, String target, String anchor) {
        Problem problem(String words, String remedy) {
            return written == null
                    ? Problem.ofPage(page, 0, 0, "the link \"" + href + "\": " + words, remedy, "")
                    : written.problem(words, remedy);
        }
    }

    public SiteCheck(Problems problems, CheckMemory memory) {
        this.problems = problems;
        this.memory = memory;
    }

    /** Checks a page. The work is done beside the writing of the next pages, and a bounded number of pages waits for it. */
    public void page(String address, String html, Places places) {
        CheckMemory.Checked before = memory.find(address, html);
        if (before != null) {
            take(before, places);
            return;
        }
        underCheck.add(ForkJoinPool.commonPool().submit(() -> check(address, html, places)));
        if (underCheck.size() >= MOST_UNDER_CHECK) {
            gather();
        }
    }

    private UnderCheck check(String address, String html, Places places) {
        Problems found = new Problems();
        BuiltPage page = new BuiltPage(address, html, places);
        PageCheck check = new PageCheck(page, found);
        check.check(html);
        CheckMemory.Checked checked = new CheckMemory.Checked(address, html, page.ids(), new TreeSet<>(check.links()));
        return new UnderCheck(checked, places, found);
    }

    private void gather() {
        for (ForkJoinTask<UnderCheck> future : underCheck) {
            UnderCheck page = future.join();
            problems.addAll(page.found());
            if (page.found().isEmpty()) {
                memory.keep(page.checked());
            }
            take(page.checked(), page.places());
        }
        underCheck.clear();
    }

    private void take(CheckMemory.Checked page, Places places) {
        idsByPage.put(page.address(), page.ids());
        for (String href : page.links()) {
            link(page.address(), places, href);
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

    private void link(String page, Places places, String href) {
        int hash = href.indexOf('#');
        String path = hash < 0 ? href : href.substring(0, hash);
        String anchor = hash < 0 ? "" : href.substring(hash + 1);
        if (path.contains("://") || path.startsWith("mailto:")) {
            return;
        }
        String target = path.isEmpty() ? page : Resolve.from(page, path);
        if (!isThere(target, anchor)) {
            waiting.add(new Waiting(page, places.ofLink(href), href, target, anchor));
        }
    }

    /**
     * Reports the links that lead nowhere, now that every page is there.
     *
     * @param halfRead whether the text of a page could not be read in full, for a reason that is reported already: links into it pass
     */
    public void finish(Predicate<String> halfRead) {
        gather();
        for (Waiting link : waiting) {
            boolean echo = !link.target().equals(link.page()) && halfRead.test(link.target());
            if (!echo && !isThere(link.target(), link.anchor())) {
                report(link);
            }
        }
        problems.dropEchoes();
    }

    private void report(Waiting link) {
        Set<String> ids = idsByPage.get(link.target());
        if (ids == null) {
            problems.add(link.problem("it leads to \"" + link.target() + "\", which is not in the site", "Correct the link."));
        } else {
            String nearest = Nearest.to(link.anchor(), ids);
            problems.add(link.problem(
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
