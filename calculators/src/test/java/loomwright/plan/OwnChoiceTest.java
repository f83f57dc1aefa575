package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loomwright.circuit.Conductor;
import loomwright.circuit.Protection;
import loomwright.protection.DeviceKind;
import org.junit.jupiter.api.Test;

/** Two ways of choosing come to the same circuit. */
class OwnChoiceTest {
    private static final int JOBS = Integer.getInteger("plan.answers", 1500);
    private static final List<String> KINDS = List.of("lights", "fan", "radio", "mat", "outlet", "usb");

    @Test
    void theSameCircuitAsByTryingEverySizeThatIsSold() {
        int circuits = 0;
        for (long seed = 0; seed < JOBS; seed++) {
            circuits += agrees(new Random(seed * 7919 + 1), seed) ? 1 : 0;
        }
        assertTrue(circuits > JOBS / 2, circuits + " of " + JOBS + " jobs had a circuit");
    }

    private static boolean agrees(Random random, long seed) {
        boolean gauge = random.nextBoolean();
        int amperes = List.of(300, 900, 1500, 3000, 8000).get(random.nextInt(5));
        double box = (5 + random.nextInt(50)) / 10.;
        Asked asked = Asked.job(
                "feed=battery", "cable=" + (gauge ? "awg" : "mm2"), "chemistry=lead-acid", "capacity=100 Ah", "short-circuit-current=" + amperes + " A",
                "box-route=" + box + " m", "switched=no");
        List<OwnChoice.Load> loads = new ArrayList<>();
        int count = 1 + random.nextInt(random.nextBoolean() ? 1 : 5);
        for (int i = 0; i < count; i++) {
            addLoad(random, asked, loads);
        }
        OwnChoice.Found found = new OwnChoice(loads, gauge, amperes, box).find();
        Plan plan = asked.plan();
        String which = "seed " + seed + ": " + asked + "\n" + found + "\n" + plan.circuit() + "\n" + plan.obstacle();
        assertEquals(found == null, plan.circuit() == null, which);
        if (found != null) {
            compare(found, plan, loads.size(), which);
        }
        return found != null;
    }

    private static void addLoad(Random random, Asked asked, List<OwnChoice.Load> loads) {
        String kind = KINDS.get(random.nextInt(KINDS.size()));
        double watts = List.of(3., 10., 25., 40., 60., 90., 140.).get(random.nextInt(7));
        int hours = random.nextInt(6);
        double metres = (5 + random.nextInt(120)) / 10.;
        String place = List.of("inside", "roof", "engine").get(random.nextInt(3));
        String beside = List.of("alone", "few", "many").get(random.nextInt(3));
        asked.item("kind=" + kind, "draws=" + watts + " W", "hours=" + hours + " h", "start=0.1 A", "route=" + metres + " m", "place=" + place,
                "beside=" + beside, "sheath=single");
        double share = kind.equals("lights") || kind.equals("fan") || kind.equals("mat") ? 0.1 : 0.03;
        boolean mat = kind.equals("mat");
        // A USB outlet passes on 80 % of what it takes; a heater takes its watts at 12 V.
        double held = mat ? 0 : kind.equals("usb") ? watts / 0.8 : watts;
        loads.add(new OwnChoice.Load(held, 0, mat ? watts / 144 : 0, hours >= 3, share, metres, place, beside));
    }

    private static void compare(OwnChoice.Found found, Plan plan, int loads, String which) {
        for (int i = 0; i < loads; i++) {
            Protection device = (Protection) plan.circuit().node(loads == 1 ? "main-fuse" : "fuse-" + (i + 1)).figures();
            assertEquals(found.ratings().get(i), device.rating().base(), 1e-9, which);
            assertEquals(found.waysBlade() ? DeviceKind.BLADE : DeviceKind.CLASS_T, device.device(), which);
            Conductor run = (Conductor) plan.circuit().node("run-" + (i + 1)).figures();
            assertEquals(found.sizes().get(i).text(), run.size().text().replace('\u00a0', ' '), which);
        }
        if (loads > 1) {
            Protection main = (Protection) plan.circuit().node("main-fuse").figures();
            assertEquals(found.main(), main.rating().base(), 1e-9, which);
            assertEquals(found.mainBlade() ? DeviceKind.BLADE : DeviceKind.CLASS_T, main.device(), which);
            assertEquals(found.feed().text(), ((Conductor) plan.circuit().node("feed").figures()).size().text().replace('\u00a0', ' '), which);
        }
        assertNotNull(plan.examination());
    }
}
