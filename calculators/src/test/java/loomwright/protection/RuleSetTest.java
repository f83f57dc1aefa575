package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.circuit.Supply;
import loomwright.source.Standing;
import loomwright.worked.Trial;
import org.junit.jupiter.api.Test;

/** Which share of an ampacity a device may have, and which battery a fault is reckoned with. */
class RuleSetTest {
    /** 33 CFR 183.455(c)(1): 150 % of the current of Table 5, and of no other table. */
    @Test
    void oneRuleAllowsMoreThanTheAmpacityAndOnlyOfItsOwnTable() {
        assertEquals(1.5, RuleSet.US_33_CFR.share().base(), 1e-9);
        assertEquals(1.5, RuleSet.US_33_CFR.shareOf(true).base(), 1e-9);
        assertEquals(1, RuleSet.US_33_CFR.shareOf(false).base(), 1e-9);
        assertEquals("33-cfr-183", RuleSet.US_33_CFR.source().document().key());
        for (RuleSet other : RuleSet.values()) {
            if (other != RuleSet.US_33_CFR) {
                assertEquals(1, other.share().base(), 1e-9);
                assertEquals(Standing.COMMON_PRACTICE, other.source().standing());
            }
        }
        assertTrue(RuleSet.US_33_CFR.why(true).contains("above the ampacity, in circuits below 50 V"));
        assertTrue(RuleSet.US_33_CFR.why(false).contains("no higher than the ampacity"));
    }

    /** A LiFePO4 battery drives more than lead-acid: it is never reckoned with a lead-acid range, whatever stands in the form. */
    @Test
    void theFormsUsualBatteryFollowsTheChemistry() {
        double lead = lowest("lead-acid", "lead-acid-100-ah");
        double lithium = lowest("lifepo4", "lifepo4-100-ah");
        assertTrue(lithium < lead, lithium + " < " + lead);
        assertEquals(lithium, lowest("lifepo4", "lead-acid-100-ah"), 1e-12);
        assertEquals(lithium, lowest("lifepo4", "starting-60-ah"), 1e-12);
        assertEquals(lead, lowest("lead-acid", "lead-acid-100-ah"), 1e-12);
        assertEquals(lithium, lowest("lead-acid", "lifepo4-100-ah"), 1e-12, "what was chosen on purpose stays");
    }

    private static double lowest(String chemistry, String battery) {
        Map<String, String> texts = Map.of("chemistry", chemistry, "battery", battery, "capacity", "100 Ah");
        return Supply.of(Part.read("battery", PartKind.SUPPLY, "", "", "", "", texts).partOrRefuse()).resistance().low().base();
    }

    /** Two batteries side by side have half the resistance of one. */
    @Test
    void batteriesSideBySideShareTheirResistance() {
        List<String> one = List.of("battery=given", "battery-resistance-low=8 mΩ", "battery-resistance-high=20 mΩ");
        double single = Trial.of("fault-current", one.toArray(String[]::new)).value("battery-current-highest");
        double two = Trial.of("fault-current", one.get(0), one.get(1), one.get(2), "batteries-in-parallel=2").value("battery-current-highest");
        assertEquals(2 * single, two, 1e-6 * two);
    }
}
