package loomwright.plan;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.check.Examination;
import loomwright.protection.DeviceKind;
import loomwright.quantity.Quantity;
import loomwright.worked.NextQuestion;

/** Every choice of a plan in a line: what, why, its working and its lesson; in the order of a fitter. */
final class Reasons {
    private final Job job;
    private final Draft draft;
    private final Workings workings;
    private final List<Chosen> chosen = new ArrayList<>();

    private Reasons(Job job, Draft draft, Examination examination) {
        this.job = job;
        this.draft = draft;
        this.workings = new Workings(job, draft, examination);
    }

    static List<Chosen> of(Job job, Draft draft, Examination examination, Obstacle ofPanel) {
        Reasons reasons = new Reasons(job, draft, examination);
        reasons.addFeeding(ofPanel);
        for (Branch branch : draft.branches) {
            reasons.addBranch(branch, examination);
        }
        if (!draft.isSingle() && draft.panel == null) {
            reasons.addFeed();
        }
        reasons.addMain();
        reasons.addSwitch();
        EnergyReasons.add(job, reasons.workings, examination, reasons.chosen);
        return List.copyOf(reasons.chosen);
    }


    private void add(String partId, String what, String why, NextQuestion working, String lesson) {
        chosen.add(new Chosen(partId, what, why, working, lesson));
    }

    private void addFeeding(Obstacle ofPanel) {
        if (draft.panel != null) {
            add(Draft.BOX, "Free ways of the fuse panel", "With " + Amperes.text(job.amperes()) + " more, panel, feed and its device stay within what they may carry for hours.",
                    workings.headroom(), "06-where-to-tap-in");
        } else {
            String why = ofPanel != null ? ofPanel.words()
                    : job.answers().job().choice("feed").equals("battery") ? "You asked for it; it takes nothing from what is there."
                    : "Too little is known of what is there to put more on it.";
            add(Draft.MAIN, "A circuit of its own from the battery", why, null, "06-where-to-tap-in");
        }
    }

    private void addBranch(Branch branch, Examination examination) {
        Need need = branch.need();
        DeviceChoice device = branch.device();
        add(branch.loadId(), need.name() + ": up to " + Amperes.text(need.amperes()),
                need.texts().get("load-kind").equals("resistive")
                        ? "A heater or filament draws most at the highest voltage, " + Need.HIGHEST.text() + "."
                        : need.texts().get("load-kind").equals("constant-current")
                                ? "Its label gives amperes, and they are taken at every voltage."
                                : "What holds its power draws most at the lowest voltage, " + Need.LOWEST.text() + (need.kind() == ItemKind.USB ? ", and its converter takes its share." : "."),
                workings.current(need), "03-what-will-it-draw");
        String id = draft.isSingle() ? Draft.MAIN : branch.deviceId();
        add(id, "Fuse of " + need.name() + ": " + device.kind().words() + " of " + device.rating().text(), whyDevice(need, device),
                workings.device(need.amperes(), need.lasting(), branch.run(), device), "10-fuse-links-and-breakers");
        double before = examination.solution().worstFor(examination.circuit().node(branch.loadId())).drop(examination.circuit().node(branch.runId()).parent());
        double ofFeed = draft.isSingle() && loop(branch) == null ? 0 : before;
        RunChoice run = branch.run();
        add(branch.runId(), run.name() + ": " + run.size().text() + ", " + run.route().text() + ", insulation for " + run.insulation().rating().text(),
                whyRun(branch), workings.run(run, examination.solution().designAmperes(examination.circuit().node(branch.runId())), device.rating(), need.allowedVolts() - ofFeed), "08-voltage-drop");
        if (branch.ownSwitch() != null) {
            addSwitch(branch.switchId(), branch.ownSwitch());
        }
    }

    private static String whyDevice(Need need, DeviceChoice device) {
        String least = "The least that is sold and holds " + Amperes.text(need.amperes()) + (need.lasting() ? " for hours" : "");
        return device.isCool()
                ? least + " where it is no warmer than 20 °C; its sheet allows no more, so keep its holder in a cool place."
                : least + " in a warm place, which asks for " + Amperes.text(device.leastAmperes()) + (need.mostDevice() == null ? "." : "; its sheet allows up to " + need.mostDevice().text() + ".");
    }

    private String whyRun(Branch branch) {
        RunChoice run = branch.run();
        Quantity thinnest = job.cables().least(branch.need().sheathed());
        String carries = "It carries " + Amperes.text(run.capacity().value().base()) + " " + branch.need().place().words() + ", no less than its fuse-link, and loses no more than "
                + branch.need().load().allowance().quantity("allowance").text() + " of 12 V with the feed" + (loop(branch) == null ? "" : " and the way to its switch and back");
        return run.size().base() <= thinnest.base() * (1 + 1e-6) ? carries + "; thinner ones are not allowed." : carries + "; the next thinner one that is sold does not.";
    }

