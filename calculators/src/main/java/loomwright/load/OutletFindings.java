package loomwright.load;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Checks of an outlet: its rating, its kind, the fuse-link before it, its contacts, and what it takes for nothing. */
final class OutletFindings {
    private static final double EQUAL = 1 + 1e-9;
    private static final double CONTINUOUS_HOURS = 3;

    private OutletFindings() {}

    static Row outlet(String item) {
        return PublishedTables.sockets().row(item);
    }

    static void add(WorkingBuilder working, Entries entries, Values values, String kind) {
        rating(working, entries, values);
        kind(working, values, kind);
        if (!kind.equals(OutletFields.USB)) {
            askedFor(working, values);
        }
        if (entries.has(OutletFields.FUSE.key())) {
            fuse(working, values, entries.quantity(OutletFields.FUSE.key()));
        }
        if (entries.has(OutletFields.CONTACTS.key())) {
            contacts(working, values);
        }
        if (entries.quantity(OutletFields.STANDING.key()).base() > 0) {
            standing(working, values);
        }
    }

    private static void rating(WorkingBuilder working, Entries entries, Values values) {
        Quantity current = values.of(OutletFormulas.CURRENT);
        Quantity rating = values.of(OutletFormulas.RATING);
        boolean entered = entries.has(OutletFields.RATING.key());
        boolean within = current.base() <= rating.base() * EQUAL;
        working.finding(new Finding(
                within ? Verdict.PASSED : Verdict.STOP,
                "The current of " + current.text() + " is " + (within ? "within" : "above") + " the continuous rating "
                        + (entered ? "entered" : "of ISO 4165") + ", " + rating.text() + ".",
                current, rating, entered ? Source.of(Document.COMPUTED, "the rating is your own entry") : outlet("iso-4165-current").source(),
                within ? "" : "Plug in less, or give the load an outlet or a fixed connection that is made for it."));
    }

    private static void kind(WorkingBuilder working, Values values, String kind) {
        Row row = outlet(kind.equals(OutletFields.ISO_4165) ? "iso-4165-current" : "sae-j563-lighter");
        Quantity limit = row.quantity("value", Units.AMPERE);
        if (kind.equals(OutletFields.ISO_4165)) {
            Quantity rating = values.of(OutletFormulas.RATING);
            if (rating.base() > limit.base() * EQUAL) {
                working.finding(new Finding(
                        Verdict.CAUTION, "A rating of " + rating.text() + " is above the " + limit.text() + " of ISO 4165 as described.",
                        rating, limit, row.source(), "The plug is held to the standard too: stay within " + limit.text() + "."));
            }
        } else if (kind.equals(OutletFields.LIGHTER)) {
            Quantity current = values.of(OutletFormulas.CURRENT);
            boolean within = current.base() <= limit.base() * EQUAL;
            working.finding(new Finding(
                    within ? Verdict.PASSED : Verdict.CAUTION,
                    "The current of " + current.text() + " is " + (within ? "within" : "above") + " the " + limit.text()
                            + " or so of the lighter this type was made for.",
                    current, limit, row.source(),
                    within ? "" : "Trust a higher figure only if the maker prints it as continuous, for this outlet and for the plug."));
        }
    }

    private static void askedFor(WorkingBuilder working, Values values) {
        Row row = PublishedTables.tradeFacts().row("outlet-current");
        Quantity asked = row.quantity("value", Units.AMPERE);
        Quantity rating = values.of(OutletFormulas.RATING);
        boolean enough = rating.base() * EQUAL >= asked.base();
        working.finding(new Finding(
                enough ? Verdict.PASSED : Verdict.CAUTION,
                "A 12 V outlet may be asked for " + asked.text() + ", whatever is plugged in today; this one is rated " + rating.text() + ".",
                rating, asked, row.source(), enough ? "" : "Say on its label what it may carry, and fuse it at no more than that."));
    }

    /** source: NEC 210.20(A), a mains rule that 12 V work has borrowed; the match of fuse-link and outlet is common practice. */
    private static void fuse(WorkingBuilder working, Values values, Quantity fuse) {
        Quantity rating = values.of(OutletFormulas.RATING);
        boolean guards = fuse.base() <= rating.base() * EQUAL;
        working.finding(new Finding(
                guards ? Verdict.PASSED : Verdict.CAUTION,
                "The fuse-link of " + fuse.text() + " is " + (guards ? "not above" : "above") + " the rating of the outlet, " + rating.text() + ".",
                fuse, rating, Source.commonPractice(),
                guards ? "" : "It lets the outlet be overloaded. Take a smaller one, or an outlet that is rated for it."));
        if (values.of(OutletFormulas.HOURS).in(Units.HOUR).value() * EQUAL < CONTINUOUS_HOURS) {
            return;
        }
        Row rule = PublishedTables.fuseContinuousLoading().row("nec-210-20-a");
        Quantity share = rule.quantity("load");
        Quantity current = values.of(OutletFormulas.CURRENT);
        Quantity most = Quantity.of(share.base() * fuse.base(), Units.AMPERE);
        boolean within = current.base() <= most.base() * EQUAL;
        working.finding(new Finding(
                within ? Verdict.PASSED : Verdict.CAUTION,
                "For 3 h or more the fuse-link may carry " + most.text(3) + ", " + share.text() + " of its rating; it carries "
                        + current.text() + ".",
                current, most, rule.source(), within ? "" : "Take a larger fuse-link only if cable and outlet both allow it; else plug in less."));
    }

    private static void contacts(WorkingBuilder working, Values values) {
        Row row = PublishedTables.voltageDropAllowance().row("abyc-main");
        Quantity limit = row.quantity("allowance-in-volts");
        Quantity drop = values.of(OutletFormulas.DROP);
        boolean within = drop.base() <= limit.base() * EQUAL;
        working.finding(new Finding(
                within ? Verdict.PASSED : Verdict.CAUTION,
                "The contacts lose " + drop.text(3) + ", " + (within ? "no more" : "more") + " than " + limit.text()
                        + ", the stricter allowance for a whole circuit. The cable has its share in the same allowance.",
                drop, limit, row.source(), within ? "" : "Clean or change plug and socket. Warm is a warning; hot is a stop."));
    }

    private static void standing(WorkingBuilder working, Values values) {
        Quantity charge = values.of(OutletFormulas.STANDING_CHARGE);
        working.finding(new Finding(
                Verdict.CAUTION, "With nothing plugged in it takes " + charge.text(3) + " a day.", charge, null,
                Source.of(Document.COMPUTED, ""), "Let the outlet go dead with the \"on\" switch, or press its button when you leave."));
    }
}
