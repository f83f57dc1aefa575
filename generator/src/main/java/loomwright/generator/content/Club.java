package loomwright.generator.content;

import java.util.List;
import loomwright.units.UnitSystem;

/**
 * A club that built the site with a folder of its own beside ours.
 *
 * @param name its name, or an empty text if its folder does not say
 * @param contact where to reach it, or an empty text
 * @param units the units of its site
 * @param lessons the keys of its own lessons, in order
 * @param pages its own pages, in order
 */
public record Club(String name, String contact, UnitSystem units, List<String> lessons, List<PlainPage> pages) {

    /** What stands at the top of its sheets. */
    public String house() {
        return contact.isEmpty() ? name : name + ", " + contact;
    }

    public boolean isNamed() {
        return !name.isEmpty();
    }
}
