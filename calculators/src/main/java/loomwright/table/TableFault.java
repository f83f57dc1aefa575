package loomwright.table;

/** A mistake in a table file: the line, what is wrong, and what to do. */
public final class TableFault extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final int line;
    private final String remedy;

    TableFault(int line, String message, String remedy) {
        super(message);
        this.line = line;
        this.remedy = remedy;
    }

    /** The line in the file, counted from 1. */
    public int line() {
        return line;
    }

    public String remedy() {
        return remedy;
    }
}
