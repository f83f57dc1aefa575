package loomwright.plan;

import java.util.HashSet;
import java.util.Set;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;

/**
 * Chooses in the order of a fitter: device of each branch, its conductor, feed and main device likewise, switch. Each step takes the least that is
 * sold and passes; {@link Mending} takes a step again if the examination says so.
 */
final class Sizing {
    /** Half of what may be lost is left for the runs behind the feed. */
    static final double SHARE_OF_FEED = 0.5;

    /** A drop nearer than this to its limit is a caution. */
    static final double ROOM = 0.95;

    private final Job job;
    private final Draft draft;
    private int feedSteps;
    private Obstacle obstacle;

    private Sizing(Job job, Set<String> breakMore, int feedSteps) {
        this.job = job;
        this.feedSteps = feedSteps;
        this.draft = new Draft(job.battery(), job.cables());
        draft.panel = job.panel();
        for (int i = 0; i < job.needs().size(); i++) {
            Need need = job.needs().get(i);
            boolean own = job.switched() && job.panel() != null;
            SwitchChoice ownSwitch = own ? new SwitchChoice("Switch of " + need.name(), job.switchRoute(), job.cables()) : null;
            draft.branches.add(new Branch(need, i + 1, new DeviceChoice(need.amperes(), need.lasting(), job.panel() != null), job.cables(), ownSwitch));
        }
        if (job.switched() && job.panel() == null) {
            draft.allSwitch = new SwitchChoice("Switch", job.switchRoute(), job.cables());
        }
        draft.triggerFuse = DeviceChoice.of(triggerRating());
        if (job.panel() != null) {
            draft.feed = RunChoice.existing("Feed of the panel", job.panel().route(), job.panel().size(), job.cables());
            draft.lead = RunChoice.existing("Lead to the main fuse", job.lead(), job.panel().size(), job.cables());
        } else {
            draft.lead = new RunChoice("Lead to the main fuse", job.lead(), Situated.INSIDE, 2, false, job.cables());
            boolean single = draft.branches.size() == 1;
            draft.main = single ? draft.branches.get(0).device() : new DeviceChoice(job.amperes(), true, false);
            draft.feed = single ? null : new RunChoice("Feed", job.boxRoute(), Situated.INSIDE, 2, false, job.cables());
        }
        for (String id : breakMore) {
            device(id).breakMore();
        }
    }

    /**
     * A draft with the least of each.
     *
     * @param breakMore the devices that are of the kind that breaks more
     * @param feedSteps by how many sizes the feed is thicker than it would have to be by itself
     */
    static Sizing of(Job job, Set<String> breakMore, int feedSteps) {
        Sizing sizing = new Sizing(job, new HashSet<>(breakMore), feedSteps);
        sizing.settle();
        return sizing;
    }

    static Quantity triggerRating() {
        return PublishedTables.tradeFacts().row("trigger-fuse").quantity("value", Units.AMPERE);
    }

    Draft draft() {
        return draft;
    }

    /** What stands in the way; null if nothing does so far. */
    Obstacle obstacle() {
        return obstacle;
    }

    /** The device of that id that is being chosen. */
    DeviceChoice device(String id) {
        for (Branch branch : draft.branches) {
            if (branch.deviceId().equals(id)) {
                return branch.device();
            }
        }
        return id.equals(Draft.TRIGGER_FUSE) ? draft.triggerFuse : draft.main;
    }

    /** Brings all into line again after a step was taken anew; nothing ever gets smaller by it. */
    void settle() {
        double largest = 0;
        for (Branch branch : draft.branches) {
            if (!settleDevice(branch)) {
                return;
            }
            largest = Math.max(largest, branch.device().rating().base());
        }
        if (!draft.isSingle() && !settleFeed(Quantity.of(largest, Units.AMPERE))) {
            return;
        }
        RunChoice ofAll = loop(draft.allSwitch, draft.mainRating());
        double ofFeed = draft.isSingle() ? 0 : job.keptAmperes() * (draft.feed.ohms() + (ofAll == null ? 0 : ofAll.ohms()));
        for (Branch branch : draft.branches) {
            lose(branch.run(), branch.need().keptAmperes(), ROOM * branch.need().allowedVolts() - ofFeed, draft.isSingle() ? draft.allSwitch : branch.ownSwitch(),
                    branch.device().rating());
        }
        draft.lead.follow(draft.isSingle() ? draft.branches.get(0).run() : draft.feed);
        draft.isolator = Sold.least(Sold.ratings("isolator"), draft.mainRating().base());
        settleSwitches();
    }

    private boolean settleDevice(Branch branch) {
        Need need = branch.need();
        DeviceChoice device = branch.device();
        if (isAboveSheet(need, device) && !device.isCool()) {
            device.keepCool();
        }
        if (device.rating() == null) {
            obstacle = Obstacles.tooMuchForADevice(need, device.leastAmperes());
        } else if (isAboveSheet(need, device)) {
            obstacle = Obstacles.sheetAllowsLess(need, device);
        } else if (!branch.run().carry(device.rating())) {
            obstacle = Obstacles.noRunCarries(need, device.rating(), branch.run().thickest());
        }
        return obstacle == null;
    }

    private static boolean isAboveSheet(Need need, DeviceChoice device) {
        return need.mostDevice() != null && (device.rating() == null || device.rating().base() > need.mostDevice().base() * (1 + 1e-9));
    }

    private boolean settleFeed(Quantity largest) {
        if (draft.panel != null) {
            obstacle = PanelRoom.obstacle(job, draft, largest);
            return obstacle == null;
        }
        if (!draft.main.goAbove(largest) || !draft.feed.carry(draft.main.rating())) {
            obstacle = Obstacles.tooMuchTogether(job.amperes());
            return false;
        }
        draft.box = Sold.least(Sold.ratings("fuse-box"), draft.main.rating().base());
        for (; feedSteps > 0; feedSteps--) {
            draft.feed.thicken();
        }
        lose(draft.feed, job.amperes(), SHARE_OF_FEED * job.strictestVolts(), draft.allSwitch, draft.main.rating());
        return true;
    }

    /** Has a run, with the way to the switch that parts it, lose no more than so many volts. */
    private static void lose(RunChoice run, double amperes, double volts, SwitchChoice parting, Quantity rating) {
        if (!run.lose(amperes, volts, loop(parting, rating))) {
            parting.takeRelay();
            run.lose(amperes, volts, null);
        }
    }

    /** The way to a switch by hand and back, behind a device; null if there is none. */
    private static RunChoice loop(SwitchChoice choice, Quantity rating) {
        return choice == null || !choice.carry(rating.base()) || choice.isRelay() ? null : choice.loop();
    }

    private void settleSwitches() {
        boolean held = draft.allSwitch == null || draft.allSwitch.carry(draft.mainRating().base());
        for (Branch branch : draft.branches) {
            held &= branch.ownSwitch() == null || branch.ownSwitch().carry(branch.device().rating().base());
        }
        if (!held) {
            obstacle = Obstacles.noSwitch();
        }
    }
}
