package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The space of a label: from its anchor to one side, to the other, or to both alike; most of it above its base line. */
class LabelTest {
    private static Box box(Anchor anchor, Lettering lettering) {
        return new Label(100, 50, anchor, lettering, "12 V").box();
    }

    @Test
    void theSpaceLiesWhereTheAnchorSays() {
        for (Lettering lettering : Lettering.values()) {
            double width = lettering.width("12 V");
            assertTrue(width > 0);
            assertEquals(100, box(Anchor.START, lettering).left(), 1e-9);
            assertEquals(100 + width, box(Anchor.START, lettering).right(), 1e-9);
            assertEquals(100 - width / 2, box(Anchor.MIDDLE, lettering).left(), 1e-9);
            assertEquals(100 + width / 2, box(Anchor.MIDDLE, lettering).right(), 1e-9);
            assertEquals(100 - width, box(Anchor.END, lettering).left(), 1e-9);
            assertEquals(100, box(Anchor.END, lettering).right(), 1e-9);
        }
    }

    /** A capital rises about three quarters of the size of its letters, a tail hangs about a quarter: together about the size. */
    @Test
    void theLettersRiseAboveTheBaseLineAndTheirTailsHangBelow() {
        for (Lettering lettering : Lettering.values()) {
            Box box = box(Anchor.START, lettering);
            assertEquals(50 - 0.75 * lettering.size(), box.top(), 0.05 * lettering.size());
            assertEquals(50 + 0.25 * lettering.size(), box.bottom(), 0.05 * lettering.size());
        }
    }
}
