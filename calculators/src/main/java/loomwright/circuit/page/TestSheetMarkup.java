package loomwright.circuit.page;

import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.PartFault;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Comparison;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.Extent;
import loomwright.circuit.sheet.Meter;
import loomwright.circuit.sheet.ReadingFinding;
import loomwright.circuit.sheet.TestSheet;
import loomwright.circuit.sheet.TestStep;
import loomwright.markup.FindingsMarkup;
import loomwright.markup.Html;
import loomwright.markup.Words;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Units;
import loomwright.worked.Finding;

/** The test sheet with its expected readings, and what readings say that were typed in. */
final class TestSheetMarkup {
    private static final String ORDER = "Before the dead tests: loads, chargers and solar panel off; breaker open; negative lead off; then the main"
            + " fuse-links. Refit in exact reverse, the fuse-links of single circuits last.";

    private TestSheetMarkup() {}

    /**
     * The sheet.
     *
     * @param extent the parts it is about
     * @param live whether readings can be typed
     */
    static String of(Examination examination, Extent extent, boolean live) {
        Designations designations = Designations.of(examination.circuit());
        Quantity battery = battery(examination.circuit());
        Html html = new Html().tag("<p>").text(
                "Voltages are expected with " + battery.text(4) + " at the terminals of the battery. With another voltage there, they shift with it"
                        + (live ? ": type your reading at the battery first." : ".")).tag("</p>");
        html.tag("<p>").text(ORDER).tag("</p>");
        TestStep.Phase phase = null;
        TableHtml table = null;
        int number = 0;
        for (TestStep step : TestSheet.of(examination.circuit(), battery)) {
            if (!extent.has(step.partId())) {
                continue;
            }
            if (step.phase() != phase) {
                phase = step.phase();
                if (table != null) {
                    table.end();
                    html.tag(live ? "</details>" : "");
                }
                html.tag(live ? "<details><summary>" : "").tag("<h3").attribute("id", "circuit-test-" + phase.ordinal()).tag(">").text(phase.words());
                html.tag("</h3>").tag(live ? "</summary>" : "");
                table = new TableHtml(html, phase.words(), "Step", "What to do", "Expected", "Your reading", "Initials");
            }
            number++;
            table.row(number + ". " + designations.titled(step.partId())).words(step.what()).words(step.expected());
            boolean asked = live && phase == TestStep.Phase.LOADED && step.low() != null;
            table.cell(asked ? box(step, number, examination.circuit().part(step.partId())) : "<span class=\"write\"></span>").cell("").endRow();
        }
        if (table != null) {
            table.end();
            html.tag(live ? "</details>" : "");
        }
        html.tag("<div id=\"circuit-compared\">").tag(live ? compared(examination) : "").tag("</div>");
        return html.tag(signature()).toString();
    }

    /** What the readings say. */
    private static String compared(Examination examination) {
        if (!Comparison.isAsked(examination.circuit())) {
            return "";
        }
        Comparison comparison = Comparison.of(examination, Meter.USUAL);
        Designations designations = Designations.of(examination.circuit());
        Html html = new Html().tag("<h3 id=\"circuit-readings\">What your readings say</h3><div class=\"findings\"><ul>");
        for (PartFault fault : comparison.faults()) {
            html.tag("<li class=\"finding\" data-verdict=\"caution\"><p><strong>Look again:</strong> ");
            html.text(fault.partId().isEmpty() ? "" : designations.titled(fault.partId()) + ": ").text(Words.sentence(fault.message())).tag("</p></li>");
        }
        for (ReadingFinding reading : comparison.findings()) {
            Finding finding = reading.finding();
            FindingsMarkup.open(html, finding.verdict());
            html.text(Words.sentence(finding.words())).tag("</p>");
            FindingsMarkup.remedy(html, "What to do: ", finding);
            html.tag("</li>");
        }
        return html.tag("</ul></div>").toString();
    }

    private static Quantity battery(Circuit circuit) {
        Quantity read = QuantityText.read(circuit.supply().part().reading(), Units.VOLT).quantity();
        boolean plausible = read != null && read.dimension().equals(Units.VOLT.dimension()) && read.base() >= 5 && read.base() <= 32;
        return plausible ? read : circuit.battery().resting();
    }

    private static String box(TestStep step, int number, Part part) {
        Html html = new Html().tag("<input type=\"text\" inputmode=\"decimal\" autocomplete=\"off\" class=\"reading\" size=\"8\" maxlength=\"40\"");
        html.attribute("id", "reading-" + step.partId()).attribute("data-reading", step.partId());
        html.attribute("aria-label", "Your reading in volts, step " + number + ", " + step.designation());
        return html.attribute("value", part.reading()).tag(">").toString();
    }

    private static String signature() {
        return "<dl class=\"sign\"><div><dt>Tested by</dt><dd></dd></div><div><dt>Signature</dt><dd></dd></div><div><dt>Date</dt><dd></dd></div>"
                + "<div><dt>Meter used</dt><dd></dd></div></dl>";
    }
}
