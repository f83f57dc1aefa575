package loomwright.worked;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class ChoicesTest {
    private enum Colour implements Choice {
        RED, BLUE;

        static final Choices<Colour> CHOICES = Choices.among(values());

        @Override
        public String key() {
            return this == RED ? "red" : "blue";
        }

        @Override
        public String label() {
            return this == RED ? "Red" : "Blue";
        }
    }

    @Test
    void theFieldOffersThemInTheirOrderAndTakesTheFirst() {
        ChoiceField field = Colour.CHOICES.field("colour", "Colour", "Which?");
        assertEquals(List.of(new Option("red", "Red"), new Option("blue", "Blue")), field.options());
        assertEquals("red", field.usual());
        assertEquals("blue", field.usually("blue").usual());
    }

    @Test
    void whatWasChosenIsFoundAgain() {
        assertEquals(Colour.BLUE, Colour.CHOICES.of(new Option("blue", "Blue")));
        assertEquals(Colour.BLUE, Colour.CHOICES.named("blue"));
        assertNull(Colour.CHOICES.named("green"));
    }

    @Test
    void oneThatStandsBehindIsNoneOfThem() {
        Option other = new Option("other", "Another");
        assertEquals(List.of("red", "blue", "other"), Colour.CHOICES.field("colour", "Colour", "", other).options().stream().map(Option::key).toList());
        assertNull(Colour.CHOICES.find(other));
        assertEquals("no choice other", assertThrows(IllegalArgumentException.class, () -> Colour.CHOICES.of(other)).getMessage());
    }
}
