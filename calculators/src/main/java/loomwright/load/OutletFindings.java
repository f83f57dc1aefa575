package loomwright.load;

import loomwright.formula.Values;
import loomwright.joint.JointRule;
import loomwright.protection.DeviceKind;
import loomwright.protection.DeviceRule;
import loomwright.protection.Guarded;
import loomwright.protection.Holding;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
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
        boolean entered = entries.has(OutletFields.RATING.key());
        Comparison comparison = Comparison.of("The current", values.of(OutletFormulas.CURRENT))
                .atMost(
                        values.of(OutletFormulas.RATING), "the continuous rating " + (entered ? "entered" : "of ISO 4165"),
                        entered ? Source.of(Document.COMPUTED, "the rating is your own entry") : outlet("iso-4165-current").source())
                .otherwise(Verdict.STOP, "Plug in less, or give the load an outlet or a fixed connection that is made for it.");
        working.finding((entered ? comparison : comparison.assuming("a rating that nobody entered")).finding());
    }

    private static void kind(WorkingBuilder working, Values values, String kind) {
        Row row = outlet(kind.equals(OutletFields.ISO_4165) ? "iso-4165-current" : "sae-j563-lighter");
        Quantity limit = row.quantity("value", Units.AMPERE);
        if (kind.equals(OutletFields.ISO_4165)) {
            Comparison comparison = Comparison.of("The rating", values.of(OutletFormulas.RATING))
                    .atMost(limit, "the current of ISO 4165 as described", row.source())
                    .exact()
                    .otherwise(Verdict.CAUTION, "The plug is held to the standard too: stay within " + limit.text() + ".");
            if (!comparison.holds()) {
                working.finding(comparison.finding());
            }
        } else if (kind.equals(OutletFields.LIGHTER)) {
            working.finding(Comparison.of("The current", values.of(OutletFormulas.CURRENT))
                    .atMost(limit, "that of the lighter this type was made for", row.source())
                    .otherwise(
                            Verdict.CAUTION,
                            "Trust a higher figure only if the maker prints it as continuous, for this outlet and for the plug.")
                    .finding());
        }
    }

    private static void askedFor(WorkingBuilder working, Values values) {
        Row row = PublishedTables.tradeFacts().row("outlet-current");
        working.finding(Comparison.of("The rating", values.of(OutletFormulas.RATING))
                .atLeast(row.quantity("value", Units.AMPERE), "what a 12 V outlet may be asked for, whatever is plugged in today", row.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Say on its label what it may carry, and fuse it at no more than that.")
                .finding());
    }

    /** source: NEC 210.20(A), a mains rule that 12 V work has borrowed. */
    private static void fuse(WorkingBuilder working, Values values, Quantity fuse) {
        working.finding(DeviceRule.of("The fuse-link", fuse)
                .guards(Guarded.OUTLET, "the outlet", values.of(OutletFormulas.RATING), Source.commonPractice())
                .finding());
        if (values.of(OutletFormulas.HOURS).in(Units.HOUR).value() * EQUAL < CONTINUOUS_HOURS) {
            return;
        }
        Row rule = Holding.row(DeviceKind.BLADE);
        Quantity share = rule.quantity("load");
        working.finding(Comparison.of("The current for 3 h or more", values.of(OutletFormulas.CURRENT))
                .atMost(
                        Quantity.of(share.base() * fuse.base(), Units.AMPERE), share.text() + " of the rating of the fuse-link", rule.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Take a larger fuse-link only if cable and outlet both allow it; else plug in less.")
                .finding());
    }

    private static void contacts(WorkingBuilder working, Values values) {
        Row row = PublishedTables.voltageDropAllowance().row("abyc-main");
        working.finding(Comparison.of("The drop of the contacts", values.of(OutletFormulas.DROP))
                .atMost(
                        row.quantity("allowance-in-volts"), "the stricter allowance for a whole circuit, of which the cable has its share too",
                        row.source())
                .otherwise(Verdict.CAUTION, "Clean or change plug and socket. Warm is a warning; hot is a stop.")
                .finding());
        Quantity each = Quantity.ofBase(values.of(OutletFormulas.HEAT).base() / 2, Units.WATT);
        working.finding(JointRule.heat("The heat in each of the two contacts", each).finding());
    }

    private static void standing(WorkingBuilder working, Values values) {
        Quantity charge = values.of(OutletFormulas.STANDING_CHARGE);
        working.finding(new Finding(
                Verdict.CAUTION, "With nothing plugged in it takes " + charge.text(3) + " a day.", charge, null,
                Source.of(Document.COMPUTED, ""), "Let the outlet go dead with the \"on\" switch, or press its button when you leave."));
    }
}
