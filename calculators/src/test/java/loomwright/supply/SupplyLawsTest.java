package loomwright.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loomwright.worked.Trial;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class SupplyLawsTest {
    private static final double ROUNDED = 1e-6;

    @Property(tries = 200)
    void theRatedCurrentGivesTheRatedHours(
            @ForAll @DoubleRange(min = 1, max = 1000) double capacity,
            @ForAll @DoubleRange(min = 1, max = 100) double hours,
            @ForAll @DoubleRange(min = 1, max = 2) double exponent) {
        Trial trial = Trial.of(
                "peukert", "capacity=" + text(capacity), "rated-time=" + text(hours), "exponent=" + text(exponent),
                "load-current=" + text(capacity / hours));
        assertEquals(1, trial.value("run-time") / hours, ROUNDED);
        assertEquals(100, trial.value("delivered-share"), 100 * ROUNDED);
    }

    @Property(tries = 200)
    void aLargerCurrentRunsShorterAndNeverGivesMoreAmpereHours(
            @ForAll @DoubleRange(min = 0.1, max = 100) double current,
            @ForAll @DoubleRange(min = 1.01, max = 5) double more,
            @ForAll @DoubleRange(min = 1, max = 2) double exponent) {
        Trial slow = peukert(current, exponent);
        Trial fast = peukert(current * more, exponent);
        assertTrue(fast.value("run-time") < slow.value("run-time"));
        assertTrue(fast.value("delivered-charge") <= slow.value("delivered-charge") * (1 + ROUNDED));
        assertTrue(runTime(current * more).value("run-time") < runTime(current).value("run-time"));
    }

    /** At 1 A both forms say the same of the capacity at 1 A. */
    @Property(tries = 100)
    void theCapacityAtOneAmpereIsWhatOneAmpereDelivers(@ForAll @DoubleRange(min = 1, max = 1.5) double exponent) {
        Trial rated = peukert(1, exponent);
        assertEquals(1, rated.value("delivered-charge") / rated.value("one-ampere-capacity"), ROUNDED);
    }

    @Property(tries = 200)
    void energyInIsEnergyOutAndLosses(
            @ForAll @DoubleRange(min = 1, max = 500) double watts,
            @ForAll @DoubleRange(min = 0.1, max = 24) double hours,
            @ForAll @DoubleRange(min = 20, max = 100) double direct,
            @ForAll @DoubleRange(min = 20, max = 100) double inverter,
            @ForAll @DoubleRange(min = 0, max = 50) double standing) {
        Trial trial = Trial.of(
                "two-routes", "device-power=" + text(watts), "charging-hours=" + text(hours), "direct-efficiency=" + text(direct),
                "inverter-efficiency=" + text(inverter), "adapter-efficiency=" + text(direct), "inverter-standing=" + text(standing));
        double out = trial.value("device-energy");
        assertEquals(1, (out + trial.value("direct-lost")) / trial.value("direct-energy"), ROUNDED);
        assertEquals(1, (out + trial.value("inverter-lost")) / trial.value("inverter-energy"), ROUNDED);
        assertTrue(trial.value("direct-lost") >= -ROUNDED && trial.value("inverter-lost") >= -ROUNDED);
        assertTrue(trial.value("inverter-route-efficiency") <= 100 + ROUNDED);
        assertEquals(trial.value("inverter-energy") - trial.value("direct-energy"), trial.value("difference"), ROUNDED * trial.value("inverter-energy"));
    }

    @Property(tries = 200)
    void theDayIsTheSumOfItsLoads(
            @ForAll @DoubleRange(min = 0.1, max = 500) double watts,
            @ForAll @DoubleRange(min = 0.01, max = 50) double amperes,
            @ForAll @DoubleRange(min = 0, max = 24) double hours,
            @ForAll @DoubleRange(min = 0, max = 100) double duty) {
        Trial trial = Trial.of(
                "day-energy", "load-1-power=" + text(watts), "load-1-hours=" + text(hours), "load-5-current=" + text(amperes),
                "load-5-hours=" + text(24 - hours), "load-5-duty=" + text(duty), "standing-current=5 mA");
        double sum = trial.value("load-1-energy") + trial.value("load-5-energy") + trial.value("standing-energy");
        assertEquals(sum, trial.value("energy-per-day"), ROUNDED * sum);
        assertEquals(sum, 12 * trial.value("charge-per-day"), ROUNDED * sum);
        assertTrue(trial.value("average-current") <= trial.value("current-together") * (1 + ROUNDED));
    }

    /** Sizing a battery and running it down are the same sum, read two ways. */
    @Property(tries = 200)
    void aBatterySizedForADayLastsADay(
            @ForAll @DoubleRange(min = 10, max = 5000) double energy, @ForAll @DoubleRange(min = 20, max = 100) double depth) {
        Trial size = Trial.of("battery-size", "energy-per-day=" + text(energy), "usable-depth=" + text(depth));
        Trial run = Trial.of(
                "run-time", "capacity=" + text(size.value("capacity")), "usable-depth=" + text(depth), "load-current=" + text(energy / 12 / 24));
        assertEquals(24, run.value("run-time"), 24 * ROUNDED);
    }

    @Property(tries = 200)
    void thePanelNeededHasNothingLeftOver(
            @ForAll @DoubleRange(min = 1, max = 5000) double energy,
            @ForAll @DoubleRange(min = 0.5, max = 10) double sun,
            @ForAll @DoubleRange(min = 10, max = 100) double efficiency) {
        double needed = Trial.of(
                        "panel-yield", "panel-power=1", "peak-sun-hours=" + text(sun), "efficiency=" + text(efficiency),
                        "energy-per-day=" + text(energy))
                .value("panel-needed");
        if (needed < 1 || needed > 20_000) {
            return;
        }
        Trial trial = Trial.of(
                "panel-yield", "panel-power=" + text(needed), "peak-sun-hours=" + text(sun), "efficiency=" + text(efficiency),
                "energy-per-day=" + text(energy));
        assertEquals(0, trial.value("balance"), energy * ROUNDED);
    }

    @Property(tries = 200)
    void theStateOfChargeLiesBetweenItsRows(@ForAll @DoubleRange(min = 12.15, max = 12.65) double voltage) {
        for (String table : new String[] {"bci", "magazine"}) {
            Trial trial = Trial.of("state-of-charge", "voltage=" + text(voltage), "rest-time=10 h", "table=" + table);
            assertTrue(trial.value("charge-at-least") <= trial.value("charge-at-most"));
            assertTrue(trial.value("row-voltage-below") <= voltage + ROUNDED);
            assertTrue(trial.value("row-voltage-above") >= voltage - ROUNDED);
        }
    }

    @Property(tries = 200)
    void headroomFallsByTheNewLoad(
            @ForAll @DoubleRange(min = 0.1, max = 50) double present,
            @ForAll @DoubleRange(min = 0.1, max = 50) double added,
            @ForAll @DoubleRange(min = 1, max = 100) double diversity) {
        Trial trial = Trial.of(
                "panel-headroom", "way-1-current=" + text(present), "way-2-current=" + text(present), "diversity=" + text(diversity),
                "new-current=" + text(added), "panel-limit=60 A", "feed-fuse=50 A");
        assertEquals(added, trial.value("headroom-now") - trial.value("headroom-after"), ROUNDED * 100);
        assertEquals(40, trial.value("headroom-after") + trial.value("current-after"), ROUNDED * 100);
        assertTrue(trial.value("current-now") <= 2 * present + ROUNDED);
    }

    private static Trial peukert(double current, double exponent) {
        return Trial.of("peukert", "capacity=100 Ah", "exponent=" + text(exponent), "load-current=" + text(current));
    }

    private static Trial runTime(double current) {
        return Trial.of("run-time", "capacity=100 Ah", "load-current=" + text(current));
    }

    private static String text(double number) {
        return String.format(Locale.ROOT, "%.9f", number);
    }
}
