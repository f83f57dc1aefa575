package loomwright.generator.circuit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import loomwright.circuit.PartFault;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.check.FigureToGet;
import loomwright.circuit.check.FindingGroup;
import loomwright.circuit.file.JsonWriter;
import loomwright.circuit.sheet.Comparison;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.Meter;
import loomwright.circuit.sheet.ReadingFinding;
import loomwright.quantity.Quantity;
import loomwright.worked.Finding;

/** What was found in circuit files, as one JSON document for a script; {@code content/circuit-report.schema.json} describes it. */
public final class CircuitJson {
    private final JsonWriter json = new JsonWriter();

    private CircuitJson() {}

    /** The whole document. */
    public static String of(List<ExaminedFile> files) {
        CircuitJson report = new CircuitJson();
        report.json.open('{');
        report.json.text("format", "loomwright-circuit-report");
        report.json.number("version", "1");
        report.list("files", files, report::file);
        report.json.close('}');
        return report.json.written();
    }

    private interface Write<T> {
        void write(T each);
    }

    private <T> void list(String key, List<T> all, Write<T> write) {
        json.key(key);
        json.open('[');
        for (T each : all) {
            json.next();
            json.open('{');
            write.write(each);
            json.close('}');
        }
        json.close(']');
    }

    private void texts(String key, List<String> all) {
        json.key(key);
        json.open('[');
        all.forEach(json::item);
        json.close(']');
    }

    private void file(ExaminedFile file) {
        json.text("file", file.file());
        json.text("outcome", file.isRefused() ? "refused" : file.isFaulty() ? "faulty" : "checked");
        if (file.isRefused()) {
            texts("reasons", file.refusals());
            return;
        }
        Examination examination = file.examination();
        json.text("name", examination.circuit().name());
        if (file.isFaulty()) {
            list("faults", examination.faults(), this::fault);
            return;
        }
        Designations designations = Designations.of(examination.circuit());
        json.key("counts");
        json.open('{');
        for (FindingGroup group : FindingGroup.values()) {
            json.number(group.verdict().key(), Integer.toString(examination.count(group.verdict())));
        }
        json.close('}');
        list("findings", examination.findings(), found -> found(found, designations));
        list("figures-to-get", FigureToGet.of(examination), this::figure);
        if (Comparison.isAsked(examination.circuit())) {
            Comparison comparison = Comparison.of(examination, Meter.USUAL);
            list("reading-faults", comparison.faults(), this::fault);
            list("readings", comparison.findings(), reading -> reading(reading, designations));
        }
    }

    private void fault(PartFault fault) {
        json.text("part", fault.partId());
        json.text("field", fault.fieldKey());
        json.text("message", fault.message());
    }

    private void part(String id, Designations designations) {
        json.text("part", id);
        json.text("designation", designations.of(id));
        json.text("title", designations.title(id));
    }

    private void found(CircuitFinding found, Designations designations) {
        json.text("verdict", found.finding().verdict().key());
        json.text("check", found.check().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        json.text("check-title", found.check().label());
        part(found.partId(), designations);
        if (!found.otherId().isEmpty()) {
            json.text("other-part", found.otherId());
        }
        finding(found.finding());
    }

    private void reading(ReadingFinding reading, Designations designations) {
        json.text("verdict", reading.finding().verdict().key());
        part(reading.partId(), designations);
        json.text("other-part", reading.fromPartId());
        finding(reading.finding());
    }

    private void finding(Finding finding) {
        json.text("words", finding.words());
        quantity("figure", finding.figure());
        quantity("limit", finding.limit());
        json.text("remedy", finding.remedy());
        json.key("source");
        json.open('{');
        json.text("document", finding.source().document().key());
        json.text("standing", finding.source().standing().words());
        json.text("words", finding.source().text());
        json.close('}');
        if (finding.missing() != null) {
            json.text("missing", finding.missing().name());
        }
    }

    private void quantity(String key, Quantity quantity) {
        if (quantity != null) {
            json.key(key);
            json.open('{');
            json.number("value", BigDecimal.valueOf(quantity.value()).toPlainString());
            json.text("unit", quantity.unit().symbol());
            json.text("text", quantity.text(4));
            json.close('}');
        }
    }

    private void figure(FigureToGet figure) {
        json.text("name", figure.name());
        json.text("where", figure.where());
        json.text("instead", figure.instead());
        json.text("field", figure.fieldKey());
        texts("parts", figure.partIds());
    }
}
