package loomwright.generator.example;

import java.util.Map;
import loomwright.generator.content.TableFile;
import loomwright.generator.problem.Problems;
import loomwright.table.Column;
import loomwright.table.Row;
import loomwright.worked.Step;
import loomwright.worked.TableStep;
import loomwright.worked.Working;

/**
 * Compares the rows a calculator read with those of the table files. The calculators carry the tables they were built with; if a file
 * has changed since, the working and the page of the table would show two different figures.
 */
final class BuiltInRows {
    private final Map<String, TableFile> tables;
    private final Problems problems;

    BuiltInRows(Map<String, TableFile> tables, Problems problems) {
        this.tables = tables;
        this.problems = problems;
    }

    void compare(Working working) {
        for (Step step : working.steps()) {
            if (step instanceof TableStep look) {
                compare(look.row());
            }
        }
    }

    private void compare(Row builtIn) {
        TableFile file = tables.get(builtIn.table().key());
        Row written = file == null ? null : find(file, builtIn);
        if (file != null && (written == null || !isSame(builtIn, written))) {
            int line = written == null ? 1 : written.line();
            problems.add(file.file().lineSpan(line).problem(
                    "the calculators were built with another row \"" + builtIn.name() + "\" of this table",
                    "Build them again with mvn -q package."));
        }
    }

    private static Row find(TableFile file, Row builtIn) {
        return file.table().find(builtIn.table().columns().get(0).key(), builtIn.text(builtIn.table().columns().get(0).key()));
    }

    private static boolean isSame(Row builtIn, Row written) {
        for (Column column : builtIn.table().columns()) {
            if (!builtIn.text(column.key()).equals(written.text(column.key()))) {
                return false;
            }
        }
        return true;
    }
}
