package loomwright.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import org.junit.jupiter.api.Test;

/** What is given, line by line: label and entry; a choice by its words; groups of fields that hold nothing are left out. */
class GivenLinesTest {
    private static List<String> lines(Description description, Map<String, String> given) {
        return GivenMarkup.lines(description, given, Absent.NONE);
    }

    @Test
    void whatWasEnteredStandsBesideItsLabelAndWhatWasNotStandsNowhere() {
        Description ohm = Catalogue.find("ohm-and-power").description();
        assertEquals(
                List.of(ohm.field("voltage").label() + " 12 V", ohm.field("current").label() + " 3 A"), lines(ohm, Map.of("voltage", "12 V", "current", "3 A")));
        Description day = Catalogue.find("day-energy").description();
        List<String> one = lines(day, Map.of("load-1-power", "12 W", "load-1-hours", "4 h"));
        assertTrue(one.contains(day.field("load-1-power").label() + " 12 W"), one.toString());
        assertTrue(one.stream().noneMatch(each -> each.startsWith(day.field("load-2-hours").label())), one.toString());
    }

    @Test
    void aChoiceIsSaidByItsWords() {
        Description outlet = Catalogue.find("outlet-load").description();
        String words = ((ChoiceField) outlet.field("kind")).option("iso-4165").label();
        List<String> lines = lines(outlet, Map.of("kind", "iso-4165", "current", "6 A"));
        assertTrue(lines.contains(outlet.field("kind").label() + " " + words), lines.toString());
        assertFalse(lines.toString().contains("iso-4165"), lines.toString());
    }
}
