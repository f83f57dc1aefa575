package loomwright.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.protection.DeviceKind;
import loomwright.protection.Holding;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.Entries;

/** Turns what was answered of the things into loads with their runs; what was left open is taken on the careful side, and noted. */
final class Wanted {
    private final Answers answers;
    private final List<Taken> taken;
    private final List<Need> needs = new ArrayList<>();

    private Wanted(Answers answers, List<Taken> taken) {
        this.answers = answers;
        this.taken = taken;
    }

    static List<Need> of(Answers answers, List<Taken> taken) {
        Wanted wanted = new Wanted(answers, taken);
        for (int i = 0; i < answers.items().size(); i++) {
            wanted.add(i, answers.items().get(i));
        }
        return List.copyOf(wanted.needs);
    }

    private void add(int item, Entries entries) {
        ItemKind kind = ItemKind.CHOICES.of(entries.option("kind"));
        int count = (int) Math.ceil(entries.quantity("how-many").base() - 1e-9);
        Map<String, String> texts = texts(item, entries, kind, kind.sharesARun() ? count : 1);
        boolean lasting = !entries.has("hours") || entries.quantity("hours").in(Units.HOUR).value() >= 3;
        Quantity route = route(item, entries);
        Situated place = Situated.CHOICES.of(entries.option("place"));
        Beside beside = Beside.CHOICES.of(entries.option("beside"));
        noteSurroundings(item, place, beside, entries);
        boolean sheathed = entries.choice("sheath").equals("sheath");
        int branches = kind.sharesARun() ? 1 : count;
        for (int i = 1; i <= branches; i++) {
            needs.add(Need.of(item, kind, name(item, kind, i, branches), texts, lasting, route, place, beside, sheathed));
        }
    }

    /** Its kind; with a number if there are several of that kind. */
    private String name(int item, ItemKind kind, int number, int branches) {
        int before = 0;
        int all = 0;
        for (int i = 0; i < answers.items().size(); i++) {
            Entries entries = answers.items().get(i);
            if (entries.choice("kind").equals(kind.key())) {
                int some = kind.sharesARun() ? 1 : (int) Math.ceil(entries.quantity("how-many").base() - 1e-9);
                before += i < item ? some : 0;
                all += some;
            }
        }
        return all == 1 && branches == 1 ? kind.label() : kind.label() + " " + (before + number);
    }

    private Map<String, String> texts(int item, Entries entries, ItemKind kind, int count) {
        Row row = kind.row();
        Map<String, String> texts = new HashMap<>();
        Quantity draws = entries.quantity("draws");
        if (draws == null && kind == ItemKind.OUTLET && entries.has("most-device")) {
            draws = Quantity.of(Holding.share(DeviceKind.BLADE).base() * entries.quantity("most-device").base(), Units.AMPERE);
            note(item, "draws", "Nobody said what is plugged in: as much as its fuse-link holds for hours is taken, " + draws.text(3) + ".", Holding.row(DeviceKind.BLADE));
        } else if (draws == null) {
            draws = Plain.quantity(row.text("draws"));
            note(item, "draws", "Nobody said what it takes: " + row.text("draws") + " is taken, as for " + row.text("says") + ".", row);
        }
        boolean amperes = draws.unit().dimension().equals(Units.AMPERE.dimension());
        Quantity all = Quantity.of(count * draws.value(), draws.unit());
        texts.put("load-kind", kind.loadKind(amperes));
        texts.put(kind == ItemKind.USB ? "ports-power" : amperes ? "current" : "power", Plain.text(all));
        if (kind == ItemKind.USB) {
            texts.put("converter", "usb-outlet");
        }
        Quantity hours = entries.quantity("hours");
        if (hours == null) {
            hours = row.quantity("hours");
            note(item, "hours", "Nobody said how long it is on: " + hours.text() + " a day is taken for the battery, and its fuse-link is chosen as if it lasted for hours.", row);
        }
        texts.put("hours", Plain.text(hours));
        texts.put("duty", Plain.text(row.quantity("duty")));
        texts.put("allowance", kind.allowance());
        texts.put("switched-as", kind.switchedAs());
        putStart(item, entries, kind, amperes ? all.base() : all.base() / 12, texts);
        if (entries.has("most-device")) {
            texts.put("outlet-rating", Plain.text(entries.quantity("most-device")));
        } else {
            taken.add(new Taken(
                    item, "most-device", "Nobody said the largest fuse that its sheet allows: the smallest that holds its load is taken. Look it up before you buy.",
                    "not known"));
        }
        return texts;
    }

    private void putStart(int item, Entries entries, ItemKind kind, double running, Map<String, String> texts) {
        if (!PlanFields.mayStart(kind.key())) {
            return;
        }
        if (entries.has("start")) {
            texts.put("start-current", Plain.text(entries.quantity("start")));
        } else if (kind.isMotor()) {
            Quantity factor = kind.row().quantity("start-factor", Units.ONE);
            Quantity start = Quantity.of(factor.base() * running, Units.AMPERE);
            texts.put("start-current", start.text(3).replace('\u00a0', ' '));
            note(item, "start", "Nobody said what it takes at its start: " + factor.text() + " times its running current is taken, " + start.text(3) + ".", kind.row());
        }
    }

    private Quantity route(int item, Entries entries) {
        if (entries.has("route")) {
            return entries.quantity("route");
        }
        Quantity long1 = Careful.route(answers.job());
        taken.add(new Taken(item, "route", "Nobody said how far it is: " + long1.text() + " is taken. Measure before you buy.", "invented"));
        return long1;
    }

    private void noteSurroundings(int item, Situated place, Beside beside, Entries entries) {
        if (place == Situated.NOT_KNOWN) {
            taken.add(new Taken(item, "place", "Nobody said where its cable runs: the warmest place is taken, " + place.warmth() + " under a roof in the sun.", "invented"));
        }
        if (beside == Beside.NOT_KNOWN) {
            taken.add(new Taken(item, "beside", "Nobody said what lies beside its cable: a bundle of up to " + beside.together() + " conductors is taken.", "invented"));
        }
        if (entries.choice("sheath").equals(PlanFields.NOT_KNOWN)) {
            taken.add(new Taken(item, "sheath", "Nobody said what kind of cable: single conductors are taken, which have to be a little thicker.", "published"));
        }
    }

    private void note(int item, String fieldKey, String words, Row row) {
        taken.add(new Taken(item, fieldKey, words, row.source().standing().words()));
    }
}
