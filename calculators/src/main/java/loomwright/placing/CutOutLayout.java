package loomwright.placing;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.QuantityField;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * Where a row of round cut-outs lies on a panel, whether it fits between the edges and the frames behind, and the nearest place that fits.
 *
 * @source plain geometry; hole of a round panel outlet 28 mm to 29 mm is common practice
 */
public final class CutOutLayout implements Calculator {
    @Override
    public Description description() {
        return CutOutFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Values values = given(entries);
        Quantity last = step(working, "Find the last centre", CutOutSymbols.LAST_CENTRE, values, "Between n cut-outs there are n − 1 distances.");
        values = values.with(CutOutSymbols.LAST, last);
        Quantity left = step(working, "See what is left at the left edge", CutOutSymbols.AT_LEFT, values, "The cut reaches half its diameter beyond the centre.");
        Quantity right = step(working, "See what is left at the right edge", CutOutSymbols.AT_RIGHT, values, "The same from the other side.");
        Quantity low = step(working, "See what is left at the lower edge", CutOutSymbols.AT_BOTTOM, values, "The same downwards.");
        Quantity high = step(working, "See what is left at the upper edge", CutOutSymbols.AT_TOP, values, "The same upwards.");
        working.result("last-centre", last);
        working.result("left-edge", left);
        working.result("right-edge", right);
        working.result("lower-edge", low);
        working.result("upper-edge", high);
        CutOutFindings findings = new CutOutFindings(working, entries);
        findings.edge("left", left);
        findings.edge("right", right);
        findings.edge("lower", low);
        findings.edge("upper", high);
        if (count(entries) > 1) {
            Quantity web = step(
                    working, "See what is left between two", CutOutSymbols.WEB_LEFT, values, "Half a diameter goes on either side.");
            working.result("web-left", web);
            findings.web(web);
        }
        Row row = row(entries);
        double nearest = row.nearest(values.of(CutOutSymbols.FIRST).value());
        findings.frames(row, values.of(CutOutSymbols.FIRST).value(), nearest);
        findings.depth();
        if (!Double.isNaN(nearest)) {
            working.result("nearest-first-centre", Quantity.of(nearest, Units.MILLIMETRE));
        }
        addSlips(working, values);
    }

    private static Quantity step(
            WorkingBuilder working, String words, Formula formula, Values values, String why) {
        return working.compute(words, formula, values, Units.MILLIMETRE, why);
    }

    private static Values given(Entries entries) {
        return Values.of(CutOutSymbols.FIRST, entered(entries, CutOutFields.FIRST))
                .with(CutOutSymbols.PITCH, entered(entries, CutOutFields.PITCH))
                .with(CutOutSymbols.DIAMETER, entered(entries, CutOutFields.DIAMETER))
                .with(CutOutSymbols.WIDTH, entered(entries, CutOutFields.WIDTH))
                .with(CutOutSymbols.HEIGHT, entered(entries, CutOutFields.HEIGHT))
                .with(CutOutSymbols.ROW, entered(entries, CutOutFields.ROW))
                .with(CutOutSymbols.COUNT, Quantity.number(count(entries)));
    }

    private static Row row(Entries entries) {
        List<Row.Frame> frames = new ArrayList<>();
        addFrame(frames, entries, CutOutFields.FRAME_1_FROM, CutOutFields.FRAME_1_TO);
        addFrame(frames, entries, CutOutFields.FRAME_2_FROM, CutOutFields.FRAME_2_TO);
        return new Row(
                number(entries, CutOutFields.WIDTH), number(entries, CutOutFields.DIAMETER), number(entries, CutOutFields.PITCH),
                count(entries), number(entries, CutOutFields.EDGE), number(entries, CutOutFields.BEHIND) / 2, frames);
    }

    private static void addFrame(List<Row.Frame> frames, Entries entries, QuantityField from, QuantityField to) {
        if (entries.has(from.key()) != entries.has(to.key())) {
            QuantityField missing = entries.has(from.key()) ? to : from;
            throw new Refusal(missing.key(), missing.label() + " is empty: enter both sides of the frame, or neither");
        }
        if (entries.has(from.key())) {
            double left = number(entries, from);
            double right = number(entries, to);
            if (right < left) {
                throw new Refusal(to.key(), to.label() + " lies left of its left side: enter both from the left edge of the panel");
            }
            frames.add(new Row.Frame(left, right));
        }
    }

    private static int count(Entries entries) {
        return Integer.parseInt(entries.choice(CutOutFields.COUNT.key()));
    }

    private static Quantity entered(Entries entries, QuantityField field) {
        return entries.quantity(field.key()).in(Units.MILLIMETRE);
    }

    private static double number(Entries entries, QuantityField field) {
        return entered(entries, field).value();
    }

    private static void addSlips(WorkingBuilder working, Values values) {
        working.slip(
                "one-distance-too-many", "last-centre", "As many distances as cut-outs",
                "Between two cut-outs there is one distance.", CutOutSymbols.SLIP_ONE_TOO_MANY, values);
        working.slip(
                "centre-taken-for-rim", "left-edge", "The centre used in place of the rim",
                "The cut reaches half its diameter beyond the centre.", CutOutSymbols.SLIP_CENTRE_AS_EDGE, values);
        working.slip(
                "diameter-for-radius", "left-edge", "The whole diameter taken off",
                "From centre to rim is half the diameter.", CutOutSymbols.SLIP_DIAMETER_FOR_RADIUS, values);
        working.slip(
                "right-centre-taken-for-rim", "right-edge", "The last centre used in place of the rim",
                "The cut reaches half its diameter beyond the centre.", CutOutSymbols.SLIP_RIGHT_CENTRE, values);
        if (working.has("web-left")) {
            working.slip(
                    "one-radius-only", "web-left", "Only one half diameter taken off",
                    "There is half a cut-out on either side.", CutOutSymbols.SLIP_WEB_OF_RADIUS, values);
        }
    }
}
