package loomwright.table;

/** What an author reads. The page's program, whose tables the build has read, does not carry it along. */
final class AuthorsWording implements TableWording {
    @Override
    public TableFault fault(int line, String mistake, String found) {
        return switch (mistake) {
            case "columns" -> new TableFault(line, "the table has no line of column names", "Add one after the comment lines.");
            case "remark" -> new TableFault(
                    line, "no remark is called \u201c" + found + "\u201d", "Use title, source, locus, standing, shown or note.");
            case "shown" -> new TableFault(
                    line, "a table is not shown \u201c" + found + "\u201d", "Write whole, or rows if only single rows may be shown.");
            case "document" -> new TableFault(line, "no document has the key \u201c" + found + "\u201d", "Add it to content/sources.csv.");
            case "standing" -> new TableFault(
                    line, "no standing is called \u201c" + found + "\u201d",
                    "Use published, published-second-hand, common-practice, from-memory, invented or computed.");
            case "head" -> new TableFault(line, "the table has no " + found, "Add a line such as # title: ... at the top.");
            case "unit" -> new TableFault(
                    line, "the unit of column \u201c" + found + "\u201d is not known", "Write the unit in brackets after the name.");
            case "row" -> new TableFault(line, "the row has " + found, "Check the commas.");
            case "quote" -> new TableFault(line, "a double quote is opened and not closed", "Close the quote on the same line.");
            default -> throw new IllegalArgumentException(mistake);
        };
    }
}
