package loomwright.workshop;

import java.util.ArrayList;
import java.util.List;

/**
 * What a day needs, from people, leaders and hours. Each count is a rule of <em>common practice</em>, said beside it.
 *
 * @param people who take part
 * @param leaders leaders and helpers who know the work
 * @param hours from the welcome to the end, breaks included
 */
public record DayPlan(int people, int leaders, int hours) {
    public static final int MOST_PEOPLE = 500;
    public static final int MOST_LEADERS = 100;
    /** What is taken if nobody says otherwise. */
    public static final DayPlan USUAL = new DayPlan(12, 2, 8);

    /** So many people can one leader see while something is live. */
    private static final int PEOPLE_OF_A_LEADER = 8;
    private static final int GROUPS_OF_A_BOARD = 3;
    private static final int CRIMPS = 5;
    private static final int BOARD_CABLE = 4;

    /** Groups of two; with an odd number one of them has three, for nobody works alone. */
    public int groups() {
        return Math.max(1, people / 2);
    }

    /** Demonstration boards. */
    public int boards() {
        return upTo(groups(), GROUPS_OF_A_BOARD);
    }

    /** Supplies on the tables, one for two groups side by side. */
    public int tableSupplies() {
        return upTo(groups(), 2);
    }

    /** Leaders that so many people need; never fewer than two, for one has to see what the other does. */
    public int leadersNeeded() {
        return Math.max(2, upTo(people, PEOPLE_OF_A_LEADER));
    }

    /** How many people can work at once with the leaders there are. */
    public int atOnce() {
        return leaders < 2 ? 0 : leaders * PEOPLE_OF_A_LEADER;
    }

    /** What is said of the leaders. */
    public String leading() {
        String rule = "One leader or helper for each " + PEOPLE_OF_A_LEADER + " people while something is live, and never fewer than two (common practice).";
        if (leaders >= leadersNeeded()) {
            return people + " people with " + leaders + (leaders == 1 ? " leader" : " leaders") + ": enough. " + rule;
        }
        String instead = leaders < 2
                ? "Find a second one, or let nothing be live: paper, offcuts and crimps only."
                : "Find " + (leadersNeeded() - leaders) + " more, or let at most " + atOnce() + " work at the boards at once, in " + upTo(people, atOnce())
                        + " turns, while the others do their sheets.";
        return people + " people need " + leadersNeeded() + " leaders; there " + (leaders == 1 ? "is 1" : "are " + leaders) + ". " + instead + " " + rule;
    }

    /** How the people sit and what feeds them. */
    public List<Item> room() {
        List<Item> items = new ArrayList<>();
        items.add(new Item(people % 2 == 0 || people == 1 ? "groups" : "groups, one of them of three", groups(), "", "two people each, nobody alone"));
        items.add(new Item("tables", groups(), "", "one a group"));
        items.add(new Item("floor", 4 * (people + leaders), "m²", "4 m² a person, tables included; what the hall allows comes first"));
        items.add(new Item("demonstration boards", boards(), "", "one for " + GROUPS_OF_A_BOARD + " groups"));
        items.add(new Item("supplies, 12 V, current-limited or with a fuse-link of 10 A or less at the terminal", tableSupplies() + boards(), "",
                "one for two groups side by side, and one on each board"));
        items.add(new Item("fuse-links for these supplies, 10 A", 2 * (tableSupplies() + boards()), "", "one in each supply and one spare"));
        items.add(new Item("mains sockets", upTo(tableSupplies() + boards(), 2), "", "one for two supplies"));
        return items;
    }

    /** For the safety of the room. */
    public List<Item> safety() {
        List<Item> items = new ArrayList<>();
        items.add(new Item("fire extinguishers that their label allows near live low-voltage equipment", inTheRoom(), "", "one for 20 people, leaders counted, by the door; the hall's own rule comes first"));
        items.add(new Item("fire blankets", inTheRoom(), "", "one for 20 people, leaders counted"));
        items.add(new Item("first-aid kits", inTheRoom(), "", "one for 20 people, leaders counted, by the door"));
        items.add(new Item("people who are trained in first aid", inTheRoom(), "", "one for 20 people, leaders counted, named at the welcome"));
        items.add(new Item("tiles or bricks for loads that get warm", boards() + upTo(groups(), 2), "", "one a board and one for two groups"));
        items.add(new Item("eye protection", people + leaders, "", "one a person, leaders included"));
        return items;
    }

