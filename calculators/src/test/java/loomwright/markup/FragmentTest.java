package loomwright.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FragmentTest {
    @Test
    void writesEntriesByName() {
        Map<String, String> entries = new LinkedHashMap<>();
        entries.put("size", "2.5 mm²");
        entries.put("route-length", "4,2 m");
        entries.put("temperature", "20");
        assertEquals("route-length=4%2C2%20m&size=2.5%20mm%C2%B2&temperature=20", Fragment.write(entries));
    }

    @Test
    void readsWhatAPersonTypedByHand() {
        assertEquals(Map.of("route-length", "4.2 m", "size", "2.5 mm²"), Fragment.read("#route-length=4.2 m&size=2.5 mm²"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "#", "#=", "#&&&", "#a", "#=b", "#top"})
    void findsNoEntriesInADamagedFragment(String fragment) {
        assertEquals(Map.of(), Fragment.read(fragment));
    }

    @ParameterizedTest
    @ValueSource(strings = {"%", "%2", "%zz", "%C2", "%C2%", "%C2x", "%FF%FF", "%F7%BF%BF%BF", "\ud800"})
    void leavesWhatMakesNoSenseAsItStands(String text) {
        assertEquals(Map.of("a", text), Fragment.read("a=" + text));
    }

    @Property
    void comesBackAsItWas(@ForAll String name, @ForAll String text) {
        String sound = new String((name + "x").getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
        Map<String, String> entries = Map.of(sound, new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8));
        assertEquals(entries, Fragment.read("#" + Fragment.write(entries)));
    }

    @Property
    void agreesWithTheStandardEncoding(@ForAll String text) {
        String sound = new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
        String written = Fragment.write(Map.of("a", sound)).substring(2);
        assertEquals(sound, URLDecoder.decode(written, StandardCharsets.UTF_8));
        String standard = URLEncoder.encode(sound, StandardCharsets.UTF_8).replace("+", "%20");
        assertEquals(Map.of("a", sound), Fragment.read("a=" + standard));
    }
}
