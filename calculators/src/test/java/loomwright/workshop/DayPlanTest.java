package loomwright.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A day for any number of people; expected figures worked by hand from the rule that stands beside each. */
class DayPlanTest {
    private static int count(List<Item> items, String name) {
        return items.stream().filter(item -> item.name().startsWith(name)).findFirst().orElseThrow().count();
    }

    /** 7 people: two pairs and a group of three. 60 people: 30 pairs, 10 boards, 15 supplies on the tables and 10 on boards. */
    @ParameterizedTest
    @CsvSource({"1, 1, 1, 2, 2", "7, 3, 1, 3, 2", "12, 6, 2, 5, 2", "20, 10, 4, 9, 3", "60, 30, 10, 25, 8"})
    void groupsBoardsSuppliesAndLeadersFollowFromThePeople(int people, int groups, int boards, int supplies, int leaders) {
        DayPlan plan = new DayPlan(people, 2, 8);
        assertEquals(groups, plan.groups());
        assertEquals(boards, plan.boards());
        assertEquals(supplies, count(plan.room(), "supplies"));
        assertEquals(2 * supplies, count(plan.room(), "fuse-links for these"));
        assertEquals(leaders, plan.leadersNeeded());
    }

    /** 20 people: 100 crimps and a third more are 134, in tens 140; 16 m on four boards and 10 m for ten groups are 26, in fives 30. */
    @ParameterizedTest
    @CsvSource({"7, 50, 10, 3, 3, 3, 9", "12, 80, 15, 6, 4, 3, 14", "20, 140, 30, 10, 7, 5, 22", "60, 400, 70, 30, 20, 15, 62"})
    void toolsAndMaterialFollow(int people, int rings, int cable, int meters, int relays, int crimpTools, int eyes) {
        DayPlan plan = new DayPlan(people, 2, 8);
        assertEquals(rings, count(plan.material(), "ring terminals"));
        assertEquals(cable, count(plan.material(), "road-vehicle cable 2.5 mm², red"));
        assertEquals(meters, count(plan.tools(), "multimeter"));
        assertEquals(relays, count(plan.material(), "relays"));
        assertEquals(people == 7 ? 2 : crimpTools, count(plan.tools(), "ratchet crimp tool"));
        assertEquals(eyes, count(plan.safety(), "eye protection"));
    }

    @ParameterizedTest
    @CsvSource({"7, 2, 1", "18, 2, 1", "19, 2, 2", "20, 3, 2", "60, 8, 4"})
    void anExtinguisherAndAKitForTwentyPeopleLeadersCounted(int people, int leaders, int each) {
        assertEquals(each, count(new DayPlan(people, leaders, 8).safety(), "fire extinguishers"));
        assertEquals(each, count(new DayPlan(people, leaders, 8).safety(), "first-aid kits"));
    }

    /** 10 groups and 4 boards are 14, in fives 15. */
    @Test
    void everyHolderGetsItsFuseLinks() {
        assertEquals(15, count(new DayPlan(20, 3, 8).material(), "blade fuse-links"));
    }

    /** Three hours have no relay, no offcuts and no chargers to measure, so nobody buys for them. */
    @Test
    void nothingIsBoughtForWhatIsNotHeld() {
        List<String> longDay = names(new DayPlan(20, 3, 8));
        List<String> shortDay = names(new DayPlan(20, 3, 3));
        List<String> onlyLong = longDay.stream().filter(name -> !shortDay.contains(name)).toList();
        assertEquals(
                List.of("in-line d.c. meter for USB, and one for 12 V", "calliper that reads 0.01 mm", "magnifier", "road-vehicle cable 1 mm², for the trigger",
                        "relays, 12 V, single changeover", "offcuts of several makes, jackets with print"),
                onlyLong);
        assertTrue(longDay.containsAll(shortDay));
    }

    private static List<Integer> counts(List<Item> items) {
        return items.stream().map(Item::count).toList();
    }

