package loomwright.plan;

import java.util.ArrayList;
import java.util.List;

/** What no rule decides, so that a person has to. */
final class Asks {
    private Asks() {}

    static List<String> of(Job job, Draft draft) {
        List<String> asks = new ArrayList<>();
        boolean boat = job.answers().job().choice("craft").equals("boat");
        boolean unknown = job.answers().job().choice("craft").equals(PlanFields.NOT_KNOWN);
        boolean bilge = false;
        boolean light = false;
        for (Need need : job.needs()) {
            bilge |= need.kind() == ItemKind.BILGE;
            light |= need.kind() == ItemKind.NAVIGATION;
        }
        if (bilge) {
            asks.add("Shall the bilge pump stay live when the isolating switch is off? Many leave it so, by a way of its own past the switch with its own fuse-link "
                    + "at the battery. As planned here the switch parts it too. On the bench you can move it.");
        }
        if (!job.battery().isKnown() && draft.hasClassT()) {
            asks.add("Which battery is it? As long as nobody says its kind and its ampere-hours, every fuse here is of the kind that breaks most, which is dear and has few holders. "
                    + "Look at its label and answer that question: often blade fuse-links will do behind the first one.");
        }
        if (boat || unknown) {
            asks.add("Has the " + (boat ? "boat" : "craft") + " a petrol engine, or gas on board? Then nothing that can spark belongs in that space, and your code says which parts may. No question here covers that.");
        }
        if (light) {
            asks.add("Which navigation lights your waters ask for, and how bright, is for their rules; here only their cable was chosen.");
        }
        if (job.answers().job().has("panel-power")) {
            asks.add("The run and the fuse-link of the solar controller were not asked for and not judged. It feeds too: look at them, or draw them in on the bench.");
        }
        return List.copyOf(asks);
    }
}
