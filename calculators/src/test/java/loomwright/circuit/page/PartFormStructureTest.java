package loomwright.circuit.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.Option;
import loomwright.worked.QuantityField;
import org.jsoup.nodes.Element;
import loomwright.units.UnitSystem;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The form of a part. */
class PartFormStructureTest {
    private static final Circuit ALL = Kinds.all();

    @TestFactory
    Stream<DynamicTest> eachFieldOfEachKindHasLabelHelpUnitsAndValue() {
        return ALL.parts().stream().map(part -> DynamicTest.dynamicTest(part.title(), () -> {
            Element form = form(ALL, part.id());
            int asked = 0;
            for (Field field : part.kind().fields()) {
                Element row = form.selectFirst(".field[data-input=" + field.key() + "]");
                if (row != null) {
                    holds(row, field, part.text(field.key()));
                    asked++;
                }
            }
            // a switch is asked what its device needs; every other part everything
            assertTrue(part.kind() == PartKind.SWITCH ? asked < part.kind().fields().size() : asked == part.kind().fields().size(), part.id());
        }));
    }

    private static void holds(Element row, Field field, String text) {
        String id = "part-" + field.key();
        Element label = row.selectFirst("> label");
        assertEquals(id, label.attr("for"));
        Element control = row.getElementById(id);
        assertEquals(field.key(), control.attr("name"));
        assertEquals(field.help().isEmpty() ? "" : id + "-help", control.attr("aria-describedby"));
        assertEquals(plain(field.help()), row.select("> p.help#" + id + "-help").text());
        if (field instanceof ChoiceField choice) {
            assertEquals(plain(field.label()), label.text());
            assertEquals(choice.options().stream().map(Option::key).toList(), control.select("option").eachAttr("value"));
            assertEquals(choice.options().stream().map(option -> plain(option.label())).toList(), control.select("option").eachText());
            assertEquals(List.of(text), control.select("option[selected]").eachAttr("value"));
        } else if (field instanceof QuantityField quantity) {
            List<String> units = quantity.units().stream().map(unit -> unit.symbol()).toList();
            boolean one = units.size() == 1;
            assertEquals(plain(field.label()) + (one && !units.get(0).isEmpty() ? ", in " + units.get(0) : ""), label.text());
            assertEquals(one ? List.of() : units, row.select("select#" + id + "-unit > option").eachText());
            String unit = one ? units.get(0) : row.select("select#" + id + "-unit > option[selected]").text();
            assertEquals(text, control.attr("value").isEmpty() ? "" : (control.attr("value") + " " + unit).strip());
        }
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u2009', ' ');
    }

    @Test
    void theFirstFiguresStandOpenTheOthersInAFold() {
        assertEquals(List.of("name", "conductor", "size", "route-length"), open("feed"));
        assertEquals(List.of("name", "device", "rating"), open("breaker"));
        assertEquals(List.of("name", "switching", "continuous-current", "on-resistance"), open("on-switch"));
        assertEquals(List.of("name", "switching", "continuous-current", "on-resistance", "trigger-current"), open("outlet-switch"));
        assertTrue(open(Kinds.RELAY).containsAll(List.of("coil-resistance", "coil-power")), open(Kinds.RELAY).toString());
        assertTrue(open("battery").containsAll(List.of("chemistry", "capacity")), open("battery").toString());
        assertTrue(open("strip").containsAll(List.of("load-kind", "power", "current", "resistance", "hours", "duty", "use", "allowance")));
        assertTrue(open(Kinds.SOURCE).containsAll(List.of("source-kind", "charge-current", "charge-voltage")));
        for (String all : List.of("fuse-panel", Kinds.ISOLATOR, "bench-joints")) {
            assertEquals(0, form(ALL, all).select("details").size(), all);
        }
        assertEquals("More figures of this part", form(ALL, "feed").selectFirst("details#part-more > summary").text());
        assertTrue(form(ALL, "feed").select("details .field").eachAttr("data-input").contains("insulation-temperature"));
    }

    private static List<String> open(String part) {
        List<String> keys = new ArrayList<>();
        for (Element field : form(ALL, part).select("> .field[data-input]")) {
            keys.add(field.attr("data-input"));
        }
        keys.removeAll(List.of("fed-by", "triggered-from"));
        return keys;
    }

