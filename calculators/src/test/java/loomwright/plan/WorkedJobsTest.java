package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.circuit.Conductor;
import loomwright.circuit.Load;
import loomwright.circuit.Protection;
import loomwright.circuit.Switching;
import loomwright.protection.DeviceKind;
import org.junit.jupiter.api.Test;

/** Five jobs worked by hand from the published rows; the arithmetic stands beside each figure. Volts are rounded to a millivolt. */
class WorkedJobsTest {
    private Plan plan;

    private void plan(Asked asked) {
        plan = asked.plan();
        assertNotNull(plan.circuit(), () -> String.valueOf(plan.obstacle()));
    }

    private void device(String id, DeviceKind kind, double rating) {
        Protection device = (Protection) plan.circuit().node(id).figures();
        assertEquals(kind, device.device(), id);
        assertEquals(rating, device.rating().base(), 1e-9, id);
    }

    private void run(String id, String size, String insulation) {
        Conductor run = (Conductor) plan.circuit().node(id).figures();
        assertEquals(size, run.size().text().replace('\u00a0', ' '), id);
        assertEquals(insulation, run.around().insulation().key(), id);
    }

    private void drop(String load, double volts) {
        double found = plan.examination().solution().worstFor(plan.circuit().node(load)).drop(plan.circuit().node(load));
        assertEquals(volts, found, 0.001, load);
    }

    /**
     * A lamp of 12 W in a trailer, 4 m, by itself inside; lead-acid 60 Ah. 12 W ÷ 10.5 V = 1.143 A. For hours in the warm ÷ (0.8 · 0.85) = 1.681 A: 2 A.
     * Battery 3 mΩ · 100/60 = 5 mΩ; lead out and back 0.3 m · 17.24 mΩ/m ÷ 1 = 5.17 mΩ: 14.6 V ÷ 10.17 mΩ = 1435 A, above the 1000 A of a blade: class T,
     * 2 A. 1 mm² stands by 18 AWG, 10 A · 0.82 = 8.2 A. R = 8.3 m · 18.5 mΩ/m · 274.5/254.5 = 165.6 mΩ; 1.143 A and a little more: 0.193 V of 1.2 V.
     */
    @Test
    void aLamp() {
        plan(Asked.job("craft=trailer", "feed=battery", "chemistry=lead-acid", "capacity=60 Ah", "switched=no")
                .item("kind=lights", "draws=12 W", "hours=4 h", "route=4 m", "place=inside", "beside=alone", "sheath=single"));
        device("main-fuse", DeviceKind.CLASS_T, 2);
        run("run-1", "1 mm²", "t60");
        // 10.5 V, 0.1656 Ω, 12 W: U = (10.5 + √(110.25 − 4 · 12 · 0.1656)) ÷ 2 = 10.3072 V.
        drop("load-1", 0.193);
    }

    /**
     * Two USB outlets of 36 W in a camper, 5 m, inside beside one other cable, LiFePO4 100 Ah, box 1 m from the battery. Each 36 ÷ 0.8 = 45 W, ÷ 10.5 V =
     * 4.286 A, ÷ 0.68 = 6.303 A: 7.5 A. Together 8.571 A, ÷ 0.68 = 12.605 A: 15 A. Feed: 2.5 mm² carries 20 · 0.82 = 16.4 A and loses 2 m · 7.6 · 1.0786 = 16.39 mΩ · 8.571 A =
     * 0.1405 V, within half of 0.36 V; 2 mm² carries 12.3 A. Battery 2 mΩ and 0.3 m of 2.5 mm² · 6.897 mΩ/m: 14.6 V ÷ 4.07 mΩ = 3588 A at the main fuse: class T. At the box
     * 2.3 m: ÷ 17.86 mΩ = 817 A: a blade breaks it. Runs: 1.5 mm² carries 15 · 0.82 · 0.6 = 7.38 A, less than 7.5 A; 4 mm² loses 10 m · 4.71 · 1.0786 = 50.8 mΩ · 4.4 A =
     * 0.22 V, with the feed above 0.342 V; 6 mm² 33.87 mΩ · 4.4 A = 0.149 V: fits.
     */
    @Test
    void twoUsbOutlets() {
        plan(Asked.job("craft=trailer", "feed=battery", "chemistry=lifepo4", "capacity=100 Ah", "box-route=1 m", "switched=no")
                .item("kind=usb", "how-many=2", "draws=36 W", "hours=3 h", "route=5 m", "place=inside", "beside=few", "sheath=single"));
        device("main-fuse", DeviceKind.CLASS_T, 15);
        device("fuse-1", DeviceKind.BLADE, 7.5);
        device("fuse-2", DeviceKind.BLADE, 7.5);
        run("feed", "2.5 mm²", "t60");
        run("run-1", "6 mm²", "t60");
        run("run-2", "6 mm²", "t60");
        // Shared 2.3 m · 8.1973 mΩ/m = 18.854 mΩ, own 33.868 mΩ: I = 45 ÷ (10.5 − I · (0.037708 + 0.033868)) = 4.4155 A; 0.31604 V.
        drop("load-1", 0.316);
    }

