package loomwright.drawing;

import java.util.List;
import loomwright.picture.Picture;
import loomwright.picture.Wiring;
import loomwright.picture.Wiring.Item;
import loomwright.quantity.Units;

/** The fuse panel with its old feed, and the bench with a protected feed of its own, both from the battery. */
final class FeedOfItsOwn implements Drawing {
    @Override
    public String name() {
        return "feed-of-its-own";
    }

    @Override
    public List<String> takes() {
        return List.of("feed-fuse", "feed-size", "panel-limit", "breaker-rating", "bench-size", "bench-route");
    }

    @Override
    public Picture draw(Given given) {
        List.of("feed-fuse", "panel-limit", "breaker-rating").forEach(rating -> given.number(rating, Units.AMPERE));
        List.of("feed-size", "bench-size").forEach(size -> given.number(size, Units.SQUARE_MILLIMETRE));
        given.number("bench-route", Units.METRE);
        Item loads = Item.of("lights, fan, pump, camera charger", "+ through a fuse-link for each way");
        String old = "+ through the feed fuse " + given.label("feed-fuse") + "; " + given.label("feed-size");
        Item panel = Item.of("fuse panel, " + given.label("panel-limit") + " in all", old, loads);
        String added = "new: + through a breaker " + given.label("breaker-rating") + "; " + given.label("bench-size") + ", "
                + given.label("bench-route");
        Item battery = Item.of("battery", "", panel, Item.of("outlets at the bench", added));
        return new Wiring(battery)
                .picture(
                        "Two feeds from one battery",
                        "A battery feeds two branches, each by two conductors. The positive of the old one passes the feed fuse of "
                                + given.text("feed-fuse") + "; it goes in " + given.text("feed-size")
                                + " to the fuse panel with lights, fan, pump and camera charger. The positive of the new one passes a breaker of "
                                + given.text("breaker-rating") + "; it goes in " + given.text("bench-size") + " to the outlets at the bench.");
    }
}