    @Test
    void aSwitchIsAskedOnlyWhatItsDeviceHas() {
        Element manual = form(ALL, "on-switch");
        Element relay = form(ALL, Kinds.RELAY);
        Element solid = form(ALL, "outlet-switch");
        for (String coil : List.of("coil-resistance", "coil-power", "rated-voltage")) {
            assertAsked(coil, manual, false, relay, true, solid, false);
        }
        for (String heat : List.of("junction-to-air", "switch-ambient", "trigger-current")) {
            assertAsked(heat, manual, false, relay, false, solid, true);
        }
        for (String trigger : List.of("trigger-size", "trigger-route-length", "hours-on")) {
            assertAsked(trigger, manual, false, relay, true, solid, true);
        }
        assertAsked("triggered-from", manual, false, relay, true, solid, true);
    }

    private static void assertAsked(String key, Element manual, boolean ofManual, Element relay, boolean ofRelay, Element solid, boolean ofSolid) {
        String selector = "[data-input=" + key + "]";
        assertEquals(List.of(ofManual, ofRelay, ofSolid), List.of(!manual.select(selector).isEmpty(), !relay.select(selector).isEmpty(), !solid.select(selector).isEmpty()), key);
    }

    @Test
    void saysWhatFeedsThePartAndWhereItsTriggerComesFrom() {
        Element solid = form(Written.TRAILER, "outlet-switch");
        long feeding = Written.TRAILER.parts().stream().filter(part -> part.kind() != PartKind.LOAD && !part.id().equals("outlet-switch")).count();
        assertEquals(feeding, solid.select("#part-fed-by > option").size());
        assertEquals("breaker", solid.selectFirst("#part-fed-by > option[selected]").attr("value"));
        assertEquals("F7 Breaker of the bench circuit", solid.selectFirst("#part-fed-by > option[selected]").text());
        assertEquals(feeding + 1, solid.select("#part-triggered-from > option").size());
        assertEquals("nothing yet", solid.selectFirst("#part-triggered-from > option:first-child").text());
        assertEquals("on-switch", solid.selectFirst("#part-triggered-from > option[selected]").attr("value"));
        assertEquals("Fed by", solid.selectFirst("label[for=part-fed-by]").text());
        assertTrue(solid.getElementById("part-fed-by-help").text().startsWith("What stands before it"));
        assertEquals(0, form(Written.TRAILER, "battery").select("#part-fed-by").size());
    }

    @Test
    void offersWhatCanBeDoneWithThePart() {
        assertEquals(List.of("next", "branch", "add", "back"), form(ALL, "battery").select("button[data-does]").eachAttr("data-does"));
        assertEquals(List.of("next", "branch", "add", "insert", "remove", "prune", "back"), form(ALL, "feed").select("button[data-does]").eachAttr("data-does"));
        assertEquals(List.of("branch", "insert", "remove", "back"), form(ALL, "strip").select("button[data-does]").eachAttr("data-does"));
        assertEquals(List.of("feed"), form(ALL, "feed").select("button[data-smallest]").eachAttr("data-smallest"));
        assertEquals(1, form(ALL, "breaker").select("button[data-smallest]").size());
        assertEquals(0, form(ALL, "strip").select("button[data-smallest]").size());
        Element kinds = form(ALL, "breaker").getElementById("part-kind");
        assertEquals(List.of("panel", "protection", "isolator", "switch", "conductor", "joint", "load", "source"), kinds.select("option").eachAttr("value"));
        assertEquals("conductor", kinds.selectFirst("[selected]").attr("value"));
    }

    @Test
    void whatWasTypedAndCannotBeUsedStandsAsItWasTyped() {
        Element form = Written.read(PartFormMarkup.of(ALL, "feed", Map.of("feed/size", "six", "feed/name", "<b>", "strip/power", "x"), UnitSystem.METRIC));
        assertEquals("six", form.getElementById("part-size").attr("value"));
        assertEquals("<b>", form.getElementById("part-name").attr("value"));
        assertEquals("2", form.getElementById("part-route-length").attr("value"));
        Element head = Written.read(PartFormMarkup.head(ALL, "feed"));
        assertEquals("W2 Panel feed", head.selectFirst("h2#part-title").text());
        assertEquals("Conductor run", head.selectFirst("p.help").text());
        assertEquals("Panel feed", form(ALL, "feed").getElementById("part-name").attr("value"));
        Part renamed = CircuitEdits.named(ALL, "feed", "").circuit().part("feed");
        assertEquals("", renamed.name());
    }

    private static Element form(Circuit circuit, String part) {
        return Written.read(PartFormMarkup.of(circuit, part, Map.of(), UnitSystem.METRIC));
    }
}
