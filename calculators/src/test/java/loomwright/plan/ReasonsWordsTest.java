package loomwright.plan;

import static loomwright.plan.Asked.made;
import static loomwright.plan.Asked.thing;
import static loomwright.plan.Asked.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.worked.Trial;
import org.junit.jupiter.api.Test;

/** What a reader is told of each choice, with the figures of the jobs that are worked by hand. */
class ReasonsWordsTest {
    private static Asked job(String... more) {
        return Asked.job(with(new String[] {"craft=trailer", "chemistry=lead-acid", "capacity=100 Ah", "short-circuit-current=800 A", "box-route=1 m"}, more));
    }

    /** The choice that begins so. */
    private static Chosen chosen(Plan plan, String what) {
        return plan.chosen().stream().filter(each -> plain(each.what()).startsWith(what)).findFirst().orElseThrow(() -> new AssertionError(plan.chosen().toString()));
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    private static void assertSays(Plan plan, String what, String partId, String why) {
        Chosen chosen = chosen(plan, what);
        assertEquals(partId, chosen.partId());
        assertTrue(plain(chosen.why()).contains(why), chosen.why());
    }

    /** The calculator behind a choice, and one of its answers. */
    private static void assertWorks(Plan plan, String what, String calculator, String answer, String text) {
        Chosen chosen = chosen(plan, what);
        assertEquals(calculator, chosen.working().calculatorKey());
        assertEquals(text, plain(Trial.of(calculator, chosen.working().carried()).working().result(answer).quantity().text(3)));
    }

    /**
     * Two USB outlets of 36 W, 5 m, as in the jobs worked by hand: 45 W ÷ 10.5 V = 4.29 A, ÷ 0.68 = 6.3 A; 6 mm² stands by 10 AWG, 40 A · 0.82 · 0.6 = 19.7 A; the feed of 2.5 mm²
     * carries 20 A · 0.82 = 16.4 A.
     */
    @Test
    void everyChoiceOfTwoOutletsIsSaidInTheOrderItWasMade() {
        Plan plan = made(Asked.job("craft=trailer", "feed=battery", "chemistry=lifepo4", "capacity=100 Ah", "box-route=1 m", "switched=no")
                .item("kind=usb", "how-many=2", "draws=36 W", "hours=3 h", "route=5 m", "place=inside", "beside=few", "sheath=single"));
        assertEquals(
                List.of(
                        "A circuit of its own from the battery", "USB outlet 1: up to 4.29 A", "Fuse of USB outlet 1: blade fuse-link of 7.5 A",
                        "Run to USB outlet 1: 6 mm², 5 m, insulation for 60 °C", "USB outlet 2: up to 4.29 A", "Fuse of USB outlet 2: blade fuse-link of 7.5 A",
                        "Run to USB outlet 2: 6 mm², 5 m, insulation for 60 °C", "Feed: 2.5 mm², 1 m", "New fuse box for at least 30 A", "Main fuse: class T fuse of 15 A",
                        "Kind of the first device: class T fuse", "First device within 0.15 m of the battery", "Isolating switch for at least 100 A"),
                plan.chosen().subList(0, 13).stream().map(each -> plain(each.what())).toList());
        assertSays(plan, "A circuit of its own", "main-fuse", "You asked for it");
        assertSays(plan, "USB outlet 1", "load-1", "draws most at the lowest voltage, 10.5 V, and its converter takes its share.");
        assertSays(plan, "Fuse of USB outlet 2", "fuse-2", "holds 4.29 A for hours in a warm place, which asks for 6.3 A.");
        assertSays(
                plan, "Run to USB outlet 1", "run-1",
                "It carries 19.7 A inside, along walls or floor, no less than its fuse-link, and loses no more than 3 % of 12 V with the feed; the next thinner one");
        assertSays(plan, "Feed:", "feed", "It carries 16.4 A, no less than the main fuse, and loses no more than half of what may be lost");
        assertSays(plan, "Kind of the first device", "main-fuse", "More may flow into a short circuit there than a blade fuse-link breaks.");
        assertSays(plan, "Battery: ", "battery", "of 80 Ah that a plan may take.");
        assertWorks(plan, "USB outlet 1", "device-current", "largest-current", "4.29 A");
        assertWorks(plan, "Fuse of USB outlet 1", "fuse-choice", "least-rating", "6.3 A");
        assertWorks(plan, "Run to USB outlet 1", "size-for-run", "chosen-size", "6 mm²");
        assertWorks(plan, "Feed:", "size-for-run", "chosen-size", "2.5 mm²");
        // 8.57 A ÷ 0.68
        assertWorks(plan, "Main fuse:", "fuse-choice", "least-rating", "12.6 A");
        assertEquals("breaking-capacity", chosen(plan, "Kind of the first device").working().calculatorKey());
        assertEquals("fuse-place", chosen(plan, "First device within").working().calculatorKey());
        assertEquals("battery-size", chosen(plan, "Battery: ").working().calculatorKey());
    }

    @Test
    void eachKindOfLoadIsSaidToDrawMostWhereItDoes() {
        Plan plan = made(job("feed=battery", "switched=no").item(thing("kind=mat", "draws=60 W")).item(thing("kind=pump", "draws=2 A")).item(thing("kind=radio", "draws=24 W")));
        // 60 W at 12 V are 2.4 Ω: 14.6 ÷ 2.4 = 6.08 A. 24 ÷ 10.5 = 2.29 A.
        assertSays(plan, "Heated mat: up to 6.08 A", "load-1", "draws most at the highest voltage, 14.6 V.");
        assertSays(plan, "Water pump: up to 2 A", "load-2", "and they are taken at every voltage.");
        assertSays(plan, "Radio: up to 2.29 A", "load-3", "draws most at the lowest voltage, 10.5 V.");
        assertSays(plan, "Fuse of Radio", "fuse-3", "holds 2.29 A in a warm place");
        // 24 W ask for 1 mm², the thinnest single conductor of ISO 10133.
        assertSays(plan, "Run to Radio: 1 mm²", "run-3", "thinner ones are not allowed.");
        assertSays(plan, "Kind of the first device: blade fuse-link", "main-fuse", "A blade fuse-link breaks the current of a short circuit there.");
    }

    @Test
    void whatIsNotKnownOfBatteryOrPanelIsTheReason() {
        Plan open = made(Asked.job("craft=trailer", "switched=no").item(thing("kind=radio", "draws=2 A")).item(thing("kind=radio", "draws=2 A")));
        assertSays(open, "A circuit of its own", "main-fuse", "Too little is known of what is there");
        assertSays(open, "Kind of the first device: class T", "main-fuse", "How much may flow into a short circuit is not known");
        assertSays(open, "Kind of the fuses in the box: class T", "fuse-1", "How much may flow into a short circuit is not known");
        assertSays(open, "Battery: its size was not said", "battery", "the working says how large a battery that asks for.");
        Plan full = made(job("feed=panel", "free-ways=0", "panel-limit=30 A", "present-load=6 A", "feed-rating=30 A", "feed-size=6 mm²", "feed-route=1 m", "switched=no")
                .item(thing("kind=radio", "draws=2 A")));
        assertSays(full, "A circuit of its own", "main-fuse", "it has 0 free ways, and 1 are needed");
    }

    /** 40 A · 0.82 = 32.8 A of 6 mm² hold a device of 30 A; 6 A are on it, and 60 W ÷ 10.5 V = 5.71 A more: 11.7 A of 30 A. */
    @Test
    void freeWaysAreReasonedWithTheRoomThatIsLeft() {
        Plan plan = made(job("feed=panel", "free-ways=2", "panel-limit=30 A", "present-load=6 A", "feed-rating=30 A", "feed-size=6 mm²", "feed-route=1 m", "switched=no")
                .item(thing("kind=radio", "draws=60 W")));
        assertSays(plan, "Free ways of the fuse panel", "fuse-box", "With 5.71 A more");
        assertWorks(plan, "Free ways", "panel-headroom", "current-after", "11.7 A");
        assertSays(plan, "Main fuse of the panel: class T of 30 A", "main-fuse", "else put class T of the same rating in its place.");
        assertEquals("breaking-capacity", chosen(plan, "Main fuse of the panel").working().calculatorKey());
        assertTrue(plan.chosen().stream().noneMatch(each -> each.what().startsWith("Feed:") || each.what().startsWith("Kind of the first")), plan.chosen().toString());
    }

    @Test
    void aSwitchIsByHandOrARelayAndTheReasonSaysWhy() {
        Plan byHand = made(job("feed=battery", "switched=yes", "switch-route=1 m").item(thing("kind=radio", "draws=2 A")));
        assertSays(byHand, "Switch: by hand, 6 A on direct current", "switch", "The way there and back, 1 m of 1 mm²");
        assertSays(byHand, "Run to Radio", "run-1", "with the feed and the way to its switch and back");
        Plan relay = made(job("feed=battery", "switched=yes", "switch-route=1 m").item(thing("kind=mat", "draws=20 A")));
        assertSays(relay, "Switch: relay of the 70 A class", "switch", "No switch by hand that is sold stands device and loads");
        assertSays(relay, "Switch: relay", "switch", "Its trigger has a fuse of 2 A and a small switch.");
        assertTrue(!plain(chosen(relay, "Run to Heated mat").why()).contains("the way to its switch"), chosen(relay, "Run to Heated mat").why());
        assertEquals("trigger-loop", chosen(relay, "Switch: relay").working().calculatorKey());
        // 5 A over 15 m: 30 m · 3.4 mΩ/m of 6 mm² alone lose 0.5 V of 0.36 V, and a thicker way fits no tab of a switch.
        Plan thick = made(job("feed=battery", "switched=yes", "switch-route=1 m")
                .item("kind=radio", "draws=4 A", "hours=0.5 h", "route=15 m", "place=inside", "beside=alone", "sheath=single"));
        assertSays(thick, "Switch: relay", "switch", "The way to a switch by hand and back would be too thick for its tabs");
        Plan own = made(job("feed=panel", "free-ways=4", "panel-limit=100 A", "present-load=0 A", "feed-rating=50 A", "feed-size=16 mm²", "feed-route=1 m", "switched=yes", "switch-route=1 m")
                .item(thing("kind=radio", "draws=2 A")).item(thing("kind=mat", "draws=20 A")));
        assertSays(own, "Switch of Radio: by hand", "switch-1", "It stands what its device lets through");
        assertSays(own, "Switch of Heated mat: relay", "switch-2", "No switch by hand");
        assertEquals("trigger-loop", chosen(own, "Switch of Heated mat").working().calculatorKey());
    }

    /**
     * Lead-acid 100 Ah, half of it: 50 Ah. A radio of 12 W ten hours: 120 Wh ÷ 12.8 V = 9.4 Ah a day and a little: five days. A mat of 100 W at 12 V has 1.44 Ω, at 12.8 V 8.89 A: eight hours
     * take 71.1 Ah, and 50 Ah last 0.7 days.
     */
    @Test
    void theDayIsHeldAgainstBatteryAndPanel() {
        String[] radio = {"kind=radio", "draws=12 W", "hours=10 h", "route=2 m", "place=inside", "beside=alone", "sheath=single"};
        assertTrue(chosen(made(job("switched=no").item(radio)), "Battery: enough for 5.").why().contains("that a plan may take."));
        assertTrue(chosen(made(job("switched=no", "days-wanted=7 d").item(radio)), "Battery: not enough for 7 d").why().contains("Use less, charge more"));
        String[] mat = {"kind=mat", "draws=100 W", "hours=8 h", "route=2 m", "place=inside", "beside=alone", "sheath=single"};
        assertTrue(chosen(made(job("switched=no").item(mat)), "Battery: not enough for 2 d").why().contains("so it lasts 0.7"));
        // 100 W · 3 h · 70 % = 210 Wh; 20 W give 42 Wh.
        assertSays(made(job("switched=no", "panel-power=100 W", "peak-sun-hours=3 h").item(radio)), "Solar panel: enough for such a day", "battery", "It gives 210 Wh a day");
        Plan little = made(job("switched=no", "panel-power=20 W", "peak-sun-hours=3 h").item(radio));
        assertSays(little, "Solar panel: not enough for such a day", "battery", "It gives 42 Wh a day");
        assertEquals("panel-yield", chosen(little, "Solar panel").working().calculatorKey());
        assertTrue(made(job("switched=no").item(radio)).chosen().stream().noneMatch(each -> each.what().startsWith("Solar")));
    }
}