    /**
     * 20 people and 3 leaders: 10 groups, 4 boards, 5 supplies on the tables and 4 on the boards; 23 · 4 m². 23 are two times 20. A relay for three, its trigger 2.5 m: 17 m, in fives
     * 20. Tiles: 4 and 5.
     */
    @Test
    void everyCountOfADayForTwentyFollowsFromItsRule() {
        DayPlan plan = new DayPlan(20, 3, 8);
        assertEquals(List.of(10, 10, 92, 4, 9, 18, 5), counts(plan.room()));
        assertEquals("92\u00a0m²", plan.room().get(2).amount());
        assertEquals("4", plan.room().get(3).amount());
        assertEquals(List.of(2, 2, 2, 2, 9, 23), counts(plan.safety()));
        assertEquals(List.of(10, 4, 4, 10, 5, 10, 5, 5, 2, 2, 10, 20, 20), counts(plan.tools()));
        assertEquals(List.of(30, 30, 20, 140, 60, 15, 20, 10, 7, 10, 20, 2), counts(plan.material()));
        assertEquals(List.of(4, 4, 4, 4, 4, 4, 8, 24), counts(plan.boardParts()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"1; groups", "7; groups, one of them of three", "12; groups"})
    void anOddNumberMakesOneGroupOfThree(int people, String name) {
        assertEquals(name, new DayPlan(people, 2, 8).room().get(0).name());
    }

    private static List<String> names(DayPlan plan) {
        return java.util.stream.Stream.concat(plan.tools().stream(), plan.material().stream()).map(Item::name).toList();
    }

    @Test
    void tooFewLeadersAreSaidWithWhatToDo() {
        assertTrue(new DayPlan(12, 2, 8).leading().startsWith("12 people with 2 leaders: enough."));
        assertTrue(new DayPlan(20, 2, 8).leading().startsWith(
                "20 people need 3 leaders; there are 2. Find 1 more, or let at most 16 work at the boards at once, in 2 turns"), new DayPlan(20, 2, 8).leading());
        assertTrue(new DayPlan(7, 1, 8).leading().startsWith("7 people need 2 leaders; there is 1. Find a second one, or let nothing be live"));
    }

    @Test
    void sheetsAreCountedForPeopleAndTablesForGroups() {
        List<Item> printed = new DayPlan(20, 3, 8).printing(3, 1, 28);
        assertEquals(List.of(60, 10, 28, 4), printed.stream().map(Item::count).toList());
    }

    /** The least of what may not be left out makes 165 minutes; with a break of 15 that is three hours to the minute. */
    @Test
    void threeHoursHoldWhatMayNotBeLeftOut() {
        List<Timetable.Line> lines = Timetable.of(3);
        assertEquals(
                List.of("09:00 10", "09:10 20", "09:30 30", "10:00 25", "10:25 15", "10:40 35", "11:15 35", "11:50 10"),
                lines.stream().map(line -> line.time() + " " + line.minutes()).toList());
        assertTrue(lines.get(1).words().startsWith("What is yours to do"));
        assertTrue(lines.stream().anyMatch(line -> line.lesson().equals("proving-it")));
    }

    /** The whole day: 400 minutes of work and 80 of breaks. */
    @Test
    void eightHoursHoldEverythingAsLongAsItUsuallyTakes() {
        List<Timetable.Line> lines = Timetable.of(8);
        assertEquals(
                List.of(10, 30, 40, 15, 30, 50, 40, 50, 25, 40, 55, 15, 50, 20, 10), lines.stream().map(Timetable.Line::minutes).toList());
        assertEquals("16:50", lines.get(lines.size() - 1).time());
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 5, 6, 7, 8, 9})
    void everyDayIsFullAndItsLinesFollowEachOther(int hours) {
        List<Timetable.Line> lines = Timetable.of(hours);
        int at = 9 * 60;
        for (Timetable.Line line : lines) {
            assertEquals(at, line.from());
            assertTrue(line.minutes() >= 5);
            at += line.minutes();
        }
        assertEquals((9 + hours) * 60, at);
        assertTrue(lines.stream().anyMatch(line -> line.lesson().equals("what-can-hurt-you")), "safety is never left out");
        assertTrue(lines.get(lines.size() - 1).words().startsWith("Supplies off"));
    }
}