    /**
     * A fridge: 5 A at 12 V, so it holds 60 W; 15 A at its start, sheet allows 15 A; 3 m, inside, by itself; lead-acid 100 Ah. 60 ÷ 10.5 = 5.714 A, ÷ 0.68 = 8.40 A.
     * Battery 3 mΩ, lead of 4 mm² 1.29 mΩ: 3400 A: class T, 10 A. 2.5 mm² (16.4 A) would lose 6.3 m · 8.197 = 51.6 mΩ · 5.9 A = 0.30 V of 0.342 V: fits. 2 mm² carries
     * 15 · 0.82 = 12.3 A and loses 6.3 m · 10.16 = 64.0 mΩ · 5.93 A = 0.380 V: too much.
     */
    @Test
    void aFridge() {
        plan(Asked.job("craft=trailer", "feed=battery", "chemistry=lead-acid", "capacity=100 Ah", "switched=no")
                .item("kind=fridge", "draws=5 A", "start=15 A", "most-device=15 A", "hours=24 h", "route=3 m", "place=inside", "beside=alone", "sheath=single"));
        device("main-fuse", DeviceKind.CLASS_T, 10);
        run("run-1", "2.5 mm²", "t60");
        // U = (10.5 + √(110.25 − 4 · 60 · 0.051643)) ÷ 2 = 10.1966 V.
        drop("load-1", 0.303);
        assertEquals(15, ((Load) plan.circuit().node("load-1").figures()).startCurrent().base(), 1e-9);
    }

    /**
     * A bilge pump of 4 A in a boat, 6 m through the engine space beside others, its sheet allows 7.5 A, short-circuit current of the battery 800 A by its maker; it shall have
     * a switch. 4 A for less than three hours, ÷ 0.85 = 4.706 A: 5 A. Battery 12.8 V ÷ 800 A = 16 mΩ: 14.6 V ÷ (16 + 0.3 · 17.24/4 = 1.29) mΩ = 844 A: a blade breaks it.
     * 3 % of 12 V: 0.342 V ÷ 4 A = 85.5 mΩ for 12 m and lead; at 50 °C · 284.5/254.5 = 1.1179: 6 mm² has 12 m · 3.510 = 42.1 mΩ, 4 mm² 12 m · 5.265 = 63.2 mΩ, 2.5 mm² 12 m ·
     * 8.496 = 101.9 mΩ. The way to the switch and back, 2 m inside at 40 °C, is of the same size: 4 m · 5.080 = 20.3 mΩ with 4 mm². So 4 mm²: (63.18 + 20.32 + 0.3 m · 5.080) mΩ ·
     * 4 A = 0.3401 V, within 0.342 V. It carries 45 · 0.85 · 0.6 = 22.95 A. Switch: a motor asks for twice 4 A: 8 A, so 10 A.
     */
    @Test
    void aBoatPump() {
        plan(Asked.job("craft=boat", "feed=battery", "chemistry=lead-acid", "capacity=80 Ah", "short-circuit-current=800 A", "switched=yes", "switch-route=2 m")
                .item("kind=bilge", "draws=4 A", "hours=1 h", "most-device=7.5 A", "route=6 m", "place=engine", "beside=few", "sheath=sheath"));
        device("main-fuse", DeviceKind.BLADE, 5);
        run("run-1", "4 mm²", "t105");
        run("run-to-switch", "4 mm²", "t105");
        drop("load-1", 0.340);
        assertEquals(10, ((Switching) plan.circuit().node("switch").figures()).continuousCurrent().base(), 1e-9);
        assertEquals(2, plan.asks().size(), "whether the pump stays live, and petrol or gas");
    }

