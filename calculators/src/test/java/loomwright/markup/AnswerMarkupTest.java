package loomwright.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.worked.Output;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

class AnswerMarkupTest {
    private static Document form(Unit unit) {
        return Jsoup.parseBodyFragment(AnswerMarkup.form(new Place("bench", Links.NONE, List.of()), new Output("held", "Pull it held", unit)));
    }

    @Test
    void aBareNumberHasNoChoiceOfUnits() {
        assertEquals(List.of(), form(Units.ONE).select("select"), "a choice whose first entry is empty");
        assertEquals("Your answer for pull it held", form(Units.ONE).select("label").text());
    }

    @Test
    void theUnitAskedForStandsFirst() {
        assertEquals("V", form(Units.VOLT).select("option").first().text());
    }
}
