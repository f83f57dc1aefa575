package loomwright.generator.content;

import loomwright.generator.problem.SourceFile;
import loomwright.table.Table;

/** A table and the file it was read from. */
public record TableFile(Table table, SourceFile file) {}
