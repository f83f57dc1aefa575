package loomwright.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import loomwright.worked.Trial;
import org.junit.jupiter.api.Test;

/** Links that were handed on before a field got another key. */
class FormerEntriesTest {
    @Test
    void aLinkOfTheFirstVersionKeepsTheWarmthOfItsFuseLink() {
        Map<String, String> now = FormerEntries.now("fuse-choice", Fragment.read(
                "#ambient=65%20%C2%B0C&continuous=no&design-current=34%20A&engine-space=no&fuse-type=large-blade&insulation-temperature=t105&rule-set=33-cfr-183&size=8%20AWG"));
        assertEquals("65 °C", now.get("fuse-ambient"));
        assertEquals("33-cfr-183", now.get("fuse-rule"));
        assertEquals(null, now.get("ambient"));
        assertEquals(null, now.get("rule-set"));
        // The sheet: a 40 A link carries 34 A at 65 °C.
        assertEquals(40, Trial.of("fuse-choice", now).value("least-rating"), 1e-9);
    }

    @Test
    void aLinkOfTodayKeepsTheWarmthOfItsConductor() {
        Map<String, String> today = Map.of("ambient", "50 °C", "fuse-ambient", "20 °C", "fuse-type", "blade", "rule-set", "bs-7671-cord", "size", "2.5 mm²");
        assertEquals(today, FormerEntries.now("fuse-choice", today));
        Map<String, String> short1 = Map.of("ambient", "50 °C", "size", "2.5 mm²", "rule-set", "33-cfr-183");
        assertEquals(short1, FormerEntries.now("fuse-choice", short1));
    }

    @Test
    void theRuleForTheHighestRatingIsFoundUnderItsFormerKey() {
        assertEquals(Map.of("fuse-rule", "conductor-ampacity"), FormerEntries.now("fuse-choice", Map.of("rule-set", "conductor-ampacity")));
        assertEquals(Map.of("fuse-rule", "33-cfr-183"), FormerEntries.now("panel-headroom", Map.of("rule-set", "33-cfr-183")));
        assertEquals(Map.of("ambient", "50 °C", "rule-set", "33-cfr-183"), FormerEntries.now("ampacity", Map.of("ambient", "50 °C", "rule-set", "33-cfr-183")));
    }
}
