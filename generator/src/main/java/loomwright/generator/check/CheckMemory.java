package loomwright.generator.check;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** Pages that were found sound in an earlier run of the same program, and need no second look if they have not changed. */
public final class CheckMemory {
    private final boolean keeps;
    private final Map<String, Checked> pages = new HashMap<>();

    /**
     * A page that was checked on its own.
     *
     * @param ids its ids
     * @param links the addresses of its links
     */
    record Checked(String address, String html, Set<String> ids, Set<String> links) {}

    private CheckMemory(boolean keeps) {
        this.keeps = keeps;
    }

    /** For a program that builds again and again. */
    public static CheckMemory keeping() {
        return new CheckMemory(true);
    }

    /** For a program that builds once. */
    public static CheckMemory none() {
        return new CheckMemory(false);
    }

    /** The page as it was checked before, or null if it is new or has changed. */
    Checked find(String address, String html) {
        Checked page = pages.get(address);
        return page != null && page.html().equals(html) ? page : null;
    }

    void keep(Checked page) {
        if (keeps) {
            pages.put(page.address(), page);
        }
    }
}
