package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;

/**
 * The scripts a page loads. A file whose name begins with {@code search} is for the page of search; every other one is the page
 * program, for the pages that hold worked examples.
 *
 * @param files the names of the script files there are, in the order to load them
 */
public record Scripts(List<String> files) {
    private static final String SEARCH = "search";

    List<Frame.Script> of(String address) {
        List<Frame.Script> scripts = new ArrayList<>();
        boolean search = address.equals("search.html");
        if (search) {
            scripts.add(new Frame.Script(SearchData.LIBRARY));
            scripts.add(new Frame.Script(SearchData.FILE));
        }
        boolean program = address.startsWith("lessons/") || address.startsWith("calculators/");
        for (String file : files) {
            if (search == file.startsWith(SEARCH) && (search || program)) {
                scripts.add(new Frame.Script(file));
            }
        }
        return scripts;
    }
}
