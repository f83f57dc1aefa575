package loomwright.plan;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Entries;
import loomwright.worked.EntriesRead;
import loomwright.worked.EntryFault;

/**
 * What was answered, read and checked: once for the job, and once for each thing that is fitted.
 *
 * @param job by the fields of {@link PlanFields#JOB}
 * @param items by the fields of {@link PlanFields#ITEM}
 */
public record Answers(Entries job, List<Entries> items) {
    /** As many lines as fit a page; more are several jobs. */
    public static final int MOST_ITEMS = 12;

    /** The place of the job among places; things count from 0. */
    public static final int JOB = -1;

    /**
     * Why an answer cannot be used.
     *
     * @param item the thing, counted from 0, or {@link #JOB}
     */
    public record Fault(int item, String fieldKey, String message) {}

    /**
     * What came of reading.
     *
     * @param answers null if there are faults
     */
    public record Read(Answers answers, List<Fault> faults) {}

    /**
     * Reads texts as they were typed; an empty one is a question left open.
     *
     * @param job in the order of {@link PlanFields#JOB}
     * @param items for each thing, in the order of {@link PlanFields#ITEM}
     */
    public static Read read(List<String> job, List<List<String>> items) {
        List<Fault> faults = new ArrayList<>();
        EntriesRead jobRead = EntriesRead.of(PlanFields.JOB, job);
        add(faults, JOB, jobRead.faults());
        List<Entries> read = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            EntriesRead one = EntriesRead.of(PlanFields.ITEM, items.get(i));
            add(faults, i, one.faults());
            read.add(one.entries());
            if (one.faults().isEmpty()) {
                addUsb(faults, i, one.entries());
            }
        }
        if (items.isEmpty()) {
            faults.add(new Fault(JOB, "kind", "Nothing is fitted yet: add the first thing"));
        } else if (items.size() > MOST_ITEMS) {
            faults.add(new Fault(JOB, "kind", "A job may have " + MOST_ITEMS + " lines, this one has more: make two jobs of it"));
        }
        return new Read(faults.isEmpty() ? new Answers(jobRead.entries(), List.copyOf(read)) : null, List.copyOf(faults));
    }

    private static void add(List<Fault> faults, int item, List<EntryFault> found) {
        for (EntryFault fault : found) {
            faults.add(new Fault(item, fault.fieldKey(), fault.message()));
        }
    }

    /** Amperes on a USB port are amperes at 5 V or more, never those in the cable. */
    private static void addUsb(List<Fault> faults, int item, Entries entries) {
        Quantity draws = entries.quantity("draws");
        if (draws != null && entries.choice("kind").equals("usb") && draws.unit().dimension().equals(Units.AMPERE.dimension())) {
            faults.add(new Fault(
                    item, "draws", "What does one of them take? is in amperes, and amperes at a USB port are not those at 12 V: enter the watts of "
                            + "all its ports together, 5 V times amperes where the label gives no watts"));
        }
    }
}
