package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Picture;

/** A drawing that a lesson can name. */
interface Drawing {
    /** Its name in a lesson. */
    String name();

    /** The values it takes; all are needed. */
    List<String> takes();

    /**
     * Draws it.
     *
     * @throws IllegalArgumentException if a value will not do; says which and why
     */
    Picture draw(Given given);
}
