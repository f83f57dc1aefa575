package loomwright.generator.page;

import java.util.Collection;
import java.util.Map;

/** The drawings that figures can show. */
public interface Pictures {

    /** The names of all drawings. */
    Collection<String> names();

    /**
     * A drawing as an SVG element with its title and description.
     *
     * @param name one of {@link #names}
     * @param values figures that the drawing shows
     * @param key the start of every id in it
     * @throws IllegalArgumentException if a value is missing or cannot be used; the message says which
     */
    String draw(String name, Map<String, String> values, String key, String title, String description);
}