    /**
     * An American trailer: lights of 24 W, 12 ft, and a radio of 5 A, 10 ft, on free ways of a panel of 30 A with 6 A on it, feed 8 AWG, 6 ft, 30 A; lead-acid with 1000 A by its
     * maker. Lights 24 ÷ 10.5 = 2.286 A, ÷ 0.68 = 3.36 A: 5 A blade. Radio 60 ÷ 10.5 = 5.714 A, ÷ 0.68 = 8.40 A: 10 A. Together 14.0 A within 0.8 · 30 = 24 A. Panel: battery
     * 12.8 mΩ + 2 · 1.979 m · 2.061 mΩ/m = 8.16 mΩ: 14.6 ÷ 20.96 mΩ = 697 A. Feed 2 · (1.829 + 0.15) m · 2.2635 mΩ/m = 8.959 mΩ (2.552 · 274.5/309.5). Radio 16 AWG carries
     * 15 · 0.82 = 12.3 A; 6.096 m · 14.519 = 88.5 mΩ · 5.9 A: too much. 14 AWG 6.096 m · 9.137 (10.302 · 0.88692) = 55.7 mΩ · 6 A = 0.33 V, with the feed too much. 12 AWG 6.096 m ·
     * 5.761 = 35.1 mΩ · 5.9 A = 0.207 V, with 0.129 V of the feed 0.336 V of 0.342 V.
     */
    @Test
    void anAmericanTrailer() {
        plan(Asked.job(
                        "craft=trailer", "cable=awg", "feed=panel", "free-ways=2", "panel-limit=30 A", "present-load=6 A", "feed-rating=30 A", "feed-size=8 AWG",
                        "feed-route=6 ft", "chemistry=lead-acid", "capacity=100 Ah", "short-circuit-current=1000 A", "switched=no")
                .item("kind=lights", "how-many=2", "draws=12 W", "hours=5 h", "route=12 ft", "place=inside", "beside=alone", "sheath=single")
                .item("kind=radio", "draws=5 A", "hours=3 h", "route=10 ft", "place=inside", "beside=alone", "sheath=single"));
        device("fuse-1", DeviceKind.BLADE, 5);
        device("fuse-2", DeviceKind.BLADE, 10);
        run("run-1", "16 AWG", "t60");
        run("run-2", "12 AWG", "t60");
        drop("load-2", 0.335);
    }

    @Test
    void whatStandsInTheWayIsNamed() {
        Plan outlet = Asked.job("feed=battery").item("kind=outlet", "draws=10 A", "most-device=10 A", "hours=8 h").plan();
        assertNull(outlet.circuit());
        assertEquals("most-device", outlet.obstacle().fieldKey());
        // Of 60 Ah lead-acid a plan may take half, 30 Ah; eight hours at 500 W ÷ 12 V = 41.7 A take 333 Ah.
        Plan heater = Asked.job("feed=battery", "chemistry=lead-acid", "capacity=60 Ah").item("kind=mat", "draws=500 W", "route=3 m").plan();
        assertEquals("draws", heater.obstacle().fieldKey());
        assertTrue(heater.obstacle().help().contains("may take 30\u00a0Ah"), heater.obstacle().help());
        Plan far = Asked.job("feed=battery").item("kind=fridge", "draws=8 A", "route=40 m").plan();
        assertEquals("route", far.obstacle().fieldKey());
    }
}
