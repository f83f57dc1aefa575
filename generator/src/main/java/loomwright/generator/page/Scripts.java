package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The scripts a page loads. A file whose name begins with {@code search} is for the page of search. One named after a subject is the page
 * program of that subject, for the pages that hold worked examples of it. Every other one is for all pages that may hold examples.
 *
 * @param files the names of the script files there are, in the order to load them
 */
public record Scripts(List<String> files) {
    private static final String SEARCH = "search";

    List<Frame.Script> of(String address, Set<String> subjects) {
        List<Frame.Script> scripts = new ArrayList<>();
        boolean search = address.equals("search.html");
        if (search) {
            scripts.add(new Frame.Script(SearchData.LIBRARY));
            scripts.add(new Frame.Script(SearchData.FILE));
        }
        for (String file : files) {
            String name = file.replace(".js", "");
            boolean loaded = file.startsWith(SEARCH)
                    ? search
                    : SubjectsOfPages.isSubject(name) ? subjects.contains(name) : mayHoldExamples(address);
            if (loaded) {
                scripts.add(new Frame.Script(file));
            }
        }
        return scripts;
    }

    private static boolean mayHoldExamples(String address) {
        return address.startsWith("lessons/") || address.startsWith("calculators/");
    }
}
