package loomwright.plan;

import loomwright.circuit.check.CircuitFinding;
import loomwright.quantity.Quantity;

/** What may stand in the way of a circuit, in words that name the answer. */
final class Obstacles {
    private Obstacles() {}

    static Obstacle tooMany(int branches) {
        return new Obstacle(
                Answers.JOB, "how-many", "These things need " + branches + " runs with a fuse-link each; a first job is for up to " + Job.MOST_BRANCHES + ".",
                "Make two jobs of it, or draw it up on the page \u201cYour circuit\u201d.");
    }

    static Obstacle tooMuchForADevice(Need need, double least) {
        return new Obstacle(
                need.item(), "draws", need.name() + " needs a fuse-link of at least " + Amperes.text(least) + ", and none of that rating is among those sold for a first job.",
                "Take one that draws less, several smaller ones, or one for 24 V.");
    }

    static Obstacle sheetAllowsLess(Need need, DeviceChoice device) {
        return new Obstacle(
                need.item(), "most-device",
                need.name() + " draws up to " + Amperes.text(need.amperes()) + ", which asks for a fuse-link of " + device.rating().text()
                        + "; its sheet allows no more than " + need.mostDevice().text() + ".",
                "Look at the sheet again; take an outlet or device for more, or plug in less.");
    }

    static Obstacle noRunCarries(Need need, Quantity rating, Quantity thickest) {
        return new Obstacle(
                need.item(), need.place() == Situated.INSIDE && need.beside() == Beside.ALONE ? "draws" : "place",
                "No cable up to " + thickest.text() + " carries the " + rating.text() + " of the fuse-link of " + need.name() + " where it runs, "
                        + need.place().words() + ".",
                "Lay it in a cooler place, by itself, or take one that draws less.");
    }

    static Obstacle tooMuchTogether(double amperes) {
        return new Obstacle(
                Answers.JOB, "draws", "All together draw up to " + Amperes.text(amperes) + ", more than one feed of a first job carries.",
                "Fit less, or make two jobs of it, each with a circuit of its own.");
    }

    static Obstacle noSwitch() {
        return new Obstacle(
                Answers.JOB, "switched", "No switch and no relay of those sold for a first job stands what these loads ask of its contacts.",
                "Answer \u201cno\u201d: the isolating switch near the battery makes it dead. Or leave lamps with a filament and large motors out of it.");
    }

    /** A run that loses too much with the thickest size. */
    static Obstacle tooFar(Need need, Quantity thickest, String words) {
        return new Obstacle(
                need.item(), "route", "Even with " + thickest.text() + " too much is lost on the way to " + need.name() + ", " + need.route().text() + ": " + words,
                "Find a shorter way, take one that draws less, or feed it from nearer.");
    }

    static Obstacle ofBattery(String fieldKey, String words, String help) {
        return new Obstacle(Answers.JOB, fieldKey, words, help);
    }

    /** A finding that no step of the plan can mend. */
    static Obstacle of(int item, String fieldKey, CircuitFinding found) {
        return new Obstacle(item, fieldKey, found.finding().words(), found.finding().remedy());
    }
}