    /** Tools to bring. */
    public List<Item> tools() {
        List<Item> items = new ArrayList<>();
        items.add(new Item("multimeter with leads, reads 0.1 mV d.c.", groups(), "", "one a group"));
        items.add(new Item("clamp meter for direct current", upTo(groups(), 3), "", "one for three groups"));
        held(items, Activity.AMPERES, new Item("in-line d.c. meter for USB, and one for 12 V", 2 * upTo(groups(), 6), "", "one of each for six groups"));
        items.add(new Item("wire stripper", groups(), "", "one a group"));
        items.add(new Item("ratchet crimp tool that fits the terminals you bought", upTo(groups(), 2), "", "one for two groups"));
        items.add(new Item("side cutter", groups(), "", "one a group"));
        held(items, Activity.OFFCUT, new Item("calliper that reads 0.01 mm", upTo(groups(), 2), "", "one for two groups"));
        held(items, Activity.OFFCUT, new Item("magnifier", upTo(groups(), 2), "", "one for two groups"));
        items.add(new Item("fine saw, vice and small file, one each", upTo(groups(), 6), "", "one set for six groups"));
        items.add(new Item("bucket with a hook, and a scale or a litre measure", upTo(groups(), 6), "", "one set for six groups"));
        items.add(new Item("string, and a rule of wood or plastic, for routes", groups(), "", "one a group"));
        items.add(new Item("calculator, or a phone with this site on it", people, "", "one a person"));
        items.add(new Item("pencil and a board to write on", people, "", "one a person"));
        return items;
    }

    /** Material to buy. */
    public List<Item> material() {
        List<Item> items = new ArrayList<>();
        int drop = rounded(BOARD_CABLE * boards() + groups(), 5);
        items.add(new Item("road-vehicle cable 2.5 mm², red", drop, "m", BOARD_CABLE + " m a board and 1 m a group, in fives"));
        items.add(new Item("road-vehicle cable 2.5 mm², black", drop, "m", "as much as red"));
        held(items, Activity.RELAY, new Item("road-vehicle cable 1 mm², for the trigger", rounded(upTo(people * 5, 6), 5), "m", "2.5 m a relay, in fives"));
        items.add(new Item("ring terminals for 2.5 mm², M6", rounded(upTo(people * CRIMPS * 4, 3), 10), "", CRIMPS + " a person and a third more, in tens"));
        items.add(new Item("blade terminals for 2.5 mm²", rounded(3 * people, 10), "", "3 a person, in tens"));
        items.add(new Item("blade fuse-links of each: 3 A, 5 A, 10 A, 15 A", rounded(groups() + boards(), 5), "", "one a group and one a board, in fives"));
        items.add(new Item("bolts M6 with nut and washers, for joints to measure", 2 * groups(), "", "two a group"));
        items.add(new Item("in-line fuse holders", groups(), "", "one a group"));
        held(items, Activity.RELAY, new Item("relays, 12 V, single changeover", upTo(people, 3), "", "one for three people"));
        items.add(new Item("lamps or heaters of 2 A to 5 A", groups(), "", "one a group"));
        held(items, Activity.OFFCUT, new Item("offcuts of several makes, jackets with print", 2 * groups(), "", "two a group"));
        items.add(new Item("boxes of labels, tape and cable ties", upTo(people, 12), "", "one for 12 people"));
        return items;
    }

    /** What the demonstration boards are made of, all of them together. */
    public List<Item> boardParts() {
        int boards = boards();
        List<Item> items = new ArrayList<>();
        items.add(new Item("boards of wood, about 60 cm by 90 cm, on feet", boards, "", "one a board"));
        items.add(new Item("main fuse-links of 10 A with covered holders, at the supply's terminal", boards, "", "one a board"));
        items.add(new Item("isolating switches within reach", boards, "", "one a board"));
        items.add(new Item("fuse panels of two ways or more", boards, "", "one a board"));
        items.add(new Item("switches, and a relay with its socket", boards, "", "one of each a board"));
        items.add(new Item("lamps or heaters of 2 A to 5 A, on tile", boards, "", "one a board"));
        items.add(new Item("joints that can be opened, to be made badly on purpose", 2 * boards, "", "two a board"));
        items.add(new Item("test points a probe can rest on", 6 * boards, "", "six a board"));
        return items;
    }

    /**
     * What is printed.
     *
     * @param pagesOfOne pages of one person's sheet
     * @param pagesOfTables pages of the tables
     * @param others pages of register, answers and workings
     */
    public List<Item> printing(int pagesOfOne, int pagesOfTables, int others) {
        List<Item> items = new ArrayList<>();
        items.add(new Item("pages of question sheets", people * pagesOfOne, "", pagesOfOne + " a person"));
        items.add(new Item("pages of tables", groups() * pagesOfTables, "", pagesOfTables + " a group"));
        items.add(new Item("pages for the leader: register, answers, workings", others, "", "once"));
        items.add(new Item("expected readings of the boards", boards(), "", "one a board"));
        return items;
    }

    /** So many of what there has to be one of for 20 people. */
    private int inTheRoom() {
        return upTo(people + leaders, 20);
    }

    /** Adds what only one of the activities needs, if the hours leave room for it. */
    private void held(List<Item> items, Activity activity, Item item) {
        for (Timetable.Line line : Timetable.of(hours)) {
            if (line.words().equals(activity.words)) {
                items.add(item);
            }
        }
    }

    private static int upTo(int number, int each) {
        return (number + each - 1) / each;
    }

    private static int rounded(int number, int step) {
        return upTo(number, step) * step;
    }
}
