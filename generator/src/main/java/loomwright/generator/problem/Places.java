package loomwright.generator.problem;

import java.util.HashMap;
import java.util.Map;

/** Leads from the links and ids of a finished page to the lines an author wrote them in. */
public final class Places {
    private final Map<String, Span> links = new HashMap<>();
    private final Map<String, Span> ids = new HashMap<>();

    /** Notes where a link was written first. */
    public void link(String href, Span place) {
        links.putIfAbsent(href, place);
    }

    /** Notes where an id was given last: of two alike, the later one is the mistake. */
    public void id(String id, Span place) {
        ids.put(id, place);
    }

    /** Takes over what another text of the same page noted. */
    public Places and(Places other) {
        other.links.forEach(this::link);
        other.ids.forEach(this::id);
        return this;
    }

    /** Where a link was written, or null if no author wrote it. */
    public Span ofLink(String href) {
        return links.get(href);
    }

    /** Where an id was given, or null if no author gave it. */
    public Span ofId(String id) {
        return ids.get(id);
    }
}
