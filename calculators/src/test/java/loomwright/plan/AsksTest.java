package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What no rule decides is asked of the person, and nothing that does not concern the job. */
class AsksTest {
    private static final String BILGE = "Shall the bilge pump stay live";
    private static final String BATTERY = "Which battery is it?";
    private static final String PETROL = "a petrol engine, or gas on board?";
    private static final String LIGHTS = "Which navigation lights";
    private static final String SOLAR = "The run and the fuse-link of the solar controller";

    private static List<String> asks(String kind, String... job) {
        Plan plan = Asked.job(job).item("kind=" + kind, "route=3 m", "place=inside", "beside=alone").plan();
        assertTrue(plan.circuit() != null, () -> plan.obstacle().toString());
        return plan.asks();
    }

    private static void assertAsks(List<String> asks, String... openings) {
        assertEquals(openings.length, asks.size(), asks.toString());
        for (int i = 0; i < openings.length; i++) {
            assertTrue(asks.get(i).contains(openings[i]), asks.get(i));
        }
    }

    @Test
    void eachIsAskedWhereItMattersAndNowhereElse() {
        assertAsks(asks("radio", "craft=trailer", "short-circuit-current=800 A"));
        assertAsks(asks("bilge", "craft=trailer", "short-circuit-current=800 A"), BILGE);
        assertAsks(asks("navigation", "craft=trailer", "short-circuit-current=800 A"), LIGHTS);
        assertAsks(asks("radio", "craft=trailer", "short-circuit-current=800 A", "panel-power=50 W"), SOLAR);
    }

    @Test
    void aCraftThatNobodyNamedMayHavePetrolOrGasOnBoard() {
        assertAsks(asks("radio", "craft=boat", "short-circuit-current=800 A"), "Has the boat a petrol engine, or gas on board?");
        List<String> unknown = asks("radio", "craft=not-known", "short-circuit-current=800 A");
        assertAsks(unknown, PETROL);
        assertTrue(unknown.get(0).startsWith("Has the craft "), unknown.get(0));
    }

    /** A known battery asks for no label, even if its first fuse is of the kind that breaks most; one behind which a blade breaks it neither. */
    @Test
    void theBatteryIsAskedForWhereAnswersWouldMakeThePartsPlainer() {
        assertAsks(asks("radio", "craft=trailer", "chemistry=lead-acid", "capacity=60 Ah"));
        assertAsks(asks("radio", "craft=trailer"), BATTERY);
    }
}
