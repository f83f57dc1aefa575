package loomwright.plan;

import loomwright.protection.DeviceKind;
import loomwright.protection.Holding;
import loomwright.quantity.Quantity;

/** Whether a panel that is there can take the new loads as well: ways, its limit, the device and the conductor of its feed. */
final class PanelRoom {
    private PanelRoom() {}

    /** Why it cannot; null if it can. */
    static Obstacle obstacle(Job job, Draft draft, Quantity largest) {
        Feeding panel = draft.panel;
        if (draft.feed == null) {
            return no("feed-size", "no table has a cable of " + panel.size().text());
        }
        int ways = draft.branches.size() + (draft.hasRelay() ? 1 : 0);
        double together = panel.present().base() + job.amperes();
        String sum = Amperes.text(panel.present().base()) + " that are on it and " + Amperes.text(job.amperes()) + " more";
        if (ways > panel.ways()) {
            return no("free-ways", "it has " + panel.ways() + " free ways, and " + ways + " are needed");
        }
        if (together > Sizing.ROOM * panel.limit().base()) {
            return no("panel-limit", sum + " come too near to the " + panel.limit().text() + " that it may carry in all");
        }
        if (together > Holding.share(DeviceKind.BLADE).base() * panel.rating().base()) {
            return no("feed-rating", sum + " are more than the device of its feed, " + panel.rating().text() + ", holds for hours");
        }
        if (largest.base() >= panel.rating().base()) {
            return no("feed-rating", "a way of " + largest.text() + " behind a feed of " + panel.rating().text() + " might open second");
        }
        if (panel.rating().base() > panel.limit().base() * (1 + 1e-9)) {
            return no("feed-rating", "the device of its feed, " + panel.rating().text() + ", is above what the panel may carry; that wants mending in any case");
        }
        if (!draft.feed.carry(panel.rating())) {
            return no(
                    "feed-size", "its feed of " + panel.size().text() + " carries less than the " + panel.rating().text()
                            + " that guard it, insulation for 60 °C taken; that wants mending in any case");
        }
        return null;
    }

    private static Obstacle no(String key, String why) {
        return new Obstacle(Answers.JOB, key, "The panel takes no more: " + why + ".", "Give it a circuit of its own from the battery.");
    }
}
