package loomwright.table;

/** Puts a mistake in a table into words. */
interface TableWording {
    /**
     * @param mistake what it is about, in a word
     * @param found the text that is wrong
     */
    TableFault fault(int line, String mistake, String found);
}