    /** The way to the switch by hand that parts a branch, and back; null if there is none. */
    private RunChoice loop(Branch branch) {
        SwitchChoice parting = branch.ownSwitch() == null ? draft.allSwitch : branch.ownSwitch();
        return parting == null || parting.isRelay() ? null : parting.loop();
    }

    private void addFeed() {
        RunChoice loop = draft.allSwitch == null || draft.allSwitch.isRelay() ? null : draft.allSwitch.loop();
        double half = Sizing.SHARE_OF_FEED * job.strictestVolts() - (loop == null ? 0 : job.amperes() * loop.ohms());
        double lost = job.amperes() * draft.feed.ohms();
        add(Draft.FEED, "Feed: " + draft.feed.size().text() + ", " + draft.feed.route().text(),
                "It carries " + Amperes.text(draft.feed.capacity().value().base()) + ", no less than the main fuse"
                        + (lost <= half ? ", and loses no more than half of what may be lost: the other half is for the runs." : "; it is the thickest of a first job, and what it loses the runs make up for."),
                workings.run(draft.feed, job.amperes(), draft.main.rating(), Math.max(half, lost * (1 + 1e-6))), "08-voltage-drop");
        add(Draft.BOX, "New fuse box for at least " + draft.box.text(), "It may carry no less than the main fuse lets through.", null, "06-where-to-tap-in");
    }

    private void addMain() {
        if (draft.panel != null) {
            add(Draft.MAIN, "Main fuse of the panel: class T of " + draft.panel.rating().text(),
                    "It stays if its own sheet shows that it breaks the current of this battery; else put class T of the same rating in its place.",
                    workings.breaking(Draft.MAIN, DeviceKind.CLASS_T), "10-fuse-links-and-breakers");
        } else {
            if (!draft.isSingle()) {
                add(Draft.MAIN, "Main fuse: " + draft.main.kind().words() + " of " + draft.main.rating().text(),
                        "The least that is sold and holds all loads together for hours in a warm place, and is above each fuse-link behind it.",
                        workings.device(job.amperes(), true, draft.feed, draft.main), "10-fuse-links-and-breakers");
            }
            add(Draft.MAIN, "Kind of the first device: " + draft.main.kind().words(),
                    draft.main.kind() == DeviceKind.BLADE ? "A blade fuse-link breaks the current of a short circuit there." : whyClassT(),
                    workings.breaking(Draft.MAIN, draft.main.kind()), "10-fuse-links-and-breakers");
        }
        add(Draft.LEAD, "First device within " + job.lead().text() + " of the battery", "Nothing protects the piece of lead before it.", workings.place(), "06-where-to-tap-in");
        add(Draft.ISOLATOR, "Isolating switch for at least " + draft.isolator.text(), "It makes all behind it dead by hand, within reach, and carries what the first device lets through.", null,
                "06-where-to-tap-in");
    }

    private String whyClassT() {
        return job.battery().isKnown()
                ? "More may flow into a short circuit there than a blade fuse-link breaks."
                : "How much may flow into a short circuit is not known, so the kind that breaks most is taken.";
    }

    private void addSwitch() {
        if (draft.allSwitch != null) {
            addSwitch(Draft.SWITCH, draft.allSwitch);
        }
        for (Branch branch : draft.branches) {
            if (branch.device().kind() == DeviceKind.CLASS_T && !draft.isSingle()) {
                add(branch.deviceId(), "Kind of the fuses in the box: " + branch.device().kind().words(), whyClassT(), workings.breaking(branch.deviceId(), DeviceKind.CLASS_T),
                        "10-fuse-links-and-breakers");
                return;
            }
        }
    }

    private void addSwitch(String id, SwitchChoice chosenSwitch) {
        if (chosenSwitch.isRelay()) {
            add(id, chosenSwitch.name() + ": relay of the 70 A class", (chosenSwitch.isTooThick() ? "The way to a switch by hand and back would be too thick for its tabs" : "No switch by hand that is sold stands device and loads") + "; a relay carries " + SwitchChoice.relay().text()
                    + " in a hot place. Its trigger has a fuse of " + Sizing.triggerRating().text() + " and a small switch.", workings.trigger(chosenSwitch), "11-switching");
        } else {
            add(id, chosenSwitch.name() + ": by hand, " + chosenSwitch.rating().text() + " on direct current", "It stands what its device lets through, and what its loads ask of a contact at the start. The way there and back, " + chosenSwitch.route().text()
                    + " of " + chosenSwitch.loop().size().text() + ", is no thinner than the run that it parts.", null, "11-switching");
        }
    }
}
