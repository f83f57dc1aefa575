package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The scripts a page loads. The program of a page, {@code site.js} or {@code circuit.js}, is fetched by {@code program.js} once the page has
 * been painted. A file whose name begins with {@code search} is for the page of search, {@code projector.js} for the projector views. Every
 * other one is for all pages.
 *
 * @param files the names of the script files there are, in the order to load them
 */
public record Scripts(List<String> files) {
    private static final String LOADER = "program.js";
    private static final String SITE = "site.js";
    private static final String CIRCUIT = "circuit.js";
    private static final String SEARCH = "search";
    private static final String PROJECTOR = "projector";
    /** Pages with something for the program besides lessons and calculators: marks of progress, sheets to make. */
    private static final Set<String> WITH_PROGRAM = Set.of("lessons.html", "how-to-use.html", "workshop.html");

    List<Frame.Script> of(String address) {
        List<Frame.Script> scripts = new ArrayList<>();
        boolean search = address.equals("search.html");
        if (search) {
            scripts.add(new Frame.Script(SearchData.LIBRARY));
            scripts.add(new Frame.Script(SearchData.FILE));
        }
        for (String file : files) {
            boolean isProgram = file.equals(LOADER) || file.equals(SITE) || file.equals(CIRCUIT);
            if (!isProgram && (file.startsWith(SEARCH) ? search : !file.startsWith(PROJECTOR) || address.startsWith(PROJECTOR + "/"))) {
                scripts.add(new Frame.Script(file));
            }
        }
        return scripts;
    }

    /** The program that the page fetches after it has been painted, or null. */
    String programOf(String address) {
        String program = address.equals(CircuitPage.ADDRESS) || address.equals(FirstJobPage.ADDRESS) ? CIRCUIT : hasSiteProgram(address) ? SITE : null;
        return program != null && files.contains(program) ? program : null;
    }

    private static boolean hasSiteProgram(String address) {
        return address.startsWith("lessons/") || address.startsWith("calculators/") || WITH_PROGRAM.contains(address);
    }
}
