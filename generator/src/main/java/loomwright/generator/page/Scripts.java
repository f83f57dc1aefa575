package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The scripts a page loads. A file whose name begins with {@code search} is for the page of search. One named after a subject is the page
 * program of that subject, for the pages that hold worked examples of it. One whose name begins with {@code practice-} or
 * {@code graph-} is loaded by the page itself, when a reader asks for an exercise or a graph is to be drawn anew. {@code progress.js} is for pages that may hold examples and for those that show what
 * a reader has done. {@code workshop.js} is for the page of the workshop, {@code projector.js} for the projector views, {@code circuit.js}
 * for the page of a whole circuit alone. {@code offline.js} is for all pages. Every other one is for all pages that may hold examples.
 *
 * @param files the names of the script files there are, in the order to load them
 */
public record Scripts(List<String> files) {
    private static final String SEARCH = "search";
    private static final String EXERCISES = "practice-";
    private static final String GRAPHS = "graph-";
    private static final String WORKSHOP = "workshop";
    private static final String CIRCUIT = "circuit";
    private static final String OFFLINE = "offline";
    private static final String PROJECTOR = "projector";
    private static final Set<String> SHOW_PROGRESS = Set.of("lessons.html", "how-to-use.html");

    List<Frame.Script> of(String address, Set<String> subjects) {
        List<Frame.Script> scripts = new ArrayList<>();
        boolean search = address.equals("search.html");
        if (search) {
            scripts.add(new Frame.Script(SearchData.LIBRARY));
            scripts.add(new Frame.Script(SearchData.FILE));
        }
        for (String file : files) {
            String name = file.replace(".js", "");
            if (file.startsWith(SEARCH) ? search : isLoaded(name, address, subjects)) {
                scripts.add(new Frame.Script(file));
            }
        }
        return scripts;
    }

    private static boolean isLoaded(String name, String address, Set<String> subjects) {
        if (name.equals(CIRCUIT)) {
            return address.equals(CircuitPage.ADDRESS);
        }
        if (SubjectsOfPages.isSubject(name)) {
            return subjects.contains(name);
        }
        if (name.equals(WORKSHOP)) {
            return address.equals(WORKSHOP + ".html");
        }
        if (name.equals(OFFLINE)) {
            return true;
        }
        if (name.equals(PROJECTOR)) {
            return address.startsWith(PROJECTOR + "/");
        }
        boolean showsProgress = name.equals("progress") && SHOW_PROGRESS.contains(address);
        return !name.startsWith(EXERCISES) && !name.startsWith(GRAPHS) && (showsProgress || mayHoldExamples(address));
    }

    private static boolean mayHoldExamples(String address) {
        return address.startsWith("lessons/") || address.startsWith("calculators/");
    }
}
