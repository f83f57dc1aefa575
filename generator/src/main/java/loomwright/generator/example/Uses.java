package loomwright.generator.example;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.TreeSet;
import loomwright.source.Source;
import loomwright.worked.ChoiceStep;
import loomwright.worked.Finding;
import loomwright.worked.FormulaStep;
import loomwright.worked.Step;
import loomwright.worked.TableStep;
import loomwright.worked.Working;

/**
 * What a working relies on.
 *
 * @param rows rows of tables
 * @param documents keys of documents
 */
public record Uses(Set<RowUse> rows, Set<String> documents) {

    public static Uses of(Working working) {
        Set<RowUse> rows = new LinkedHashSet<>();
        Set<String> documents = new TreeSet<>();
        for (Step step : working.steps()) {
            if (step instanceof TableStep look) {
                rows.add(new RowUse(look.row().table().key(), look.row().name()));
                add(documents, look.row().source());
            } else if (step instanceof FormulaStep formula) {
                add(documents, formula.source());
            } else if (step instanceof ChoiceStep choice) {
                add(documents, choice.source());
            }
        }
        for (Finding finding : working.findings()) {
            add(documents, finding.source());
        }
        return new Uses(Set.copyOf(rows), Set.copyOf(documents));
    }

    private static void add(Set<String> documents, Source source) {
        if (source != null) {
            documents.add(source.document().key());
        }
    }
}
