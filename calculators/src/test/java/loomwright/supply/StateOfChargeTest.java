package loomwright.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StateOfChargeTest {
    private static Trial at(String voltage, String... more) {
        String[] entries = new String[more.length + 2];
        entries[0] = "voltage=" + voltage;
        entries[1] = more.length > 0 && more[0].startsWith("rest-time") ? "kind=flooded" : "rest-time=8 h";
        System.arraycopy(more, 0, entries, 2, more.length);
        return Trial.of("state-of-charge", entries);
    }

    @Test
    void answersWithTheTwoRows() {
        Trial trial = at("12.35 V");
        assertEquals(50, trial.value("charge-at-least"), 1e-9);
        assertEquals(75, trial.value("charge-at-most"), 1e-9);
        assertEquals(12.24, trial.value("row-voltage-below"), 1e-9);
        assertEquals(12.45, trial.value("row-voltage-above"), 1e-9);
        assertFalse(trial.answers("charge-left"));
    }

    @Test
    void countsAmpereHoursOnTheCarefulSide() {
        Trial trial = at("12.5 V", "capacity=80 Ah");
        assertEquals(60, trial.value("charge-left"), 1e-9);
        assertEquals(20, trial.value("deficit"), 1e-9);
        assertEquals(Map.of("deficit", "20\u00a0Ah", "chemistry", "lead-acid"), trial.working().nextQuestions().get(0).carried());
        assertTrue(at("12.5 V").working().nextQuestions().isEmpty());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            bci | 12.66 V | voltage: Voltage at rest is 12.66 V, above the full row of this table, 12.65 V: disconnect charger and panel, let the battery rest for 8 h and measure again
            bci | 11.88 V | voltage: Voltage at rest is 11.88 V, below the last row of this table, 11.89 V: the battery is flat, or a cell has failed. Charge it and have it tested
            magazine | 12.14 V | voltage: Voltage at rest is 12.14 V, below the last row of this table, 12.15 V: choose a table with more rows
            """)
    void refusesOutsideTheTable(String table, String voltage, String refusal) {
        assertEquals(refusal, at(voltage, "table=" + table).refusal().replace('\u00a0', ' '));
    }

    @Test
    void refusesWhatTheTablesAreNotFor() {
        assertTrue(at("13.2 V", "kind=lifepo4").refusal().startsWith("kind: Kind of battery is LiFePO4"));
        assertTrue(at("12.6 V", "kind=gel-or-agm").refusal().startsWith("kind: Kind of battery is gel or AGM"));
    }

    @Test
    void wantsEightHoursOfRest() {
        assertEquals(Verdict.STOP, at("12.4 V", "rest-time=7.9 h").finding("The rest of the battery").verdict());
        assertEquals(Verdict.PASSED, at("12.4 V", "rest-time=480 min").finding("The rest of the battery").verdict());
        assertEquals(8, at("12.4 V").finding("The rest of the battery").limit().value(), 1e-9);
    }

    @Test
    void tellsWhatTheOtherTablesSay() {
        Trial trial = at("12.3 V");
        assertEquals(Verdict.PASSED, at("12.5 V").finding("The table of a magazine puts 12.5\u00a0V between 75\u00a0% and 100\u00a0%.").verdict());
        assertEquals(Verdict.CAUTION, trial.finding("The table of a magazine puts 12.3\u00a0V at 50\u00a0%.").verdict());
        assertFalse(trial.hasFinding("credited to BCI"));
        assertTrue(at("12.1 V").hasFinding("The table of a magazine puts 12.1\u00a0V below its last row, 12.15\u00a0V."));
        assertTrue(at("12.66 V", "table=magazine").hasFinding("The table credited to BCI puts 12.66\u00a0V above its full row, 12.65\u00a0V."));
    }

    @Test
    void warnsBelowThePlannedDepth() {
        assertEquals(Verdict.PASSED, at("12.24 V").finding("a depth of 50").verdict());
        assertEquals(Verdict.CAUTION, at("12.23 V").finding("a depth of 50").verdict());
        assertEquals(50, at("12.23 V").finding("a depth of 50").limit().value(), 1e-9);
    }

    @Test
    void warnsOfFrozenAcid() {
        assertEquals(Verdict.PASSED, at("12.3 V", "temperature=-34.9 °C").finding("freezing point").verdict());
        assertEquals(Verdict.STOP, at("12.3 V", "temperature=-35.1 °C").finding("freezing point").verdict());
        assertEquals(Verdict.NOT_KNOWN, at("11.9 V", "temperature=5 °C").finding("no published freezing point").verdict());
        assertFalse(at("12.3 V").hasFinding("freezing"));
    }

    @Test
    void recognisesEverySlip() {
        // 12.5 ÷ 12.65; 75 + 25 × 0.05 ÷ 0.20 = 81.25; 1 − 0.75
        Trial trial = at("12.5 V", "capacity=80 Ah");
        assertEquals("share-of-the-full-voltage", at("12.5 V").slipBehind("charge-at-least", "98.8 %"));
        assertEquals("straight-line-between-the-rows", trial.slipBehind("charge-at-least", "81.25 %"));
        assertEquals("what-is-gone-for-what-is-left", trial.slipBehind("charge-at-least", "25 %"));
        // at 12.25 V BCI has the row of 50 %, the magazine that of 25 %
        assertEquals("row-of-another-table", at("12.25 V").slipBehind("charge-at-least", "25 %"));
        assertEquals("left-for-put-back", trial.slipBehind("deficit", "60 Ah"));
        assertEquals("row-above", trial.slipBehind("charge-at-least", "100 %"));
    }

    @Test
    void knowsNoStraightLineOnARow() {
        assertTrue(at("12.45 V").working().slips().stream().noneMatch(slip -> slip.key().equals("straight-line-between-the-rows")));
    }
}
