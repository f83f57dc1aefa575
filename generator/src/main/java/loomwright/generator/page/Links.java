package loomwright.generator.page;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** A list of links that is never empty. */
record Links(List<Link> links) {

    /** The links from a page to places, or null if there is none. */
    static Links of(String page, Collection<Place> places) {
        List<Link> links = new ArrayList<>();
        for (Place place : places) {
            links.add(new Link(place.title(), Address.from(page, place.address()), links.size() == places.size() - 1));
        }
        return links.isEmpty() ? null : new Links(links);
    }
}
