package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The scripts a page loads. A file whose name begins with {@code search} is for the page of search; every other one is the page
 * program of the subject it is named after, for the pages that hold worked examples of that subject.
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
            boolean forSearch = file.startsWith(SEARCH);
            if (forSearch ? search : subjects.contains(file.replace(".js", ""))) {
                scripts.add(new Frame.Script(file));
            }
        }
        return scripts;
    }
}
